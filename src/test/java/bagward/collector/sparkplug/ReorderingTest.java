package bagward.collector.sparkplug;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReorderingTest {
    private static final long SECOND = 1_000_000_000;

    private final Reordering<String> reordering = new Reordering<>();

    private List<String> take(SparkplugTopic.Type type, long number, long second) {
        return reordering.take(type + " " + number, type, OptionalLong.of(number), second * SECOND);
    }

    @Test
    void data_that_overtook_its_birth_waits_for_it() {
        take(SparkplugTopic.Type.NBIRTH, 0, 0);
        assertEquals(List.of(), take(SparkplugTopic.Type.DDATA, 2, 0));
        assertEquals(List.of("DBIRTH 1", "DDATA 2"), take(SparkplugTopic.Type.DBIRTH, 1, 0));
    }

    @Test
    void a_birth_of_a_device_that_overtook_that_of_its_edge_node_waits_for_it() {
        assertEquals(List.of(), take(SparkplugTopic.Type.DBIRTH, 1, 0));
        assertEquals(List.of("NBIRTH 0", "DBIRTH 1"), take(SparkplugTopic.Type.NBIRTH, 0, 1));
    }

    @Test
    void what_never_comes_is_waited_for_two_seconds() {
        take(SparkplugTopic.Type.NBIRTH, 0, 0);
        assertEquals(List.of(), take(SparkplugTopic.Type.NDATA, 3, 1));
        assertEquals(List.of(), take(SparkplugTopic.Type.NDATA, 2, 2));
        assertEquals(List.of(), reordering.overdue(3 * SECOND));
        assertEquals(List.of("NDATA 2", "NDATA 3"), reordering.overdue(4 * SECOND));
        assertEquals(List.of("NDATA 4"), take(SparkplugTopic.Type.NDATA, 4, 4));
    }

    @Test
    void a_death_comes_after_all_that_waits() {
        take(SparkplugTopic.Type.NBIRTH, 0, 0);
        take(SparkplugTopic.Type.NDATA, 2, 0);
        assertEquals(
                List.of("NDATA 2", "gone"),
                reordering.take("gone", SparkplugTopic.Type.NDEATH, OptionalLong.empty(), 0));
    }

    @Test
    void data_that_is_heard_before_any_birth_does_not_wait() {
        assertEquals(List.of("NDATA 77"), take(SparkplugTopic.Type.NDATA, 77, 0));
        assertEquals(List.of("NDATA 78"), take(SparkplugTopic.Type.NDATA, 78, 0));
    }

    @Test
    void not_more_waits_than_memory_bears() {
        take(SparkplugTopic.Type.NBIRTH, 0, 0);
        int most = 0;
        int waiting = 0;
        for (int i = 0; i < 5000; i++) {
            waiting += 1 - take(SparkplugTopic.Type.NDATA, 100, 0).size();
            most = Math.max(most, waiting);
        }
        assertTrue(most <= 500, "waiting " + most);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void a_stream_in_which_neighbours_changed_places_comes_out_as_it_was_sent(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Integer> sent = new ArrayList<>();
        for (int i = 1; i <= 1000; i++) {
            sent.add(i);
        }
        for (int i = 0; i + 1 < sent.size(); i++) {
            if (random.nextInt(3) == 0) {
                Collections.swap(sent, i, i + 1);
            }
        }
        List<String> out = new ArrayList<>(take(SparkplugTopic.Type.NBIRTH, 0, 0));
        sent.forEach(number ->
                out.addAll(reordering.take("" + number, SparkplugTopic.Type.NDATA, OptionalLong.of(number % 256), 0)));
        List<String> wanted = new ArrayList<>(List.of("NBIRTH 0"));
        for (int i = 1; i <= 1000; i++) {
            wanted.add("" + i);
        }
        assertEquals(wanted, out);
    }
}
