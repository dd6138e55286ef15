package bagward.collector;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.SensorId;
import bagward.collector.payload.BareNumber;
import bagward.collector.payload.MeasureUnit;
import bagward.collector.payload.Place;
import bagward.collector.payload.SensorSource;
import bagward.collector.payload.SparkplugDevice;
import bagward.collector.payload.TopicFilter;
import bagward.collector.sparkplug.NodeId;
import bagward.units.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which sensor comes by which session. */
class LanesTest {
    private static final Place PLACE = Place.of(Quantity.TEMPERATURE, "", MeasureUnit.CELSIUS);

    private static SensorSource at(String topic, String gateway) {
        return new SensorSource(
                new SensorId("s"),
                new TopicFilter(topic),
                new BareNumber(PLACE),
                gateway.isEmpty() ? Optional.empty() : Optional.of(gateway));
    }

    private static Lanes lanes(SensorSource... sources) {
        return Lanes.of("bagward", List.of(sources));
    }

    private static List<List<String>> filters(Lanes lanes) {
        return lanes.all().stream()
                .map(lane -> lane.filters().stream().map(TopicFilter::text).toList())
                .toList();
    }

    @Test
    void each_gateway_has_a_session_and_the_other_sensors_share_the_main_one() {
        Lanes lanes = lanes(at("a/1", "a"), at("own", ""), at("b/1", "b"), at("a/2", "a"));
        assertEquals(List.of(List.of("own"), List.of("a/1", "a/2"), List.of("b/1")), filters(lanes));
        assertEquals("bagward", lanes.all().get(0).clientId());
        assertEquals("gateway a", lanes.all().get(1).name());
        assertEquals(List.of(), lanes.remarks());
    }

    @Test
    void a_sparkplug_edge_node_is_a_gateway_by_itself() {
        SparkplugDevice device = new SparkplugDevice(new NodeId("G", "north"), Optional.of("d"), List.of(PLACE));
        Lanes lanes = lanes(new SensorSource(new SensorId("s"), device.topics(), device));
        assertEquals(List.of(List.of(), List.of("spBv1.0/G/+/north/#")), filters(lanes));
        assertEquals("gateway G/north", lanes.all().get(1).name());
    }

    @Test
    void a_session_keeps_its_name_at_the_broker_when_other_gateways_come_and_go() {
        Lane before = lanes(at("a/1", "a"), at("b/1", "b")).all().get(2);
        Lane after = lanes(at("b/1", "b"), at("c/1", "c"), at("b/2", "b")).all().get(1);
        assertEquals(before.clientId(), after.clientId());
        assertTrue(before.clientId().matches("bagward-[0-9a-f]{8}"), before.clientId());
    }

    @Test
    void gateways_whose_topics_overlap_share_a_session_and_that_is_said() {
        Lanes lanes = lanes(at("a/#", "a"), at("own", ""), at("a/x", "b"), at("c", "c"));
        assertEquals(List.of(List.of("own"), List.of("a/#"), List.of("c")), filters(lanes));
        assertEquals(
                List.of("Gateway b and gateway a share a session, since 'a/#' and 'a/x' overlap: narrow one of them,"
                        + " or name the same gateway for both"),
                lanes.remarks());
    }

    @Test
    void an_overlap_by_way_of_a_third_gateway_joins_all_three() {
        Lanes lanes = lanes(at("a/x", "a"), at("b/y", "b"), at("+/x", "c"), at("b/+", "c"));
        assertEquals(3 - 1, lanes.all().size());
        assertEquals("gateways a, c, b", lanes.all().get(1).name());
        assertEquals(2, lanes.remarks().size());
    }

    @Test
    void more_gateways_than_there_may_be_sessions_share_the_main_one() {
        List<SensorSource> sources = new ArrayList<>(List.of(at("own", "")));
        for (int i = 1; i <= Lanes.MOST + 1; i++) {
            sources.add(at("t/" + i, "gw" + i));
        }
        Lanes lanes = Lanes.of("bagward", sources);
        assertEquals(Lanes.MOST, lanes.all().size());
        assertEquals(List.of("own", "t/16", "t/17"), filters(lanes).get(0));
        assertEquals(
                List.of(
                        "More than 15 gateways: gw16, gw17 share the main session, whose readings wait behind a backlog of"
                                + " theirs"),
                lanes.remarks());
    }

    @Test
    void what_another_session_has_to_give_up_first_is_not_subscribed_at_once() {
        List<Lane> lanes = lanes(at("own", ""), at("a/1", "a"), at("b/1", "b")).all();
        Map<Lane, Set<TopicFilter>> begin =
                Sessions.begin(lanes, Map.of("bagward", Set.of(new TopicFilter("own"), new TopicFilter("a/#"))));
        assertEquals(Set.of(), begin.get(lanes.get(1)));
        assertEquals(Set.of(new TopicFilter("b/1")), begin.get(lanes.get(2)));
    }

    @Test
    void a_session_that_is_not_configured_any_more_is_taken_up_with_what_it_has() {
        List<Lane> lanes = lanes(at("own", "")).all();
        Map<Lane, Set<TopicFilter>> begin =
                Sessions.begin(lanes, Map.of("bagward", Set.of(), "bagward-old", Set.of(new TopicFilter("x"))));
        assertEquals(Set.of(new TopicFilter("x")), begin.get(Lane.over("bagward-old")));
        assertEquals(Set.of(new TopicFilter("own")), begin.get(lanes.get(0)));
    }

    @Test
    void a_program_that_noted_nothing_yet_had_everything_in_the_main_session() {
        List<Lane> lanes = lanes(at("own", ""), at("a/1", "a")).all();
        Map<Lane, Set<TopicFilter>> begin = Sessions.begin(lanes, Map.of());
        assertEquals(Set.of(new TopicFilter("own"), new TopicFilter("a/1")), begin.get(lanes.get(0)));
        assertEquals(Set.of(), begin.get(lanes.get(1)));
    }
}
