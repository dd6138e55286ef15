package bagward.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.Line;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.Register;
import bagward.bag.RegisterChange;
import bagward.bag.RegisterRules;
import bagward.bag.TagCode;
import bagward.climate.Reading;
import bagward.climate.SeriesId;
import bagward.clockwork.HandClock;
import bagward.station.House;
import bagward.station.Spot;
import bagward.store.DayMarks;
import bagward.store.SqliteStores;
import bagward.store.SummedReadings;
import bagward.units.Quantity;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Old readings go, their days stay, and heads that are worked on keep theirs. */
class SummaryKeeperTest {
    private static final Instant START = Instant.parse("2024-03-01T00:00:00Z");
    private static final SeriesId SERIES = new SeriesId(Stations.post().id(), Quantity.TEMPERATURE);
    private static final Duration KEEP = Duration.ofDays(60);
    private static final TagCode TAG = new TagCode("R26-0147");

    private final HandClock clock = new HandClock(START.plus(Duration.ofDays(100)));
    private final DayMarks marks = new DayMarks(Stations.station());
    private final SqliteStores stores;
    private final SummedReadings readings;
    private Register register = Register.EMPTY;
    private final SummaryKeeper keeper;
    private final SummedSeasons seasons;

    SummaryKeeperTest(@TempDir Path folder) {
        stores = SqliteStores.open(folder.resolve("bagward.db"), clock);
        readings = new SummedReadings(stores.readings(), stores.summaries(), marks);
        keeper = new SummaryKeeper(clock, KEEP, readings, stores.summaries(), marks, () -> register);
        seasons = new SummedSeasons(Stations.station(), stores.summaries());
        readings.append(hundredDays());
    }

    @AfterEach
    void close() {
        keeper.close();
        stores.close();
    }

    @Test
    void readings_older_than_the_limit_go_by_whole_days_and_their_days_stay() throws InterruptedException {
        HouseDays before = days();
        assertEquals(0, before.temperature().knownDays());
        keeper.sumUp();
        HouseDays summed = days();
        assertTrue(summed.temperature().knownDays() >= 99, summed.temperature().knownDays() + " days");
        long gone = keeper.deleteOld();
        List<Reading> left = readings.readings(SERIES, Instant.MIN, Instant.MAX);
        assertEquals(hundredDays().size(), gone + left.size());
        Instant limit = START.plus(Duration.ofDays(40));
        assertFalse(left.get(0).measuredAt().isAfter(limit));
        assertTrue(left.get(0).measuredAt().isAfter(limit.minus(Duration.ofDays(2))));
        keeper.sumUp();
        assertEquals(summed.temperature().mean().toArray().length, days().size());
        for (int i = 0; i < summed.size(); i++) {
            assertEquals(
                    summed.temperature().mean().valueOrNaN(i),
                    days().temperature().mean().valueOrNaN(i),
                    0.0);
        }
        assertEquals(0, keeper.deleteOld());
    }

    @Test
    void nothing_goes_before_its_day_is_summed_up() throws InterruptedException {
        assertEquals(0, keeper.deleteOld());
        assertEquals(hundredDays(), readings.readings(SERIES, Instant.MIN, Instant.MAX));
    }

    @Test
    void the_readings_of_a_head_stay_until_it_is_harvested() throws InterruptedException {
        Instant pollinated = START.plus(Duration.ofDays(20));
        RegisterChange putOn = putOn(pollinated);
        register = register(List.of(putOn));
        keeper.sumUp();
        keeper.deleteOld();
        Instant oldest =
                readings.readings(SERIES, Instant.MIN, Instant.MAX).get(0).measuredAt();
        assertFalse(oldest.isAfter(pollinated.minus(Duration.ofDays(3))), oldest.toString());
        register = register(List.of(putOn, new RegisterChange.Harvest(TAG, clock.instant(), "")));
        keeper.deleteOld();
        oldest = readings.readings(SERIES, Instant.MIN, Instant.MAX).get(0).measuredAt();
        assertTrue(oldest.isAfter(pollinated.plus(Duration.ofDays(15))), oldest.toString());
    }

    @Test
    void it_does_all_of_it_by_itself_and_says_how_it_is() {
        keeper.start();
        Awaitility.await()
                .atMost(Duration.ofSeconds(30))
                .until(() -> keeper.state().says().contains("readings are kept since 2024-04"));
        assertTrue(keeper.state().well());
        assertTrue(days().temperature().knownDays() >= 99);
    }

    private HouseDays days() {
        LocalDate from = LocalDate.of(2024, 3, 1);
        return seasons.of(Stations.post().house(), from, from.plusDays(101));
    }

    private static Register register(List<RegisterChange> changes) {
        return new RegisterRules(Stations.station(), java.util.Set.of(Stations.material()))
                .apply(Register.EMPTY, changes);
    }

    private static RegisterChange putOn(Instant at) {
        House house = Stations.station().houses().get(0);
        return new RegisterChange.PutOn(
                TAG,
                at,
                new Spot(house.id(), house.bays().get(0).id(), 3),
                Stations.material(),
                new Line("Hvidå 12"),
                new Line("Hvidå 12"),
                new Pollination(at, "Mirja", PollinationKind.SELF, 8, Optional.empty()));
    }

    private static List<Reading> hundredDays() {
        List<Reading> list = new ArrayList<>();
        Duration every = Stations.post().expectedEvery();
        for (Instant at = START; at.isBefore(START.plus(Duration.ofDays(100))); at = at.plus(every.multipliedBy(2))) {
            list.add(Reading.of(SERIES, at, 10.0 + (int) (at.getEpochSecond() / 3_600 % 12)));
        }
        return list;
    }
}
