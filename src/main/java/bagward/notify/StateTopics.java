package bagward.notify;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Priority;
import bagward.alarm.Subject;
import bagward.board.AlarmView;
import bagward.board.Board;
import bagward.board.HouseView;
import bagward.station.HouseId;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** What a board says under retained topics: one for each listed alarm, one for each house. */
final class StateTopics {
    private StateTopics() {}

    /** Last parts of the topics, and their JSON; topics of alarms that are over are not among them. */
    static SortedMap<String, String> of(Board board) {
        SortedMap<String, String> topics = new TreeMap<>();
        for (AlarmView view : board.alarms()) {
            topics.put(alarmTopic(view.alarm()), alarm(view).toString());
        }
        for (HouseView house : board.houses()) {
            List<AlarmView> here = board.alarms().stream()
                    .filter(view -> isIn(view, house.house().id()))
                    .toList();
            topics.put("house/" + house.house().id(), house(here).toString());
        }
        return topics;
    }

    private static boolean isIn(AlarmView view, HouseId house) {
        return view.spot().filter(spot -> spot.house().equals(house)).isPresent()
                || view.alarm().key().subject().equals(new Subject.InHouse(house));
    }

    private static String alarmTopic(Alarm alarm) {
        return "alarm/" + alarm.key().rule() + "/"
                + alarm.key().subject().key().replaceFirst(":", "/").replaceAll("[+#\\s]", "-");
    }

    private static ObjectNode alarm(AlarmView view) {
        Alarm alarm = view.alarm();
        ObjectNode object = OutgoingJson.key(OutgoingJson.object(), alarm.key())
                .put("state", Words.of(alarm.phase()))
                .put("priority", Words.of(view.rule().priority()))
                .put("name", view.rule().name())
                .put("since", alarm.since().toString());
        alarm.raisedAt().ifPresent(at -> object.put("raised-at", at.toString()));
        alarm.acknowledgedBy().ifPresent(by -> object.put("acknowledged-by", by));
        view.spot()
                .ifPresent(spot -> object.put("house", spot.house().value())
                        .put("bay", spot.bay().value())
                        .put("spot", spot.number()));
        if (!view.bags().isEmpty()) {
            ArrayNode bags = object.putArray("bags");
            view.bags().forEach(tag -> bags.add(tag.value()));
        }
        return object;
    }

    private static ObjectNode house(List<AlarmView> here) {
        Optional<Priority> highest =
                here.stream().map(view -> view.rule().priority()).max(Priority::compareTo);
        long open = here.stream()
                .filter(view -> view.alarm().phase() == AlarmPhase.UNACKNOWLEDGED)
                .count();
        return OutgoingJson.object()
                .put("bag-alarms", here.size())
                .put("unacknowledged", open)
                .put("highest", highest.map(Words::of).orElse("none"));
    }
}
