package bagward.demo;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEngine;
import bagward.board.Assessment;
import bagward.board.Board;
import bagward.board.BoardBuilder;
import bagward.board.BoardInputs;
import bagward.board.HeldReadings;
import bagward.climate.ReadingSource;
import bagward.collector.payload.Decoded;
import bagward.collector.payload.Message;
import bagward.collector.payload.MessageDecoder;
import bagward.station.Sensor;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The demo played through decoder, board and alarms, with no broker and no store between. */
final class DemoPlayback {
    private final DemoDocuments documents = new DemoDocuments();
    private final HeldReadings readings = new HeldReadings();
    private final SortedMap<String, Integer> refused = new TreeMap<>();
    private final SortedMap<String, Integer> unknown = new TreeMap<>();

    DemoPlayback(long seed, Instant end) {
        MessageDecoder decoder = new MessageDecoder(documents.sources(), Duration.ofMinutes(5));
        for (DemoMessage message : DemoFeedTest.until(seed, end)) {
            Decoded decoded = decoder.decode(new Message(message.topic(), message.bytes(), message.at(), false));
            readings.take(decoded.readings());
            if (!decoded.known()) {
                unknown.merge(message.topic(), 1, Integer::sum);
            }
            if (!decoded.refusals().isEmpty()) {
                refused.merge(message.topic(), 1, Integer::sum);
            }
        }
    }

    /** Messages that cannot be used, by topic. */
    SortedMap<String, Integer> refused() {
        return refused;
    }

    /** Messages of topics that are not configured, by topic. */
    SortedMap<String, Integer> unknown() {
        return unknown;
    }

    /** The sensors of the station. */
    List<Sensor> sensors() {
        return documents.station().sensors();
    }

    /** All readings. */
    ReadingSource readings() {
        return readings;
    }

    /** The wall at an instant, when the program was started at that instant and knows no earlier alarm. */
    Board board(Instant now) {
        BoardInputs in = new BoardInputs(
                now,
                documents.station(),
                documents.register(),
                documents.materials(),
                readings,
                documents.rules(),
                documents.organisms(),
                documents.crops());
        Assessment assessment = BoardBuilder.assess(in, AlarmBook.EMPTY);
        AlarmBook after = AlarmEngine.step(AlarmBook.EMPTY, now, assessment.verdicts(), in.rules())
                .book();
        return BoardBuilder.board(in, assessment, after);
    }
}
