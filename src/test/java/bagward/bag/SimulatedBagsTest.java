package bagward.bag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Climate;
import bagward.document.Inspection;
import bagward.document.Section;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Bags of a simulator with other physics than the balance ({@link SimulatedBag}): 10 seasons of a week, 20 bags each, two of
 * them sensored.
 */
class SimulatedBagsTest {
    private static final int NEVER = Integer.MAX_VALUE;
    private static final int CELLS_PER_HOUR = 12;

    @Test
    void two_sensored_bags_of_twenty_make_the_nights_of_the_others_known_within_four_points() {
        Trial learnt = new Trial();
        Trial prior = new Trial();
        for (int seed = 100; seed < 110; seed++) {
            SimulatedSeason season = new SimulatedSeason(seed, 7);
            Climate house = season.houseBySensor();
            List<BagLesson> lessons = new ArrayList<>();
            for (int bag = 0; bag < 2; bag++) {
                Climate lent = season.lentSensor(season.run(season.bag(), NEVER));
                BagLearning.lesson(SensoredBag.of(house, lent)).ifPresent(lessons::add);
            }
            BagBelief belief = new MaterialLearning(film(), lessons).unsensored();
            for (int bag = 2; bag < 20; bag++) {
                Climate truth = season.run(season.bag(), NEVER);
                learnt.nightHumidity(estimate(house, belief), truth.humidity(), house);
                prior.nightHumidity(estimate(house, BagBelief.prior(film())), truth.humidity(), house);
            }
        }

        assertTrue(learnt.error() <= 4, "night humidity is off by " + learnt.error() + " %RH");
        assertTrue(learnt.error() < prior.error(), "learning did not help: " + prior.error());
        assertTrue(learnt.held() >= 0.85 && learnt.held() <= 0.95, "90 % intervals hold " + learnt.held());
    }

    /**
     * Asks for what the check reaches, not for what is wished: in the simulator a bag that falls shut at night, in damp
     * air or when it was nearly shut before differs less than sensors and weather do, so many stay unseen for 6 h.
     */
    @Test
    void of_bags_that_fall_shut_two_in_five_are_found_within_six_hours_and_none_is_called_that_did_not() {
        MaterialLearning material = new MaterialLearning(film(), List.of());
        int found = 0;
        int falseCalls = 0;
        int each = 60;
        for (int seed = 500; seed < 500 + each / 2; seed++) {
            SimulatedSeason season = new SimulatedSeason(seed, 7);
            Climate house = season.houseBySensor();
            for (int bag = 0; bag < 2; bag++) {
                SensoredBag well = SensoredBag.of(house, season.lentSensor(season.run(season.bag(), NEVER)));
                falseCalls +=
                        called(well, material, 6 * CELLS_PER_HOUR, house.grid().size()) ? 1 : 0;
                int shutAt = season.randomMinute(24 * 60);
                SensoredBag shut = SensoredBag.of(house, season.lentSensor(season.run(season.bag(), shutAt)));
                int cell = shutAt / 5 + 1;
                found += called(shut, material, cell, cell + 6 * CELLS_PER_HOUR) ? 1 : 0;
            }
        }

        assertTrue(found * 5 >= each * 2, "found " + found + " of " + each);
        assertEquals(0, falseCalls, falseCalls + " false calls in " + each + " bag-weeks");
    }

    @Test
    void a_bag_that_was_blown_off_is_told_from_one_that_fell_shut() {
        MaterialLearning material = new MaterialLearning(film(), List.of());
        SimulatedSeason season = new SimulatedSeason(700, 5);
        Climate house = season.houseBySensor();
        int offAt = 3 * 1440;
        SimulatedBag bag = new SimulatedBag(0.6, 1.4e-5, 0.25);
        SensoredBag blown = SensoredBag.of(house, season.lentSensor(season.run(bag, offAt, SimulatedBag::blowOff)));

        BagFit before = BagFitCheck.at(blown, material, offAt / 5);
        BagFit after = BagFitCheck.at(blown, material, offAt / 5 + 5 * CELLS_PER_HOUR);

        assertEquals(BagFit.Verdict.FITS, before.verdict(), before.because());
        assertEquals(BagFit.Verdict.OFF, after.verdict(), after.because());
    }

    private static boolean called(SensoredBag bag, MaterialLearning material, int from, int to) {
        for (int end = from; end <= to; end += CELLS_PER_HOUR) {
            if (BagFitCheck.at(bag, material, end).verdict() == BagFit.Verdict.SHUT) {
                return true;
            }
        }
        return false;
    }

    private static BagClimate estimate(Climate house, BagBelief belief) {
        return BagClimates.estimate(house, belief, SimulatedSeason.START, Sky.UNKNOWN);
    }

    private static BagMaterial film() {
        try {
            String seeds = Files.readString(Path.of("seeds/bag-materials.yaml"));
            return BagMaterialsReader.read(Section.parse("bag-materials.yaml", seeds, new Inspection())).stream()
                    .filter(m -> m.id().value().equals("film-half-mm"))
                    .findFirst()
                    .orElseThrow();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
