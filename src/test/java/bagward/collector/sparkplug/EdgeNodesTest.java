package bagward.collector.sparkplug;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.eclipse.tahu.message.SparkplugBPayloadDecoder;
import org.eclipse.tahu.message.model.Metric;
import org.eclipse.tahu.message.model.MetricDataType;
import org.eclipse.tahu.message.model.SparkplugBPayload;
import org.junit.jupiter.api.Test;

/** Births, aliases, deaths and sequence numbers, with payloads that Eclipse Tahu encoded. */
class EdgeNodesTest {
    private static final Instant START = Instant.parse("2026-04-03T06:15:00Z");
    private static final long MILLIS = START.toEpochMilli();
    private static final NodeId NODE = new NodeId("alder", "gateway");
    private static final Optional<String> DEVICE = Optional.of("air");

    private final EdgeNodes nodes = new EdgeNodes(Map.of(NODE, Set.of("air")));

    private Said take(String rest, byte[] payload) {
        return nodes.take(SparkplugTopic.of("spBv1.0/alder/" + rest).orElseThrow(), payload, START);
    }

    private void nodeBirth(long sequence, long number) {
        take(
                "NBIRTH/gateway",
                Tahu.payload(sequence, MILLIS, true, Tahu.named("bdSeq", MetricDataType.Int64, number, MILLIS)));
    }

    private Said deviceBirth(long sequence) {
        return take(
                "DBIRTH/gateway/air",
                Tahu.payload(sequence, MILLIS, true, Tahu.birth("t", 1, MetricDataType.Int32, -3, MILLIS)));
    }

    private Said data(long sequence, Metric metric) {
        return take("DDATA/gateway/air", Tahu.payload(sequence, MILLIS, false, metric));
    }

    private static Metric ofAlias(long alias) {
        return Tahu.data(alias, MetricDataType.Int32, -4, MILLIS);
    }

    private NodeState state() {
        return nodes.states().get(0);
    }

    private boolean asksAt(Duration later) {
        return !nodes.requests(START.plus(later)).isEmpty();
    }

    @Test
    void data_with_aliases_only_is_told_by_the_birth_name_and_type() {
        nodeBirth(0, 5);
        assertTrue(deviceBirth(1).birth());
        Said said = data(2, ofAlias(1));
        assertEquals("t", said.metrics().get(0).name());
        assertEquals(OptionalDouble.of(-4), said.metrics().get(0).number());
        assertTrue(state().born());
    }

    @Test
    void data_before_any_birth_is_used_where_it_names_itself_and_is_a_trouble_otherwise() {
        assertEquals(
                OptionalDouble.of(21.5),
                data(4, Tahu.named("t", MetricDataType.Double, 21.5, MILLIS))
                        .metrics()
                        .get(0)
                        .number());
        Said unknown = data(5, ofAlias(1));
        assertEquals(List.of("no birth that was heard names the alias 1"), unknown.troubles());
        assertEquals(1, state().unknown());
    }

    @Test
    void a_new_birth_makes_the_aliases_of_the_old_one_void() {
        nodeBirth(0, 5);
        deviceBirth(1);
        nodeBirth(0, 6);
        assertEquals(1, data(1, ofAlias(1)).troubles().size());
    }

    @Test
    void missed_messages_are_counted_over_the_turn_of_the_numbers_and_repeated_ones_are_not() {
        nodeBirth(253, 5);
        deviceBirth(254);
        data(1, ofAlias(1));
        assertEquals(2, state().missed());
        data(1, ofAlias(1));
        data(0, ofAlias(1));
        assertEquals(2, state().missed());
        data(3, ofAlias(1));
        assertEquals(3, state().missed());
    }

    @Test
    void messages_of_devices_that_nobody_wants_count_and_say_nothing() {
        nodeBirth(0, 5);
        deviceBirth(1);
        assertEquals(Said.NOTHING, take("DDATA/gateway/pump", Tahu.payload(2, MILLIS, false, ofAlias(8))));
        data(3, ofAlias(1));
        assertEquals(0, state().missed());
        assertEquals(0, state().unknown());
    }

    @Test
    void the_death_of_a_device_makes_it_offline_until_its_next_birth() {
        nodeBirth(0, 5);
        deviceBirth(1);
        take("DDEATH/gateway/air", Tahu.payload(2, MILLIS, true));
        assertEquals(Optional.of(START), nodes.offlineSince(NODE, DEVICE));
        deviceBirth(3);
        assertEquals(Optional.empty(), nodes.offlineSince(NODE, DEVICE));
    }

    @Test
    void the_death_of_the_edge_node_makes_all_behind_it_offline_and_that_of_an_earlier_connection_does_not() {
        nodeBirth(0, 5);
        deviceBirth(1);
        take("NDEATH/gateway", Tahu.death(4, MILLIS));
        assertEquals(Optional.empty(), nodes.offlineSince(NODE, DEVICE));
        take("NDEATH/gateway", Tahu.death(5, MILLIS));
        assertEquals(Optional.of(START), nodes.offlineSince(NODE, DEVICE));
        assertEquals(Optional.of(START), state().offlineSince());
        assertEquals(1, data(2, ofAlias(1)).troubles().size());
    }

    @Test
    void births_are_asked_for_at_the_start_and_then_more_and_more_seldom() {
        assertTrue(asksAt(Duration.ZERO));
        assertFalse(asksAt(Duration.ofSeconds(59)));
        assertTrue(asksAt(Duration.ofMinutes(1)));
        assertFalse(asksAt(Duration.ofMinutes(2)));
        assertTrue(asksAt(Duration.ofMinutes(3)));
        long asked = IntStream.range(3, 24 * 60)
                .filter(minute -> asksAt(Duration.ofMinutes(minute)))
                .count();
        assertTrue(asked <= 28, () -> "asked " + asked + " times in a day");
    }

    @Test
    void births_are_asked_for_again_after_a_gap_or_an_unknown_alias_and_not_while_all_is_well() {
        nodes.requests(START);
        nodeBirth(0, 5);
        deviceBirth(1);
        data(2, ofAlias(1));
        assertFalse(asksAt(Duration.ofHours(2)));
        data(4, ofAlias(1));
        assertTrue(asksAt(Duration.ofHours(2)));
        nodeBirth(0, 6);
        deviceBirth(1);
        data(2, ofAlias(77));
        assertTrue(asksAt(Duration.ofHours(4)));
    }

    @Test
    @SuppressWarnings("JavaUtilDate") // of the interface of Tahu
    void the_request_is_a_command_that_tahu_reads() throws Exception {
        Command command = nodes.requests(START).get(0);
        assertEquals("spBv1.0/alder/NCMD/gateway", command.topic());
        SparkplugBPayload read = new SparkplugBPayloadDecoder().buildFromByteArray(command.bytes(), null);
        Metric metric = read.getMetrics().get(0);
        assertEquals("Node Control/Rebirth", metric.getName());
        assertEquals(MetricDataType.Boolean, metric.getDataType());
        assertEquals(true, metric.getValue());
        assertEquals(MILLIS, read.getTimestamp().getTime());
    }

    @Test
    void a_payload_that_cannot_be_read_leaves_what_is_known() {
        nodeBirth(0, 5);
        deviceBirth(1);
        assertThrows(SparkplugException.class, () -> take("DBIRTH/gateway/air", new byte[] {0x12, 5}));
        assertEquals(List.of(), data(2, ofAlias(1)).troubles());
    }
}
