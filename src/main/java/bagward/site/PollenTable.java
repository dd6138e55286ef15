package bagward.site;

import bagward.pollen.Predictor;
import bagward.pollen.ScoreRow;
import io.javalin.http.Context;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** The scores with all that they can be set against, as a CSV file: one score a line, times in UTC, empty where unknown. */
final class PollenTable {
    private PollenTable() {}

    static void answer(Context ctx, String name, List<ScoreRow> rows) {
        CsvDownload.answer(
                ctx, name, header(), rows.stream().map(PollenTable::cells).toList());
    }

    private static List<String> header() {
        List<String> header =
                new ArrayList<>(List.of("day", "scored_at", "house", "line", "score", "by", "source", "sky"));
        header.add("spoilt_by_heat");
        for (Predictor predictor : Predictor.values()) {
            header.add(predictor.key().replace('-', '_') + unit(predictor));
        }
        return header;
    }

    private static String unit(Predictor predictor) {
        return switch (predictor) {
            case LIGHT_TO_SCORE, LIGHT_OF_DAY, LIGHT_DAY_BEFORE -> "_mol_m2";
            case MORNING_DEFICIT -> "_kpa";
            case MORNING_HUMIDITY -> "_pct";
            case HEAT_DAY_BEFORE -> "_c";
        };
    }

    private static List<String> cells(ScoreRow row) {
        List<String> cells = new ArrayList<>(List.of(
                row.day().toString(),
                row.score().at().truncatedTo(ChronoUnit.SECONDS).toString(),
                row.score().house().value(),
                row.score().line().map(line -> line.name()).orElse(""),
                Integer.toString(row.score().number()),
                row.score().by(),
                row.score().withPollination() ? "pollination" : "score",
                row.sky().map(sky -> sky.name().toLowerCase(Locale.ROOT)).orElse(""),
                row.spoilt() ? "yes" : "no"));
        for (Predictor predictor : Predictor.values()) {
            OptionalDouble value = row.value(predictor);
            cells.add(value.isEmpty() ? "" : String.format(Locale.ROOT, "%.3f", value.getAsDouble()));
        }
        return cells;
    }
}
