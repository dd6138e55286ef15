package bagward.app;

import bagward.collector.sparkplug.NodeState;
import bagward.watch.Health;
import java.util.List;
import java.util.stream.Collectors;

/** The gateways that speak Sparkplug B, as a part of the health. */
final class Gateways {
    private Gateways() {}

    /** One part for all; none without gateways. That one is offline is no fault of this program: its sensors have alarms. */
    static List<Health.Part> parts(List<NodeState> nodes) {
        String says = nodes.stream().map(NodeState::says).collect(Collectors.joining(". "));
        return nodes.isEmpty() ? List.of() : List.of(new Health.Part("gateways", true, says));
    }
}
