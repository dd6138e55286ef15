package bagward.mould;

import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.climate.Wetness;
import bagward.climate.WetnessRule;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;

/**
 * The night rule for grey mould in cool wet houses: outbreaks in unheated cucumber houses came when, as means of a week,
 * foliage was wet for more than 7 h a day and the night from 18 to 8 o'clock lay within 9 to 21 °C for more than 9.5 h
 * (Yunis and others 1994, Crop Protection 13:99-104, abstract). Foliage wetness is told from the air of the house, which is our
 * stand-in for a wetness sensor.
 */
public final class NightRule {
    private static final int DAYS = 7;
    private static final double WET_LIMIT = 7;
    private static final double NIGHT_LIMIT = 9.5;
    private static final int NIGHT_BEGINS = 18;
    private static final int NIGHT_ENDS = 8;

    private NightRule() {}

    /** Whether the week was one of those. */
    public enum Weather {
        /** Neither or only one of the two held. */
        NOT_CONDUCIVE,
        /** Hours without data could tip it. */
        UNKNOWN,
        /** Both held, whatever the hours without data were. */
        CONDUCIVE
    }

    /**
     * What the rule says of a week.
     *
     * @param weather the verdict
     * @param wetHours known wet hours a day, mean of the week
     * @param nightHours known night hours a day within 9 to 21 °C, mean of the week
     * @param unknownHours hours without temperature or humidity, sum of the week
     */
    public record Verdict(Weather weather, double wetHours, double nightHours, double unknownHours) {
        /** The verdict in numbers. */
        public String reason() {
            String gaps = unknownHours == 0 ? "" : Say.format("; %.0f h of the week unknown", unknownHours);
            return Say.format(
                            "wet %.1f h a day (limit %.0f h), nights within 9 to 21 °C for %.1f h (limit %.1f h), means of 7 days",
                            wetHours, WET_LIMIT, nightHours, NIGHT_LIMIT)
                    + gaps;
        }
    }

    /**
     * Judges the seven times 24 hours before an instant.
     *
     * @param house climate of the house; time of the week that it does not cover is unknown
     * @param zone time zone of the house
     * @param until end of the week
     * @param foliage when foliage counts as wet; a cell between its limits after a gap is unknown
     */
    public static Verdict judge(Climate house, ZoneId zone, Instant until, WetnessRule foliage) {
        TimeGrid grid = house.grid();
        int first = Math.max(0, grid.indexOf(until.minus(Duration.ofDays(DAYS))));
        int end = Math.min(grid.size(), grid.indexOf(until));
        Wetness wetness = foliage.wetness(house.temperature(), house.humidity());
        Count count = new Count();
        for (int i = first; i < end; i++) {
            count.take(house.temperature(), wetness, i, isNight(grid.at(i).atZone(zone)));
        }
        double cellHours = grid.step().toSeconds() / 3600.0;
        double knownHours = (count.wet + count.dry) * cellHours;
        double unknownHours = Math.max(0, DAYS * 24 - knownHours);
        double unknownNight = Math.max(0, DAYS * (24.0 - NIGHT_BEGINS + NIGHT_ENDS) - count.night * cellHours);
        return verdict(count.wet * cellHours, count.mildNight * cellHours, unknownHours, unknownNight);
    }

    private static Verdict verdict(double wet, double mildNight, double unknown, double unknownNight) {
        boolean surely = wet > WET_LIMIT * DAYS && mildNight > NIGHT_LIMIT * DAYS;
        boolean perhaps = wet + unknown > WET_LIMIT * DAYS && mildNight + unknownNight > NIGHT_LIMIT * DAYS;
        Weather open = perhaps ? Weather.UNKNOWN : Weather.NOT_CONDUCIVE;
        return new Verdict(surely ? Weather.CONDUCIVE : open, wet / DAYS, mildNight / DAYS, unknown);
    }

    private static boolean isNight(ZonedDateTime local) {
        return local.getHour() >= NIGHT_BEGINS || local.getHour() < NIGHT_ENDS;
    }

    private static final class Count {
        private int wet;
        private int dry;
        private int night;
        private int mildNight;

        void take(RegularSeries temperature, Wetness wetness, int i, boolean atNight) {
            if (!wetness.knownAt(i)) {
                return;
            }
            if (wetness.wetAt(i)) {
                wet++;
            } else {
                dry++;
            }
            if (atNight) {
                night++;
                double celsius = temperature.valueOrNaN(i);
                mildNight += celsius >= 9 && celsius <= 21 ? 1 : 0;
            }
        }
    }
}
