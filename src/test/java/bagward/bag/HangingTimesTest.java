package bagward.bag;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.bag.RegisterChange.HangToDry;
import bagward.bag.RegisterChange.Harvest;
import bagward.bag.RegisterChange.Pack;
import bagward.bag.RegisterChange.PutOn;
import bagward.climate.Span;
import bagward.station.HouseId;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class HangingTimesTest {
    private static final Instant START = Instant.parse("2031-08-20T00:00:00Z");
    private final HangingTimes times = new HangingTimes(List.of(new Span(at(0), at(5)), new Span(at(7), Instant.MAX)));

    private static Instant at(int hour) {
        return START.plusSeconds(3600L * hour);
    }

    @Test
    void a_lot_hangs_from_when_it_is_hung_until_it_is_taken_away() {
        assertEquals(Optional.of(at(0)), times.since(at(0)));
        assertEquals(Optional.of(at(0)), times.since(at(4)));
        assertEquals(Optional.empty(), times.since(at(5)));
        assertEquals(Optional.of(at(7)), times.since(at(400)));
    }

    @Test
    void the_last_end_is_one_that_has_come() {
        assertEquals(Optional.empty(), times.lastEnd(at(4)));
        assertEquals(Optional.of(at(5)), times.lastEnd(at(6)));
        assertEquals(Optional.of(at(5)), times.lastEnd(at(400)));
    }

    @Test
    void stays_of_several_lots_that_overlap_or_touch_are_one_and_other_places_do_not_count() {
        HouseId room = new HouseId("seeds");
        Optional<HouseId> here = Optional.of(room);
        Register register = new RegisterRules(Stations.station(), Set.of(Stations.PAPER))
                .apply(
                        Register.EMPTY,
                        Stream.of(
                                        lot(1, new HangToDry(new TagCode("A1"), at(10), here), at(20)),
                                        lot(2, new HangToDry(new TagCode("A2"), at(15), here), at(30)),
                                        lot(3, new HangToDry(new TagCode("A3"), at(30), here), at(40)),
                                        lot(4, new HangToDry(new TagCode("A4"), at(40), Optional.empty()), at(50)))
                                .flatMap(List::stream)
                                .toList());

        assertEquals(
                List.of(new Span(at(10), at(40))),
                HangingTimes.of(register, room).spans());
    }

    private static List<RegisterChange> lot(int spot, HangToDry hung, Instant packed) {
        Line line = new Line("Tessel");
        Pollination pollination = new Pollination(START, "Ida", PollinationKind.SELF, 8, Optional.empty());
        return List.of(
                new PutOn(hung.tag(), START, Stations.spot(spot), Stations.PAPER, line, line, pollination),
                new Harvest(hung.tag(), at(9), ""),
                hung,
                new Pack(hung.tag(), packed, "", Optional.empty()));
    }
}
