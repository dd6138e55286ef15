package bagward.collector.sparkplug;

import java.time.Instant;
import java.util.Optional;

/**
 * How an edge node is, as far as was heard since the start.
 *
 * @param node which
 * @param born whether its birth was heard and no death since
 * @param offlineSince when its death came, if it has not come back
 * @param births how many births were heard
 * @param missed how many messages were missed at least, by the sequence numbers
 * @param unknown how many metrics could not be told for want of a birth
 * @param asked how often it was asked for its births
 */
public record NodeState(
        NodeId node, boolean born, Optional<Instant> offlineSince, long births, long missed, long unknown, long asked) {

    /** One sentence. */
    public String says() {
        String how = offlineSince.isPresent()
                ? "offline since " + offlineSince.get()
                : born ? "online" : "its birth was not heard yet";
        return node + " is " + how + "; births " + births + ", messages missed " + missed + ", metrics of unknown name "
                + unknown + ", asked for births " + asked;
    }
}
