package bagward.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.Head;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.bag.UsedBefore;
import bagward.board.Scenario;
import bagward.climate.Reading;
import bagward.climate.SeriesId;
import bagward.mould.LotCourse;
import bagward.mould.Seeds;
import bagward.mould.UsedBag;
import bagward.station.PlaceClimates;
import bagward.station.Sensor;
import bagward.station.Station;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Pods, lots and used bags on the real store and the running watch. */
class LotBookTest extends WatchStage {
    private static final Station STATION = new Scenario(20).withSeedRoom().at(0).station();
    private static final TagCode SECOND = new TagCode("R26-0148");

    @Test
    void a_used_bag_and_a_drying_lot_are_told_the_same_in_whatever_order_all_of_it_came() {
        List<Reading> readings = new ArrayList<>(house(0, 100, 97));
        readings.addAll(inSeedRoom(house(60, 100, 55)));
        List<RegisterChange> changes = new ArrayList<>(List.of(
                putOn(0),
                new RegisterChange.TakeOff(TAG, hour(40)),
                again(),
                new RegisterChange.Harvest(TAG, hour(60), ""),
                new RegisterChange.HangToDry(
                        TAG, hour(61), Optional.of(STATION.drying().get(0).id()))));
        clock.set(hour(100));
        hear(readings);
        watch.change(changes, "Mirja");
        LotCourse course = book().course(head(TAG)).orElseThrow();
        UsedBag bag = book().usedBag(head(SECOND)).orElseThrow();

        assertEquals(20, course.growingHours(), 1e-9, "from when the bag came off to the harvest");
        assertEquals(1, course.unknownHours(), 1e-9, "from the harvest until it was hung");
        assertEquals(39, course.stays().get(0).index().knownHours(), 1e-9);
        assertTrue(course.stays().get(0).newest().isPresent());
        assertTrue(bag.before().index() > 0, "damp in the bag of the first head");
        assertEquals(TAG, bag.uses().get(0).head());
        assertEquals(Optional.empty(), book().course(head(SECOND)), "its bag is on");
        assertEquals(Optional.empty(), book().usedBag(head(TAG)), "its bag was new");

        watch.change(List.of(new RegisterChange.Harvest(SECOND, hour(100), "with its bag")), "Mirja");
        LotCourse inOneGo = book().course(head(SECOND)).orElseThrow();
        assertEquals(0, inOneGo.pods().knownHours() + inOneGo.unknownHours(), 1e-9, "no hour without a bag");

        anew();
        clock.set(hour(100));
        Collections.shuffle(readings, new Random(4));
        hear(readings);
        Collections.reverse(changes);
        watch.change(changes, "Mirja");
        assertEquals(course.state(), book().course(head(TAG)).orElseThrow().state());
        assertEquals(bag, book().usedBag(head(SECOND)).orElseThrow());
    }

    @Override
    LiveWatch open() {
        WatchParts known = Stations.parts(clock, stores, alarms);
        return new LiveWatch(
                new WatchParts(
                        known.clock(),
                        STATION,
                        known.materials(),
                        known.rules(),
                        known.organisms(),
                        known.crops(),
                        known.foliage(),
                        known.readings(),
                        known.quarantine(),
                        known.checks(),
                        known.register(),
                        known.alarms()),
                () -> collector,
                QUICK);
    }

    private static List<Reading> inSeedRoom(List<Reading> readings) {
        Sensor post = STATION.sensors().stream()
                .filter(sensor -> sensor.house().equals(STATION.drying().get(0).id()))
                .findFirst()
                .orElseThrow();
        return readings.stream()
                .map(r -> Reading.of(new SeriesId(post.id(), r.series().quantity()), r.measuredAt(), r.value()))
                .toList();
    }

    private static RegisterChange again() {
        RegisterChange.PutOn like = (RegisterChange.PutOn) putOn(SECOND, 4, 50);
        return new RegisterChange.PutOn(
                like.tag(),
                like.at(),
                like.spot(),
                like.material(),
                like.seedParent(),
                like.pollenParent(),
                like.pollination(),
                Optional.empty(),
                Optional.of(UsedBefore.on(TAG)));
    }

    private LotBook book() {
        return new LotBook(
                watch,
                (house, bay, grid) -> PlaceClimates.climate(STATION, house, bay, stores.readings(), grid),
                Seeds.surfaces(),
                Seeds.storage(),
                clock);
    }

    private Head head(TagCode tag) {
        return watch.register().find(tag).orElseThrow();
    }
}
