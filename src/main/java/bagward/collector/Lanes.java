package bagward.collector;

import bagward.collector.payload.SensorSource;
import bagward.collector.payload.TopicFilter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;

/**
 * Which sessions there are, and by which of them each topic comes: one for each gateway, so that the backlog of one waits in
 * a queue of its own, and a main one for sensors that send for themselves. A pure function of the configuration; a gateway
 * that is added at its end moves no other.
 *
 * @param all the lanes, the main one first
 * @param remarks what a person should know: gateways that share a session against their wish
 */
record Lanes(List<Lane> all, List<String> remarks) {
    /** Sessions at most; each costs a connection and five threads. */
    static final int MOST = 16;

    Lanes {
        all = List.copyOf(all);
        remarks = List.copyOf(remarks);
    }

    /**
     * The lanes of a station.
     *
     * @param clientId name of the main session; others begin with it
     */
    static Lanes of(String clientId, List<SensorSource> sources) {
        List<String> remarks = new ArrayList<>();
        List<Group> groups = grouped(sources);
        join(groups, remarks);
        List<Lane> lanes = new ArrayList<>();
        for (int i = 0; i < Math.min(MOST, groups.size()); i++) {
            lanes.add(groups.get(i).lane(clientId));
        }
        if (groups.size() > MOST) {
            Group main = groups.get(0);
            List<Group> further = groups.subList(MOST, groups.size());
            further.forEach(main::takeFilters);
            lanes.set(0, main.lane(clientId));
            remarks.add("More than " + (MOST - 1) + " gateways: "
                    + String.join(
                            ", ",
                            further.stream().flatMap(g -> g.gateways.stream()).toList())
                    + " share the main session, whose readings wait behind a backlog of theirs");
        }
        return new Lanes(lanes, remarks);
    }

    /** One group for the sensors without a gateway, also if there are none, and one for each gateway. */
    private static List<Group> grouped(List<SensorSource> sources) {
        Map<String, Group> groups = new LinkedHashMap<>();
        groups.put("", new Group());
        for (SensorSource source : sources) {
            String gateway = source.gateway().orElse("");
            Group group = groups.computeIfAbsent(gateway, g -> new Group(List.of(g)));
            group.filters.add(source.topic());
        }
        return new ArrayList<>(groups.values());
    }

    /** A message that fits two sessions would come twice, so groups whose filters overlap become one. */
    private static void join(List<Group> groups, List<String> remarks) {
        for (int i = 0; i < groups.size(); i++) {
            for (int j = i + 1; j < groups.size(); j++) {
                Optional<String> overlap = groups.get(i).overlap(groups.get(j));
                if (overlap.isPresent()) {
                    Group joined = groups.remove(j);
                    remarks.add("Gateway " + joined.gateways.get(0) + " and "
                            + groups.get(i).who() + " share a session, since " + overlap.get()
                            + " overlap: narrow one of them, or name the same gateway for both");
                    groups.get(i).join(joined);
                    j = i;
                }
            }
        }
    }

    /** Sensors that share a session. */
    private static final class Group {
        private final List<String> gateways;
        private final List<TopicFilter> filters = new ArrayList<>();
        private final boolean main;

        Group() {
            this.gateways = new ArrayList<>();
            this.main = true;
        }

        Group(List<String> gateways) {
            this.gateways = new ArrayList<>(gateways);
            this.main = false;
        }

        String who() {
            return main ? "sensors without a gateway" : "gateway " + gateways.get(0);
        }

        void join(Group other) {
            if (!main) {
                gateways.addAll(other.gateways);
            }
            takeFilters(other);
        }

        void takeFilters(Group other) {
            filters.addAll(other.filters);
        }

        Optional<String> overlap(Group other) {
            for (TopicFilter one : filters) {
                for (TopicFilter another : other.filters) {
                    if (one.overlaps(another)) {
                        return Optional.of("'" + one.text() + "' and '" + another.text() + "'");
                    }
                }
            }
            return Optional.empty();
        }

        Lane lane(String clientId) {
            return main
                    ? Lane.main(clientId, widest(filters))
                    : Lane.of(clientId + "-" + mark(gateways.get(0)), gateways, widest(filters));
        }

        /** Eight hexadecimal digits that stand for a name in a client id, where not every sign is allowed. */
        private static String mark(String name) {
            return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8))
                    .toString()
                    .substring(0, 8);
        }
    }

    /** The filters that no other covers, for a broker would send such messages twice. */
    static List<TopicFilter> widest(List<TopicFilter> filters) {
        List<TopicFilter> all = filters.stream().distinct().toList();
        List<TopicFilter> wide =
                all.stream().filter(Predicate.not(TopicFilter::isLiteral)).toList();
        return all.stream()
                .filter(f -> wide.stream().noneMatch(other -> !other.equals(f) && other.covers(f)))
                .toList();
    }
}
