package bagward.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.AlarmBook;
import bagward.alarm.Subject;
import bagward.alarm.SystemState;
import bagward.alarm.Verdict;
import bagward.climate.SensorId;
import bagward.station.Sensor;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A sensor of which its gateway said that it is offline. */
class OfflineSensorTest {
    private static BoardInputs saying(BoardInputs in, Map<SensorId, Instant> offline) {
        return new BoardInputs(
                in.now(),
                in.station(),
                in.register(),
                in.materials(),
                in.readings(),
                in.rules(),
                in.organisms(),
                in.crops(),
                in.knowledge(),
                new SystemState(Optional.empty(), 0, Double.NaN, Optional.empty(), Map.of(), offline));
    }

    private static List<String> messages(BoardInputs in, SensorId sensor) {
        return BoardBuilder.assess(in, AlarmBook.EMPTY).verdicts().stream()
                .filter(v -> v.key().subject().equals(new Subject.OfSensor(sensor)))
                .filter(v -> v.outcome() == Verdict.Outcome.HOLDS)
                .map(Verdict::message)
                .toList();
    }

    @Test
    void says_so_on_the_board_and_in_its_alarm_for_silence_once_it_is_silent() {
        BoardInputs in = new Scenario(4).at(6);
        Sensor sensor = in.station().sensors().stream()
                .filter(s -> !s.spare())
                .findFirst()
                .orElseThrow();
        Instant since = in.now().minusSeconds(3600);
        BoardInputs said = saying(in, Map.of(sensor.id(), since));
        assertTrue(messages(in, sensor.id()).stream().noneMatch(m -> m.contains("offline")));
        assertTrue(messages(said, sensor.id()).stream()
                .anyMatch(m -> m.endsWith("; its gateway said that it is offline")));
        Board board = Scenario.tick(said, AlarmBook.EMPTY);
        assertEquals(
                List.of(Optional.of(since)),
                board.sensors().stream()
                        .filter(v -> v.sensor().equals(sensor))
                        .map(SensorView::offlineSince)
                        .toList());
    }
}
