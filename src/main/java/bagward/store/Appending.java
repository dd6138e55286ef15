package bagward.store;

import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import bagward.store.ReadingStore.Receipt;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** One batch of readings on its way into the tables, inside a transaction. */
final class Appending {
    private static final String ADD =
            "INSERT INTO reading (series, measured_at, value, flags) VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING";

    private static final String THERE = "SELECT value, flags FROM reading WHERE series = ? AND measured_at = ?";

    private static final String REPLACE =
            "UPDATE reading SET value = ?, flags = ? WHERE series = ? AND measured_at = ?";

    private final Session session;
    private final Instant now;
    private final SeriesNumbers numbers;
    private final List<Quarantined> lowerOnes = new ArrayList<>();
    private int stored;
    private int repeated;
    private int contradicted;

    Appending(Session session, Instant now) {
        this.session = session;
        this.numbers = new SeriesNumbers(session);
        this.now = now;
    }

    /** Adds all of them. */
    Receipt append(List<Reading> batch) throws SQLException {
        for (Reading reading : batch) {
            add(reading);
        }
        SqliteQuarantine.add(session, lowerOnes);
        return new Receipt(stored, repeated, contradicted);
    }

    private void add(Reading reading) throws SQLException {
        long series = numbers.of(reading.series());
        long at = reading.measuredAt().toEpochMilli();
        if (session.update(ADD, series, at, reading.value(), ReadingFlag.toBits(reading.flags())) == 1) {
            stored++;
        } else {
            meet(reading, series, at);
        }
    }

    /** The series has a reading for that time already. */
    private void meet(Reading reading, long series, long at) throws SQLException {
        Reading held = session.first(THERE, row -> reading(reading, row), series, at)
                .orElseThrow(() -> new SQLException("a reading is neither new nor there"));
        Reading kept = ReadingStore.kept(held, reading);
        if (!kept.equals(held)) {
            session.update(REPLACE, kept.value(), ReadingFlag.toBits(kept.flags()), series, at);
        }
        if (held.value() == reading.value()) {
            repeated++;
        } else {
            contradicted++;
            lowerOnes.add(Quarantined.lower(kept.value() == held.value() ? reading : held, now));
        }
    }

    private static Reading reading(Reading like, ResultSet row) throws SQLException {
        return new Reading(like.series(), like.measuredAt(), row.getDouble(1), ReadingFlag.ofBits(row.getInt(2)));
    }
}
