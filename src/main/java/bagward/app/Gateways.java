package bagward.app;

import bagward.collector.MqttCollector;
import bagward.collector.SessionState;
import bagward.collector.sparkplug.NodeState;
import bagward.watch.Health;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Gateways, and the sessions at the broker by which their messages come, as parts of the health. */
final class Gateways {
    private Gateways() {}

    /** Nothing of what there is none of. */
    static List<Health.Part> parts(MqttCollector collector) {
        List<Health.Part> parts = new ArrayList<>(sessions(collector.sessions(), collector.remarks()));
        parts.addAll(edgeNodes(collector.edgeNodes()));
        return parts;
    }

    /** That a gateway shares a session is no fault, but worth a line. */
    static List<Health.Part> sessions(List<SessionState> sessions, List<String> remarks) {
        if (sessions.size() < 2 && remarks.isEmpty()) {
            return List.of();
        }
        String says = sessions.stream().map(Gateways::says).collect(Collectors.joining("; ")) + ".";
        boolean connected = sessions.stream().allMatch(SessionState::connected);
        String remarked = remarks.stream().map(remark -> " " + remark + ".").collect(Collectors.joining());
        return List.of(new Health.Part("sessions", connected, says + remarked));
    }

    private static String says(SessionState session) {
        String how = session.connected() ? "connected" : "not connected";
        return session.name() + " (" + session.clientId() + ") " + how
                + (session.waiting() > 0 ? ", " + session.waiting() + " messages wait here" : "");
    }

    /** One part for all. That one is offline is no fault of this program: its sensors have alarms. */
    private static List<Health.Part> edgeNodes(List<NodeState> nodes) {
        String says = nodes.stream().map(NodeState::says).collect(Collectors.joining(". "));
        return nodes.isEmpty() ? List.of() : List.of(new Health.Part("gateways", true, says));
    }
}
