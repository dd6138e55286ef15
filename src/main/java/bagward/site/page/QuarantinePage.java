package bagward.site.page;

import bagward.site.view.Words;
import bagward.store.Quarantined;
import java.time.ZoneId;
import java.util.List;

/**
 * Messages that could not be used.
 *
 * @param count how many there are
 * @param rows the newest ones
 */
public record QuarantinePage(long count, List<Row> rows) {
    /**
     * A message.
     *
     * @param arrived day and time
     * @param topic its topic
     * @param reason why it could not be used
     * @param payload as it came
     */
    public record Row(String arrived, String topic, String reason, String payload) {}

    /** The page of the newest messages. */
    public static QuarantinePage of(long count, List<Quarantined> newest, ZoneId zone) {
        return new QuarantinePage(
                count,
                newest.stream()
                        .map(q -> new Row(
                                Words.dayAndClock(q.arrivedAt(), zone),
                                q.topic(),
                                q.reason(),
                                q.payload().readable()))
                        .toList());
    }
}
