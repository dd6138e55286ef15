package bagward.collector.sparkplug;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/** One edge node: its births, its sequence, who of it is offline. Keeps only what concerns the devices that are wanted. */
final class EdgeNode {
    /** Stands for the edge node among its devices; no device id is empty. */
    static final String ITSELF = "";

    private final NodeId id;
    private final Set<String> wanted;
    private final Map<String, Births> births = new HashMap<>();
    private final Map<String, Instant> offline = new HashMap<>();
    private final Sequence sequence = new Sequence();
    private final RebirthRequests requests = new RebirthRequests();
    private OptionalLong birthNumber = OptionalLong.empty();
    private boolean alive;
    private long birthCount;
    private long unknown;

    EdgeNode(NodeId id, Set<String> wanted) {
        this.id = id;
        this.wanted = Set.copyOf(wanted);
    }

    Said take(SparkplugTopic topic, SparkplugPayload payload, Instant arrivedAt) {
        String device = topic.device().orElse(ITSELF);
        return switch (topic.type()) {
            case NBIRTH -> born(payload, arrivedAt);
            case NDEATH -> died(payload, arrivedAt);
            case DBIRTH -> counted(payload, () -> deviceBorn(device, payload));
            case DDEATH -> counted(payload, () -> deviceDied(device, arrivedAt));
            case NDATA, DDATA -> counted(payload, () -> data(device, payload));
            case NCMD, DCMD -> Said.NOTHING;
        };
    }

    private Said born(SparkplugPayload payload, Instant arrivedAt) {
        sequence.restart(payload.sequence());
        birthNumber = payload.birthNumber();
        requests.born(arrivedAt);
        births.clear();
        offline.clear();
        alive = true;
        return known(ITSELF, payload);
    }

    private Said deviceBorn(String device, SparkplugPayload payload) {
        offline.remove(device);
        if (!alive) {
            requests.want();
        }
        return known(device, payload);
    }

    private Said known(String device, SparkplugPayload payload) {
        birthCount++;
        if (!wanted.contains(device)) {
            return Said.NOTHING;
        }
        births.put(device, Births.of(payload));
        return said(device, payload, true);
    }

    /** The death of an earlier connection comes after the birth of the next: it is told by its number, and ignored. */
    private Said died(SparkplugPayload payload, Instant arrivedAt) {
        OptionalLong number = payload.birthNumber();
        boolean ofAnother = number.isPresent() && birthNumber.isPresent() && !number.equals(birthNumber);
        if (!ofAnother) {
            births.clear();
            alive = false;
            wanted.forEach(device -> offline.putIfAbsent(device, arrivedAt));
            offline.putIfAbsent(ITSELF, arrivedAt);
        }
        return Said.NOTHING;
    }

    private Said deviceDied(String device, Instant arrivedAt) {
        births.remove(device);
        if (wanted.contains(device)) {
            offline.putIfAbsent(device, arrivedAt);
        }
        return Said.NOTHING;
    }

    private Said data(String device, SparkplugPayload payload) {
        offline.remove(device);
        offline.remove(ITSELF);
        if (!wanted.contains(device)) {
            return Said.NOTHING;
        }
        if (!births.containsKey(device)) {
            requests.want();
        }
        return said(device, payload, false);
    }

    private interface Rest {
        Said take();
    }

    private Said counted(SparkplugPayload payload, Rest rest) {
        if (sequence.next(payload.sequence())) {
            requests.want();
        }
        return rest.take();
    }

    private Said said(String device, SparkplugPayload payload, boolean birth) {
        Births before = births.getOrDefault(device, Births.NONE);
        List<NamedMetric> metrics = new ArrayList<>();
        List<String> troubles = new ArrayList<>();
        for (Metric metric : payload.metrics()) {
            try {
                metrics.add(before.named(metric, payload.timestamp()));
            } catch (SparkplugException e) {
                unknown++;
                requests.want();
                troubles.add(String.valueOf(e.getMessage()));
            }
        }
        return new Said(metrics, birth, troubles.stream().distinct().toList());
    }

    Optional<Command> request(Instant now) {
        return requests.due(now) ? Optional.of(RebirthRequests.command(id, now)) : Optional.empty();
    }

    Optional<Instant> offlineSince(String device) {
        return Optional.ofNullable(offline.get(device));
    }

    NodeState state() {
        return new NodeState(id, alive, offlineSince(ITSELF), birthCount, sequence.missed(), unknown, requests.asked());
    }
}
