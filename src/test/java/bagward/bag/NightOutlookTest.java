package bagward.bag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NightOutlookTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Amsterdam");
    private static final LocalDate FIRST = LocalDate.of(2026, 3, 1);
    private static final int DAYS = 50;

    /** Invented houses: weather that stays for days or for hours, or is new each night. */
    @ParameterizedTest
    @CsvSource({"0.0, 3, 6, 1", "0.95, 3, 6, 2", "0.5, 10, 6, 3", "0.3, 40, 6, 4", "0.0, 1, 8, 5", "0.8, 6, 8, 6"})
    void an_outlook_is_never_much_worse_than_the_better_of_last_night_and_the_last_three(
            double nightToNight, double hoursToHalf, double scatter, long seed) {
        Climate house = house(nightToNight, hoursToHalf, scatter, seed);
        for (int hour : new int[] {12, 16, 20}) {
            Score score = new Score();
            for (int day = 5; day < DAYS - 1; day++) {
                score.judge(house, FIRST.plusDays(day).atTime(hour, 0).atZone(ZONE));
            }
            assertTrue(score.ratio() <= 1.03, hour + " h: " + score);
            assertTrue(score.held() >= 0.7 && score.held() <= 0.9, hour + " h: " + score);
        }
    }

    @Test
    void outlooks_of_a_real_house_beat_the_mean_of_three_nights() {
        if (OpenData.whole().isEmpty()) {
            a_real_house_has_an_outlook_after_three_nights();
            return;
        }
        Climate house = OpenData.whole().get().house();
        for (int hour : new int[] {16, 20}) {
            Score score = new Score();
            for (int day = 3; day < 42; day++) {
                score.judge(
                        house,
                        LocalDate.of(2022, 2, 1).plusDays(day).atTime(hour, 0).atZone(ZONE));
            }
            assertTrue(score.againstThree() <= (hour == 16 ? 0.93 : 0.88), hour + " h: " + score);
            assertTrue(score.held() >= 0.7 && score.held() <= 0.9, hour + " h: " + score);
        }
    }

    @Test
    void a_real_house_has_an_outlook_after_three_nights() {
        Climate house = OpenData.excerpt().house();
        Instant evening = LocalDate.of(2022, 2, 27).atTime(20, 0).atZone(ZONE).toInstant();

        Outlook.Night night = assertInstanceOf(Outlook.Night.class, NightOutlook.of(house, ZONE, evening));

        assertEquals(10, night.humidity().middle().grid().size());
    }

    @Test
    void what_is_measured_after_the_hour_of_issue_is_not_in_it() {
        Climate house = house(0.5, 6, 6, 7);
        ZonedDateTime issue = FIRST.plusDays(20).atTime(18, 0).atZone(ZONE);
        int known = house.grid().indexOf(issue.toInstant());
        double[] later = house.humidity().toArray();
        Arrays.fill(later, known, later.length, 12);
        Climate changed = new Climate(house.temperature(), RegularSeries.of(house.grid(), later), house.light());

        Outlook.Night before = night(house, issue);
        Outlook.Night after = night(changed, issue);

        assertEquals(
                before.humidity().middle().valueOrNaN(5),
                after.humidity().middle().valueOrNaN(5));
    }

    @Test
    void too_few_nights_give_none_and_say_why() {
        Climate house = house(0.5, 6, 6, 8);

        Outlook outlook = NightOutlook.of(
                house, ZONE, FIRST.plusDays(2).atTime(18, 0).atZone(ZONE).toInstant());

        Outlook.None none = assertInstanceOf(Outlook.None.class, outlook);
        assertTrue(none.because().contains("of the last 7 nights have data"), none.because());
    }

    @Test
    void there_is_none_in_the_morning_nor_when_the_house_is_silent() {
        Climate house = house(0.5, 6, 6, 9);
        ZonedDateTime morning = FIRST.plusDays(20).atTime(9, 0).atZone(ZONE);
        ZonedDateTime after = FIRST.plusDays(DAYS).atTime(18, 0).atZone(ZONE);

        assertInstanceOf(Outlook.None.class, NightOutlook.of(house, ZONE, morning.toInstant()));
        assertInstanceOf(Outlook.None.class, NightOutlook.of(house, ZONE, after.toInstant()));
    }

    @Test
    void a_bag_is_foretold_damper_than_its_house_and_with_more_doubt_than_the_bag_alone() {
        Outlook.Night night =
                night(house(0.5, 6, 6, 10), FIRST.plusDays(20).atTime(20, 0).atZone(ZONE));

        BagOutlook outlook = NightOutlook.inBag(night, BagBelief.prior(Stations.paper()), Sky.UNKNOWN);
        Banded bag = outlook.climate().humidity();

        for (int i = 0; i < bag.middle().grid().size(); i++) {
            assertTrue(bag.middle().valueOrNaN(i) > night.humidity().middle().valueOrNaN(i));
            assertTrue(bag.low().valueOrNaN(i) < bag.middle().valueOrNaN(i));
        }
        assertTrue(outlook.wet().most() >= outlook.wet().likely());
    }

    private static Outlook.Night night(Climate house, ZonedDateTime issue) {
        return assertInstanceOf(Outlook.Night.class, NightOutlook.of(house, ZONE, issue.toInstant()));
    }

    private static Climate house(double nightToNight, double hoursToHalf, double scatter, long seed) {
        Random random = new Random(seed);
        Instant start = FIRST.atStartOfDay(ZONE).toInstant();
        TimeGrid grid = new TimeGrid(start, Duration.ofMinutes(15), DAYS * 96);
        double[] humidity = new double[grid.size()];
        double[] temperature = new double[grid.size()];
        double[] light = new double[grid.size()];
        double keep = Math.pow(0.5, 0.25 / hoursToHalf);
        double day = 0;
        double hours = 0;
        for (int i = 0; i < grid.size(); i++) {
            if (i % 96 == 48) {
                day = nightToNight * day + Math.sqrt(1 - nightToNight * nightToNight) * scatter * random.nextGaussian();
            }
            hours = keep * hours + Math.sqrt(1 - keep * keep) * 0.7 * scatter * random.nextGaussian();
            double sun = Math.max(0, Math.sin(2 * Math.PI * (i % 96 - 24) / 96.0));
            humidity[i] = Math.max(20, Math.min(100, 80 - 20 * sun + day + hours));
            temperature[i] = 13 + 9 * sun + day / 6;
            light[i] = 800 * sun;
        }
        return new Climate(
                RegularSeries.of(grid, temperature), RegularSeries.of(grid, humidity), RegularSeries.of(grid, light));
    }

    /** Squared errors of the outlook of humidity beside those of the two yardsticks. */
    private static final class Score {
        private double own;
        private double three;
        private double last;
        private int held;
        private int hours;

        void judge(Climate house, ZonedDateTime issue) {
            if (!(NightOutlook.of(house, ZONE, issue.toInstant()) instanceof Outlook.Night night)) {
                return;
            }
            Banded said = night.humidity();
            int size = said.middle().grid().size();
            double[][] nights =
                    NightTable.of(house.humidity(), issue.plusDays(1), size, 5).values();
            for (int i = 0; i < size; i++) {
                double truth = nights[1][i + 1];
                double mean = (nights[2][i + 1] + nights[3][i + 1] + nights[4][i + 1]) / 3;
                double off = said.middle().valueOrNaN(i) - truth;
                if (!Double.isNaN(off + mean)) {
                    own += off * off;
                    three += (mean - truth) * (mean - truth);
                    last += (nights[2][i + 1] - truth) * (nights[2][i + 1] - truth);
                    boolean inside = truth >= said.low().valueOrNaN(i)
                            && truth <= said.high().valueOrNaN(i);
                    held += inside ? 1 : 0;
                    hours++;
                }
            }
        }

        double ratio() {
            return Math.sqrt(own / Math.min(three, last));
        }

        double againstThree() {
            return Math.sqrt(own / three);
        }

        double held() {
            return (double) held / hours;
        }

        @Override
        public String toString() {
            return "against three nights " + againstThree() + ", against the better " + ratio() + ", held " + held();
        }
    }
}
