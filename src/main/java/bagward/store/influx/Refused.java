package bagward.store.influx;

import bagward.climate.Reading;
import bagward.store.QuarantineStore;
import bagward.store.Quarantined;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Readings that the server will never take: they go to the quarantine with its reason, so that they hold up nothing behind
 * them and nothing is dropped without a trace. Safe for use by several threads.
 */
final class Refused {
    private static final Logger LOG = LoggerFactory.getLogger(Refused.class);

    private final QuarantineStore quarantine;
    private final Clock clock;
    private long count;
    private String last = "";

    Refused(QuarantineStore quarantine, Clock clock) {
        this.quarantine = quarantine;
        this.clock = clock;
    }

    /**
     * Sets readings aside.
     *
     * @param reason one sentence
     * @throws bagward.store.StoreException if the quarantine does not take them
     */
    void setAside(List<Reading> readings, String reason) {
        Instant now = clock.instant();
        quarantine.quarantine(readings.stream()
                .map(reading -> Quarantined.refused(reading, now, reason))
                .toList());
        note(readings.size(), reason);
    }

    private synchronized void note(int more, String reason) {
        if (!reason.equals(last)) {
            LOG.error("{} readings, and all that follow of their kind, go to the quarantine: {}", more, reason);
        }
        last = reason;
        count += more;
    }

    /** One sentence; empty if there were none. */
    synchronized String says() {
        return count == 0
                ? ""
                : count + " readings since the start were refused and are in the quarantine. The last ones: " + last;
    }
}
