package bagward.collector;

import java.time.Instant;
import java.util.Optional;

/**
 * How the collector is. Counts are since its start.
 *
 * @param connected whether it is connected to the broker
 * @param storing whether the last commit went well
 * @param lastMessageAt when the last message of a sensor arrived
 * @param lastCommitAt when the last batch was committed
 * @param counts how many of what
 * @param says one sentence
 */
public record CollectorState(
        boolean connected,
        boolean storing,
        Optional<Instant> lastMessageAt,
        Optional<Instant> lastCommitAt,
        Counts counts,
        String says) {

    /** Whether nothing needs a person. */
    public boolean well() {
        return connected && storing;
    }

    /**
     * How many of what.
     *
     * @param messages messages on configured topics that were dealt with
     * @param stored readings that are new in the store
     * @param repeated readings that were there already
     * @param contradicted readings that were there with another value
     * @param quarantined messages that could not be used, wholly or in part
     * @param heard messages on topics that nobody configured
     * @param waiting messages that arrived and are not committed yet
     * @param lost messages of quality 0 for which there was no room; their sender asked for no better
     * @param connections connections made to the broker
     */
    public record Counts(
            long messages,
            long stored,
            long repeated,
            long contradicted,
            long quarantined,
            long heard,
            long waiting,
            long lost,
            long connections) {}
}
