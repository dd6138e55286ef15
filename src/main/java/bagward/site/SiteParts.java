package bagward.site;

import bagward.climate.ReadingSource;
import bagward.notify.DeliveryDesk;
import bagward.store.AlarmStore;
import bagward.store.QuarantineStore;
import bagward.watch.LotBook;
import bagward.watch.PollenWatch;
import bagward.watch.Seasons;
import bagward.watch.SensorChecks;
import bagward.watch.Watch;
import bagward.watch.rehearsal.Rehearsals;
import java.time.Clock;

/**
 * The running parts that pages show and change.
 *
 * @param watch the running watch
 * @param quarantine messages that could not be used
 * @param journal what alarms did
 * @param checks checks of humidity sensors
 * @param rawReadings readings as they were stored, without corrections
 * @param pollen scores and outlooks
 * @param deliveries messages on their way
 * @param seasons houses over months and years
 * @param lots pods, seed lots and used bags
 * @param rehearsals rules tried on the stored past
 * @param clock the time now; the demo has its own
 * @param pace how many times as fast as real time that clock runs
 */
public record SiteParts(
        Watch watch,
        QuarantineStore quarantine,
        AlarmStore journal,
        SensorChecks checks,
        ReadingSource rawReadings,
        PollenWatch pollen,
        DeliveryDesk deliveries,
        Seasons seasons,
        LotBook lots,
        Rehearsals rehearsals,
        Clock clock,
        double pace) {}
