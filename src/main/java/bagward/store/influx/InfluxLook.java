package bagward.store.influx;

import java.util.List;
import java.util.Optional;
import org.influxdb.dto.QueryResult;

/** Looks whether a server is there and fit, and changes nothing. */
public final class InfluxLook {
    private InfluxLook() {}

    /**
     * What is there, in one sentence.
     *
     * @throws bagward.store.StoreException if nobody answers there, or does not let Bagward in
     * @throws bagward.fault.RefusedInputException if the file of certificates cannot be used
     */
    public static String at(InfluxSettings settings) {
        try (InfluxLink link = InfluxLink.to(settings, Limits.USUAL)) {
            String server = "InfluxDB " + link.version() + " answers at " + settings.url() + "; database '"
                    + settings.database() + "' ";
            return server
                    + link.askIfThere("looking at the database", Statements.policies(settings.database()))
                            .map(policies -> "is there and " + keeping(settings, policies))
                            .orElse("is missing and will be created with the first reading, if the user may")
                    + ".";
        }
    }

    private static String keeping(InfluxSettings settings, List<QueryResult.Series> policies) {
        return policies.stream()
                .flatMap(series -> Optional.ofNullable(series.getValues()).orElse(List.of()).stream()
                        .filter(row -> isMeant(settings, series.getColumns(), row))
                        .map(row -> keeping(
                                String.valueOf(row.get(series.getColumns().indexOf("duration"))))))
                .findFirst()
                .orElse("has no such retention policy: create it, or correct retention-policy");
    }

    private static boolean isMeant(InfluxSettings settings, List<String> columns, List<Object> row) {
        return settings.retentionPolicy()
                .map(name -> name.equals(row.get(columns.indexOf("name"))))
                .orElse(Boolean.TRUE.equals(row.get(columns.indexOf("default"))));
    }

    private static String keeping(String duration) {
        return duration.equals("0s")
                ? "keeps readings for ever"
                : "keeps readings for " + duration + " only: older ones are refused, and go to quarantine";
    }
}
