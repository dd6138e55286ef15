package bagward.watch;

import bagward.store.AlarmStore;
import bagward.store.QuarantineStore;
import bagward.store.ReadingStore;
import bagward.store.RegisterStore;

/**
 * Where the watch keeps things.
 *
 * @param readings readings
 * @param quarantine messages that could not be used
 * @param register register changes
 * @param alarms alarms and their journal
 */
public record WatchStores(
        ReadingStore readings, QuarantineStore quarantine, RegisterStore register, AlarmStore alarms) {}
