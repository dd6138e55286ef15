package bagward.mould;

import bagward.units.SeedMoisture;
import java.time.Duration;

/**
 * What somebody saw on stored seed.
 *
 * @param celsius kept at, °C
 * @param moisture moisture of the seed
 * @param after how long it was kept
 * @param seen what was seen
 * @param source who saw it
 */
public record StorageObservation(double celsius, SeedMoisture moisture, Duration after, String seen, String source) {}
