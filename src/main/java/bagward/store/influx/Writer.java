package bagward.store.influx;

import bagward.climate.Reading;
import bagward.store.StoreException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.influxdb.dto.QueryResult;

/**
 * Writes readings in requests of a bounded length. Where the server refuses some points of a request and will refuse them
 * again, the request is halved until those are found; they are set aside and all others are stored. A request that is too
 * long for the server is halved too. Any other refusal is one of the whole, and is for whoever calls to wait out.
 */
final class Writer {
    private final InfluxSettings settings;
    private final InfluxLink link;
    private final Statements statements;
    private final Refused refused;

    Writer(InfluxSettings settings, InfluxLink link, Statements statements, Refused refused) {
        this.settings = settings;
        this.link = link;
        this.statements = statements;
        this.refused = refused;
    }

    /**
     * Writes them all. When it returns, each is stored or set aside.
     *
     * @return how many were set aside
     * @throws StoreException if any is in neither place; writing them again is right
     */
    int write(List<Reading> readings, int most) {
        // by time, so that those that are too old stand together
        List<Reading> sorted = readings.stream()
                .sorted(Comparator.comparing(Reading::measuredAt))
                .toList();
        int aside = 0;
        for (int from = 0; from < sorted.size(); from += most) {
            aside += writePiece(sorted.subList(from, Math.min(sorted.size(), from + most)));
        }
        return aside;
    }

    private int writePiece(List<Reading> piece) {
        try {
            link.write("storing " + piece.size() + " readings", Lines.of(piece));
            return 0;
        } catch (StoreException e) {
            Optional<PointsRefused> points = PointsRefused.in(e);
            if (points.isPresent()) {
                return withoutRefused(piece, points.get(), e);
            }
            if (InfluxTrouble.requestTooLong(e) && piece.size() > 1) {
                return writeHalves(piece);
            }
            throw e;
        }
    }

    private int withoutRefused(List<Reading> piece, PointsRefused points, StoreException e) {
        if (points.conflict() && !takesNumbers()) {
            throw e;
        }
        if (piece.size() > 1 && !points.all(piece.size())) {
            return writeHalves(piece);
        }
        refused.setAside(piece, points.reason(settings));
        return piece.size();
    }

    private int writeHalves(List<Reading> piece) {
        int middle = piece.size() / 2;
        return writePiece(piece.subList(0, middle)) + writePiece(piece.subList(middle, piece.size()));
    }

    /**
     * Whether the field is a number anywhere. If not, another program keeps something else under our names, which a person can
     * put right, and then all that waits can be stored; if so, only an old part of the database is spoiled.
     */
    private boolean takesNumbers() {
        List<QueryResult.Series> fields = link.ask("looking at the types of fields", statements.fields());
        return fields.stream()
                .flatMap(series -> Optional.ofNullable(series.getValues()).orElse(List.of()).stream())
                .anyMatch(row -> row.equals(List.of("value", "float")));
    }
}
