package bagward.site.page;

import bagward.board.Board;
import bagward.board.Measure;
import bagward.board.SensorView;
import bagward.site.view.Figures;
import bagward.site.view.Places;
import bagward.site.view.Words;
import bagward.store.HeardTopic;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Every sensor, and topics that nobody configured.
 *
 * @param rows one a sensor
 * @param topics topics that were heard but are not configured
 * @param quarantined how many messages are in quarantine
 */
public record SensorsPage(List<Row> rows, List<Topic> topics, long quarantined) {
    /**
     * A sensor in the list.
     *
     * @param name as people call it
     * @param id its unique name
     * @param place what it stands for
     * @param values newest values
     * @param heard when it was heard
     * @param silent whether that is too long ago
     * @param lentTo tag of the head in whose bag it hangs; empty if it is not lent
     */
    public record Row(
            String name, String id, String place, String values, String heard, boolean silent, String lentTo) {}

    /**
     * A topic that nobody configured.
     *
     * @param topic the topic
     * @param messages how many were heard
     * @param heard when the last one came
     * @param sample its payload
     */
    public record Topic(String topic, String messages, String heard, String sample) {}

    /** The page of a board. */
    public static SensorsPage of(Board board, List<HeardTopic> topics, long quarantined, Instant now) {
        return new SensorsPage(
                board.sensors().stream().map(s -> row(board, s, now)).toList(),
                topics.stream()
                        .map(t -> new Topic(
                                t.topic(),
                                Words.count(t.messages(), "message", "messages"),
                                ago(t.lastAt(), now),
                                t.sample()))
                        .toList(),
                quarantined);
    }

    /** The row of a sensor. */
    static Row row(Board board, SensorView view, Instant now) {
        String house = Places.house(board, view.sensor().house());
        String bay = view.sensor()
                .bay()
                .map(b -> ", " + Places.bay(board, view.sensor().house(), b))
                .orElse("");
        return new Row(
                view.sensor().name(),
                view.sensor().id().value(),
                view.sensor().spare() ? "spare" : house + bay,
                values(view),
                view.heardAt().map(at -> ago(at, now)).orElse("never")
                        + view.offlineSince()
                                .map(since -> "; its gateway said " + ago(since, now) + " that it is offline")
                                .orElse(""),
                view.silent(),
                view.lentTo().map(Object::toString).orElse(""));
    }

    private static String values(SensorView view) {
        List<String> values = new ArrayList<>();
        for (Quantity quantity : Quantity.values()) {
            Optional<Measure> measure =
                    Figures.known(Optional.ofNullable(view.newest().get(quantity)));
            measure.ifPresent(m -> values.add(Words.oneDecimal(m.value()) + " " + quantity.unitSymbol()));
        }
        return values.isEmpty() ? "no data" : String.join(", ", values);
    }

    private static String ago(Instant at, Instant now) {
        return Words.span(Duration.between(at, now)) + " ago";
    }
}
