package bagward.site;

import bagward.store.AlarmStore;
import bagward.store.QuarantineStore;
import bagward.watch.Watch;
import java.time.Clock;

/**
 * The running parts that pages show and change.
 *
 * @param watch the running watch
 * @param quarantine messages that could not be used
 * @param journal what alarms did
 * @param clock the time now; the demo has its own
 */
public record SiteParts(Watch watch, QuarantineStore quarantine, AlarmStore journal, Clock clock) {}
