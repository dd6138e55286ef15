package bagward.store.influx;

import bagward.store.StoreException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Deletes old readings a piece at a time with InfluxQL DELETE, which 1.x takes. A server that refuses the statement (3 does
 * not know it) keeps them, or drops them by its own retention; that is said once and is no error. Safe for several threads.
 */
final class OldReadings {
    private static final Logger LOG = LoggerFactory.getLogger(OldReadings.class);
    private static final int NOT_LET_IN = 401;
    private static final int SERVER_FAULT = 500;

    private final InfluxSettings settings;
    private final InfluxLink link;
    private final Statements statements;
    private volatile String refusal = "";

    OldReadings(InfluxSettings settings, InfluxLink link, Statements statements) {
        this.settings = settings;
        this.link = link;
        this.statements = statements;
    }

    /**
     * Deletes some of the oldest.
     *
     * @return how many; 0 if none is left, or the server does not delete
     * @throws StoreException if it could not be done and may be tried again
     */
    int delete(Instant before, int most) {
        if (!Statements.keeps(before)) {
            return 0;
        }
        List<Instant> oldest = oldest(before, most);
        if (oldest.isEmpty()) {
            return 0;
        }
        Instant end = oldest.size() < most ? before : end(oldest);
        try {
            link.ask("deleting readings before " + end, Statements.delete(end));
            refusal = "";
        } catch (StoreException e) {
            refuse(e);
            return 0;
        }
        return (int) oldest.stream().filter(at -> at.isBefore(end)).count();
    }

    /** The last time of a full piece, of which there may be more; the one after it if it is the only time there. */
    private static Instant end(List<Instant> oldest) {
        Instant last = oldest.get(oldest.size() - 1);
        return oldest.get(0).equals(last) ? last.plusMillis(1) : last;
    }

    private List<Instant> oldest(Instant before, int most) {
        return link.ask("looking for readings before " + before, statements.oldest(before, most)).stream()
                .flatMap(series -> Optional.ofNullable(series.getValues()).orElse(List.of()).stream())
                .map(OldReadings::time)
                .toList();
    }

    private static Instant time(List<Object> row) {
        if (row.get(0) instanceof Double millis) {
            return Instant.ofEpochMilli(millis.longValue());
        }
        throw new StoreException("InfluxDB answers with the row " + row + ", in which a time should be first");
    }

    private void refuse(StoreException e) {
        boolean understood = InfluxTrouble.answer(e)
                .filter(answer -> answer.status() != NOT_LET_IN && answer.status() < SERVER_FAULT)
                .isPresent();
        if (!understood) {
            throw e;
        }
        if (refusal.isEmpty()) {
            LOG.warn("Old readings stay in InfluxDB: {}", e.getMessage());
        }
        refusal = "Readings older than they need be stay there, since InfluxDB at " + settings.url()
                + " does not delete them; give its bucket or database a retention of its own.";
    }

    /** One sentence; empty if the server deletes. */
    String says() {
        return refusal;
    }
}
