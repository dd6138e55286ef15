package bagward.store.influx;

import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import bagward.climate.SeriesId;
import bagward.fault.ImpossibleValueException;
import bagward.store.StoreException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.influxdb.dto.QueryResult;

/** Turns rows of an answer, with the columns time (ms), value and flags, into readings. */
final class Rows {
    private static final int COLUMNS = 3;

    private Rows() {}

    /**
     * The readings of one series of an answer, in its order.
     *
     * @throws StoreException if a row is none that Bagward can have written
     */
    static List<Reading> of(SeriesId series, QueryResult.Series answer) {
        return Optional.ofNullable(answer.getValues()).orElse(List.of()).stream()
                .map(row -> reading(series, row))
                .toList();
    }

    private static Reading reading(SeriesId series, List<Object> row) {
        try {
            if (row.size() == COLUMNS && row.get(0) instanceof Double time && row.get(1) instanceof Double value) {
                // Points of other programs may have no flags.
                int flags = row.get(2) instanceof Double bits ? bits.intValue() : 0;
                return new Reading(series, Instant.ofEpochMilli(time.longValue()), value, ReadingFlag.ofBits(flags));
            }
        } catch (ImpossibleValueException e) {
            throw foreign(series, row, e.getMessage());
        }
        throw foreign(series, row, "a time, a number and whole-number flags are expected");
    }

    private static StoreException foreign(SeriesId series, List<Object> row, String rule) {
        return new StoreException("InfluxDB holds the row " + row + " for " + series
                + ", which Bagward cannot have written: " + rule
                + "; delete it there, and give Bagward a database of its own");
    }
}
