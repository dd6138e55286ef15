package bagward.collector.sparkplug;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SparkplugTopicTest {
    private static final NodeId NODE = new NodeId("alder", "gateway");

    @Test
    void topics_of_edge_nodes_and_devices_are_told_apart() {
        assertEquals(
                Optional.of(new SparkplugTopic(NODE, SparkplugTopic.Type.NDATA, Optional.empty())),
                SparkplugTopic.of("spBv1.0/alder/NDATA/gateway"));
        assertEquals(
                Optional.of(new SparkplugTopic(NODE, SparkplugTopic.Type.DDEATH, Optional.of("air"))),
                SparkplugTopic.of("spBv1.0/alder/DDEATH/gateway/air"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "spBv1.0/STATE/host",
                "spBv1.0/alder/NDATA",
                "spBv1.0/alder/NDATA/gateway/air",
                "spBv1.0/alder/DDATA/gateway",
                "spBv1.0/alder/DDATA/gateway/",
                "spBv1.0/alder/DDATA/gateway/air/more",
                "spAv1.0/alder/NDATA/gateway",
                "spBv1.0/alder/ndata/gateway",
                ""
            })
    void what_is_no_topic_of_an_edge_node_is_none(String text) {
        assertEquals(Optional.empty(), SparkplugTopic.of(text));
    }
}
