package bagward.alarm;

import bagward.climate.SensorId;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/**
 * How the system itself is, as far as it can have alarms.
 *
 * @param storeAwaySince since when the store of readings takes nothing; empty if it does
 * @param spoolPercent how full the spool is in which readings wait meanwhile, %
 * @param freeGigabytes free space on the disk that the station's data lie on, GB (10^9 bytes); NaN if it cannot be told
 * @param clock what is wrong with the station's clock, if anything
 * @param sensorClocks how far the clock of each sensor is ahead of the station's (negative: behind), where that is known
 * @param offline since when sensors are offline of which their gateway, or the broker, said so
 */
public record SystemState(
        Optional<Instant> storeAwaySince,
        double spoolPercent,
        double freeGigabytes,
        Optional<ClockTrouble> clock,
        Map<SensorId, Duration> sensorClocks,
        Map<SensorId, Instant> offline) {
    /** Of which nothing is known but that nothing is wrong. */
    public static final SystemState WELL = new SystemState(Optional.empty(), 0, Double.NaN, Optional.empty(), Map.of());

    /** Copies the maps. */
    public SystemState {
        sensorClocks = Map.copyOf(sensorClocks);
        offline = Map.copyOf(offline);
    }

    /** The same where no sensor is said to be offline. */
    public SystemState(
            Optional<Instant> storeAwaySince,
            double spoolPercent,
            double freeGigabytes,
            Optional<ClockTrouble> clock,
            Map<SensorId, Duration> sensorClocks) {
        this(storeAwaySince, spoolPercent, freeGigabytes, clock, sensorClocks, Map.of());
    }

    /**
     * What is wrong with the station's clock.
     *
     * @param since from when, by that clock
     * @param by how far it jumped, or is behind at least
     * @param says one sentence
     */
    public record ClockTrouble(Instant since, Duration by, String says) {}
}
