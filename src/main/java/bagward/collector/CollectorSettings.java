package bagward.collector;

import bagward.collector.payload.MessageDecoder;
import java.time.Duration;

/**
 * How messages are collected.
 *
 * @param clientId name of the collector at the broker; fixed, since the broker keeps its session under it
 * @param batchMost messages in one commit at most; never more than the broker's window are waited for
 * @param batchLinger how long a commit waits for more messages
 * @param futureTolerance how far ahead of the station's clock a sensor's clock may be
 * @param pastTolerance how old a reading may be when it arrives
 * @param hearAll whether topics that nobody configured are listed with a sample
 */
public record CollectorSettings(
        String clientId,
        int batchMost,
        Duration batchLinger,
        Duration futureTolerance,
        Duration pastTolerance,
        boolean hearAll) {
    /** What a station has that says nothing else. */
    public static final CollectorSettings USUAL = new CollectorSettings(
            "bagward", 500, Duration.ofMillis(50), Duration.ofMinutes(5), MessageDecoder.USUAL_PAST_TOLERANCE, true);
}
