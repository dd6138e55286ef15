package bagward.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmKey;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Subject;
import bagward.bag.TagCode;
import bagward.board.AlarmView;
import bagward.board.Board;
import bagward.site.view.Round;
import bagward.site.view.Standing;
import bagward.site.view.ToDo;
import bagward.station.HouseId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A house that calls for all of its bags. */
class TogetherPagesTest {
    private final OpenSite site = new OpenSite();
    private final Board before = site.watch.board();
    private final HouseId house = before.houses().get(0).house().id();
    private final List<TagCode> tags = before.bags().stream()
            .filter(bag -> bag.head().spot().house().equals(house))
            .map(bag -> bag.head().tag())
            .toList();

    TogetherPagesTest() {
        Alarm alarm = new Alarm(
                new AlarmKey(SampleStation.HOT.id(), new Subject.InHouse(house)),
                AlarmPhase.UNACKNOWLEDGED,
                before.at().minusSeconds(3600),
                Optional.of(before.at()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "many bags hot");
        List<AlarmView> alarms = new ArrayList<>(before.alarms());
        alarms.add(new AlarmView(alarm, SampleStation.HOT.together(3), Optional.empty(), tags));
        site.watch.show(new Board(
                before.at(),
                before.station(),
                before.zone(),
                before.houses(),
                before.bags(),
                before.sensors(),
                alarms,
                before.newestReading()));
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void its_alarm_has_a_page_with_every_bag_and_what_is_in_it() {
        String page = site.visitor.get("/alarms/hot/house%3A" + house).body();
        assertTrue(page.contains("many bags hot"), page);
        assertTrue(page.contains("Bags that the house calls for now"), page);
        assertTrue(tags.size() > 3, "bags to look for: " + tags);
        tags.forEach(tag -> assertTrue(page.contains("href=\"/bag/" + tag + "\""), page));
    }

    @Test
    void the_page_of_each_of_its_bags_says_what_the_house_calls_for() {
        String page = site.visitor.get("/bag/" + tags.get(tags.size() - 1)).body();
        assertTrue(page.contains("many bags hot"), page);
        assertTrue(page.contains("/alarms/hot/house%3A" + house), page);
    }

    @Test
    void programs_find_its_bags_in_the_board() {
        String json = site.visitor.get("/api/board").body();
        assertTrue(json.contains("\"subject\":\"house:" + house + "\""), json);
        assertTrue(json.contains("\"bags\":[\"" + tags.get(0) + "\""), json);
    }

    @Test
    void in_the_round_a_house_comes_before_its_bags_that_are_as_urgent() {
        List<String> addresses = Round.of(site.watch.board(), 20).shown().stream()
                .filter(toDo -> toDo.standing() != Standing.ACT)
                .map(ToDo::address)
                .toList();
        assertEquals("/alarms/hot/house%3A" + house, addresses.get(0), addresses::toString);
    }
}
