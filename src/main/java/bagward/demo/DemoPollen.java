package bagward.demo;

import bagward.bag.PollenScore;
import bagward.demo.physics.HouseAir;
import bagward.demo.physics.PollenSupply;
import bagward.pollen.PollenEntry;
import bagward.station.HouseId;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;

/**
 * The scores that the people of the demo took: each working morning about ten in both houses, by what was on the flowers
 * then and how it looked to them. Sundays, and a morning now and then, were not scored.
 */
public final class DemoPollen {
    private static final LocalTime USUAL = LocalTime.of(10, 0);
    private static final double FORGOTTEN = 0.06;
    private static final double EYE = 0.3;
    private static final double TRACE = 0.15;
    private static final double CLEAR = 0.27;
    private static final double PLENTIFUL = 0.46;

    private final Random random;
    private final List<Flowers> houses = List.of(
            new Flowers(new HouseId("linden"), "Jorun", DemoWorld::linden, new PollenSupply()),
            new Flowers(new HouseId("alder"), "Teo", DemoWorld::alder, new PollenSupply()));
    private final List<PollenEntry> entries = new ArrayList<>();

    private DemoPollen(long seed) {
        this.random = new Random(seed * 41);
    }

    private record Flowers(HouseId house, String by, Function<DemoWorld, HouseAir> air, PollenSupply supply) {}

    /** All scores up to the moment at which the demo begins; the same seed gives the same scores. */
    public static List<PollenEntry> scores(long seed) {
        DemoPollen pollen = new DemoPollen(seed);
        pollen.run(DemoSeason.world(seed), DemoSeason.BEGINS, DemoStation.HISTORY_BEGINS);
        Instant warmUp = DemoStation.HISTORY_BEGINS.minus(Duration.ofDays(1));
        DemoWorld story = new DemoWorld(seed, warmUp);
        for (Instant at = warmUp.plusSeconds(60); at.isBefore(DemoStation.HISTORY_BEGINS); at = at.plusSeconds(60)) {
            story.runTo(at);
        }
        pollen.run(story, DemoStation.HISTORY_BEGINS, DemoStation.NOW);
        return List.copyOf(pollen.entries);
    }

    private void run(DemoWorld world, Instant from, Instant to) {
        for (Instant at = from; at.isBefore(to); at = at.plusSeconds(60)) {
            world.runTo(at);
            ZonedDateTime local = at.atZone(DemoStation.ZONE);
            for (Flowers flowers : houses) {
                if (local.toLocalTime().equals(LocalTime.MIDNIGHT)) {
                    flowers.supply().night();
                }
                flowers.supply().step(flowers.air().apply(world), 60);
            }
            if (local.toLocalTime().equals(USUAL)) {
                score(local.toLocalDate());
            }
        }
    }

    private void score(LocalDate day) {
        for (Flowers flowers : houses) {
            double seen = flowers.supply().available() * Math.exp(EYE * random.nextGaussian());
            boolean forgotten = random.nextDouble() < FORGOTTEN;
            int minute = random.nextInt(20);
            if (!forgotten && day.getDayOfWeek() != DayOfWeek.SUNDAY) {
                Instant at = day.atTime(USUAL)
                        .plusMinutes(minute)
                        .atZone(DemoStation.ZONE)
                        .toInstant();
                entries.add(new PollenEntry.Scored(flowers.house(), Optional.empty(), at, flowers.by(), score(seen)));
            }
        }
    }

    private static PollenScore score(double seen) {
        if (seen < TRACE) {
            return PollenScore.NONE;
        }
        if (seen < CLEAR) {
            return PollenScore.TRACE;
        }
        return seen < PLENTIFUL ? PollenScore.CLEAR : PollenScore.PLENTIFUL;
    }
}
