package bagward.store;

import bagward.climate.Span;
import java.util.Optional;

/**
 * What a store file holds and whether it is sound.
 *
 * @param bytes size of the file
 * @param version version of its schema; 0 if it was only begun
 * @param damage what is damaged; empty if nothing
 * @param readings how many readings
 * @param time from the oldest reading to the newest; empty if there is none
 * @param changes how many changes of the register
 */
public record StoreReport(
        long bytes, int version, Optional<String> damage, long readings, Optional<Span> time, long changes) {}
