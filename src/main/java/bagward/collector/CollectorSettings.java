package bagward.collector;

import bagward.collector.payload.MessageDecoder;
import bagward.collector.payload.TopicFilter;
import java.time.Duration;
import java.util.List;

/**
 * How messages are collected.
 *
 * @param clientId name of the collector at the broker; fixed, since the broker keeps its session under it
 * @param batchMost messages in one commit at most; never more than the broker's window are waited for
 * @param batchLinger how long a commit waits for more messages
 * @param futureTolerance how far ahead of the station's clock a sensor's clock may be
 * @param pastTolerance how old a reading may be when it arrives
 * @param hearAll whether topics that nobody configured are listed with a sample
 * @param unlisted topics that are not listed all the same, since nobody expects a sensor there
 * @param askRebirth whether Sparkplug B edge nodes are asked for their births when these were missed
 */
public record CollectorSettings(
        String clientId,
        int batchMost,
        Duration batchLinger,
        Duration futureTolerance,
        Duration pastTolerance,
        boolean hearAll,
        List<TopicFilter> unlisted,
        boolean askRebirth) {
    /** Copies the list. */
    public CollectorSettings {
        unlisted = List.copyOf(unlisted);
    }

    /** What a station has that says nothing else. */
    public static final CollectorSettings USUAL = new CollectorSettings(
            "bagward",
            500,
            Duration.ofMillis(50),
            Duration.ofMinutes(5),
            MessageDecoder.USUAL_PAST_TOLERANCE,
            true,
            List.of(),
            true);

    /** The same without topics of some filters in the list. */
    public CollectorSettings unlisting(List<TopicFilter> filters) {
        return new CollectorSettings(
                clientId, batchMost, batchLinger, futureTolerance, pastTolerance, hearAll, filters, askRebirth);
    }
}
