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
     * Asks for what the check reaches, not for what is wished: in the simulator a third of the bags is nearly shut before,
     * and at night all are near saturation; then falling shut changes less than sensors and weather do.
     */
    @Test
    void of_bags_that_fall_shut_half_are_found_within_six_hours_and_hardly_one_is_called_that_did_not() {
        Detection detection = new Detection(BagBelief.prior(film()));
        for (int seed = 500; seed < 530; seed++) {
            detection.season(seed);
        }

        assertTrue(detection.found() >= 0.5, detection.toString());
        assertTrue(detection.foundOfThoseThatTell() >= 0.75, detection.toString());
        assertTrue(detection.falseCalls() <= 1, detection.toString());
    }

    @Test
    void a_bag_that_was_blown_off_is_told_from_one_that_fell_shut() {
        MaterialLearning material = new MaterialLearning(film(), List.of());
        SimulatedSeason season = new SimulatedSeason(700, 5);
        Climate house = season.houseBySensor();
        int offAt = 3 * 1440;
        SimulatedBag bag = new SimulatedBag(0.6, 1.4e-5, 0.25);
        SensoredBag blown = SensoredBag.of(house, season.lentSensor(season.run(bag, offAt, SimulatedBag::blowOff)));

        BagFit before = BagFitCheck.at(until(blown, offAt / 5), material);
        BagFit after = BagFitCheck.at(until(blown, offAt / 5 + 5 * CELLS_PER_HOUR), material);

        assertEquals(BagFit.Verdict.FITS, before.verdict(), before.because());
        assertEquals(BagFit.Verdict.OFF, after.verdict(), after.because());
    }

    private static SensoredBag until(SensoredBag bag, int cell) {
        return SensoredBag.of(bag.house().part(0, cell), bag.measured().part(0, cell));
    }

    private static BagClimate estimate(Climate house, BagBelief belief) {
        return BagClimates.estimate(house, belief, SimulatedSeason.START, Sky.UNKNOWN);
    }

    static BagMaterial film() {
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
