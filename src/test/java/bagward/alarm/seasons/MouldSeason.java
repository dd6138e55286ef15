package bagward.alarm.seasons;

import bagward.bag.BagBelief;
import bagward.bag.BagClimate;
import bagward.bag.BagClimates;
import bagward.bag.BagLearning;
import bagward.bag.BagLesson;
import bagward.bag.BagMaterial;
import bagward.bag.Banded;
import bagward.bag.MaterialLearning;
import bagward.bag.NightOutlook;
import bagward.bag.Outlook;
import bagward.bag.SensoredBag;
import bagward.bag.SimulatedSeason;
import bagward.bag.Sky;
import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * Three weeks of a simulated house with 20 bags of one material. Two of them carry a lent sensor in the first week and teach
 * the material; of the other 18 three go on each second morning or so of the second week, and come off at six o'clock a week
 * later.
 */
final class MouldSeason {
    private static final int DAYS = 21;
    private static final int NEVER = Integer.MAX_VALUE;
    private static final int CELLS_AN_HOUR = (int) Duration.ofHours(1).dividedBy(SimulatedSeason.STEP);
    private static final int CELLS_A_DAY = 24 * CELLS_AN_HOUR;
    private static final int SENSORED = 2;
    private static final int BAGS = 18;
    private static final int FIRST_MORNING = 8;
    private static final int MORNINGS = 7;

    private final long seed;
    private final Climate house;
    private final List<SeasonBag> bags = new ArrayList<>();
    private final Map<Instant, Outlook.Night> outlooks = new TreeMap<>();

    MouldSeason(long seed, BagMaterial material) {
        this.seed = seed;
        SimulatedSeason season = new SimulatedSeason(seed, DAYS);
        SplittableRandom mornings = new SplittableRandom(seed);
        Map<MouldWorld, HiddenMould> moulds = new EnumMap<>(MouldWorld.class);
        for (MouldWorld world : MouldWorld.values()) {
            moulds.put(world, world.mould(seed));
        }
        house = season.houseBySensor();
        BagBelief belief = new MaterialLearning(material, lessons(season)).unsensored();
        for (int bag = 0; bag < BAGS; bag++) {
            // The season begins at noon: four hours earlier is eight in the morning.
            int day = FIRST_MORNING + mornings.nextInt(MORNINGS);
            int first = day * CELLS_A_DAY - (4 - mornings.nextInt(4)) * CELLS_AN_HOUR;
            int end = (day + 7) * CELLS_A_DAY - 6 * CELLS_AN_HOUR;
            Climate truth = season.run(season.bag(), NEVER).part(first, end);
            Climate around = house.part(first, end);
            BagClimate inside =
                    BagClimates.estimate(around, belief, around.grid().start(), Sky.UNKNOWN);
            Map<MouldWorld, Optional<Instant>> infections = new EnumMap<>(MouldWorld.class);
            moulds.forEach((world, mould) -> infections.put(world, mould.infection(truth)));
            bags.add(new SeasonBag(inside, known(truth), belief, truth, infections));
        }
    }

    private List<BagLesson> lessons(SimulatedSeason season) {
        List<BagLesson> lessons = new ArrayList<>();
        for (int bag = 0; bag < SENSORED; bag++) {
            Climate lent = season.lentSensor(season.run(season.bag(), NEVER));
            int week = 7 * CELLS_A_DAY;
            BagLearning.lesson(SensoredBag.of(house.part(0, week), lent.part(0, week)))
                    .ifPresent(lessons::add);
        }
        return lessons;
    }

    long seed() {
        return seed;
    }

    Climate house() {
        return house;
    }

    List<SeasonBag> bags() {
        return bags;
    }

    /** The outlook of the house for a full hour; none is asked for twice. */
    Outlook outlook(Instant hour) {
        Outlook.Night made = outlooks.get(hour);
        if (made != null) {
            return made;
        }
        Outlook outlook = NightOutlook.of(house, ZoneOffset.UTC, hour);
        if (outlook instanceof Outlook.Night night) {
            outlooks.put(hour, night);
        }
        return outlook;
    }

    private static BagClimate known(Climate truth) {
        RegularSeries warm = truth.temperature();
        RegularSeries damp = truth.humidity();
        return new BagClimate(new Banded(warm, warm, warm), new Banded(damp, damp, damp), new BitSet(), new BitSet());
    }
}
