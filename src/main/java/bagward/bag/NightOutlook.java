package bagward.bag;

import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;

/**
 * The outlook of a house, and of a bag in it, to the next morning at six. It rests on the last nights of that house and
 * on this day so far; several simple experts speak, and their past skill on that house decides whom to trust. A pure
 * function of the readings before the full hour it is made for.
 */
public final class NightOutlook {
    private static final LocalTime MORNING = LocalTime.of(6, 0);
    private static final LocalTime NOON = LocalTime.NOON;
    private static final int NIGHTS = 28;
    private static final int LAST_NIGHTS = 7;
    private static final int FEWEST = 3;

    private NightOutlook() {}

    /**
     * The outlook of a house.
     *
     * @param house its climate; four weeks back are used, at least three of the last seven nights are needed
     * @param zone local time of the house
     * @param now when it is asked for; the outlook is made for the last full local hour
     * @return the outlook, or why there is none: between six and noon, too few nights, or the last hour unknown
     */
    public static Outlook of(Climate house, ZoneId zone, Instant now) {
        ZonedDateTime issue = now.atZone(zone).truncatedTo(ChronoUnit.HOURS);
        LocalTime clock = issue.toLocalTime();
        if (!clock.isBefore(MORNING) && clock.isBefore(NOON)) {
            return new Outlook.None(now, "The outlook for tonight is made from noon on.");
        }
        ZonedDateTime day = clock.isBefore(MORNING) ? issue : issue.plusDays(1);
        Instant end = day.toLocalDate().atTime(MORNING).atZone(zone).toInstant();
        int hours = (int) Duration.between(issue.toInstant(), end).toHours();
        NightTable humidity = NightTable.of(house.humidity(), issue, hours, NIGHTS);
        NightTable temperature = NightTable.of(house.temperature(), issue, hours, NIGHTS);
        int usable = Math.min(humidity.usable(LAST_NIGHTS), temperature.usable(LAST_NIGHTS));
        if (usable < FEWEST) {
            return new Outlook.None(
                    now,
                    "Only " + usable + " of the last " + LAST_NIGHTS + " nights have data; an outlook needs " + FEWEST
                            + ".");
        }
        if (Double.isNaN(humidity.values()[0][0]) || Double.isNaN(temperature.values()[0][0])) {
            return new Outlook.None(now, "The house was not heard in the last full hour.");
        }
        NightTable light = NightTable.of(house.light(), issue, hours, NIGHTS);
        return night(issue.toInstant(), hours, temperature, humidity, light);
    }

    private static Outlook night(
            Instant issue, int hours, NightTable temperature, NightTable humidity, NightTable light) {
        TimeGrid grid = new TimeGrid(issue, Duration.ofHours(1), hours);
        NightForecaster warm = new NightForecaster(temperature);
        NightForecaster damp = new NightForecaster(humidity);
        Banded warmth = band(grid, warm, -90, 100);
        Banded dampness = band(grid, damp, 0, 100);
        RegularSeries sun = RegularSeries.of(grid, new NightExperts(light).threeNights(0));
        return new Outlook.Night(
                issue,
                warmth,
                dampness,
                new Climate(warmth.middle(), dampness.middle(), sun),
                warm.skill(),
                damp.skill());
    }

    private static Banded band(TimeGrid grid, NightForecaster forecaster, double lowest, double highest) {
        double[] word = forecaster.tonight();
        double[] deviation = forecaster.deviation();
        BandArrays band = new BandArrays(grid.size());
        for (int i = 0; i < grid.size(); i++) {
            band.set(i, word[i], Coverage.EIGHTY.deviations() * deviation[i]);
        }
        return band.clamped(lowest, highest).banded(grid, Coverage.EIGHTY);
    }

    /**
     * The outlook of a bag under an outlook of its house.
     *
     * @param house the outlook of its house
     * @param belief what is believed of the bag
     * @param sky asked for where the house has no light reading
     */
    public static BagOutlook inBag(Outlook.Night house, BagBelief belief, Sky sky) {
        BagClimate bag = BagClimates.estimate(house.expected(), belief, house.issuedAt(), sky);
        double open = 1 - belief.closureByNight().mean();
        Banded temperature = doubted(bag.temperature(), house.temperature(), 1, -90, 100);
        Banded humidity = doubted(bag.humidity(), house.humidity(), open, 0, 100);
        return new BagOutlook(
                house.issuedAt(),
                new BagClimate(temperature, humidity, bag.measured(), bag.film()),
                WetHours.of(humidity));
    }

    /** The 80 % interval of a bag with the doubt about its house: so much of it as gets into the bag. */
    private static Banded doubted(Banded bag, Banded house, double share, double lowest, double highest) {
        TimeGrid grid = bag.middle().grid();
        BandArrays band = new BandArrays(grid.size());
        for (int i = 0; i < grid.size(); i++) {
            double middle = bag.middle().valueOrNaN(i);
            double below = FilmDoubt.NARROWER * (middle - bag.low().valueOrNaN(i));
            double above = FilmDoubt.NARROWER * (bag.high().valueOrNaN(i) - middle);
            double outlook = house.middle().valueOrNaN(i);
            double houseBelow = share * (outlook - house.low().valueOrNaN(i));
            double houseAbove = share * (house.high().valueOrNaN(i) - outlook);
            band.set(i, middle, middle - Math.hypot(below, houseBelow), middle + Math.hypot(above, houseAbove));
        }
        return band.clamped(lowest, highest).banded(grid, Coverage.EIGHTY);
    }
}
