package bagward.pollen;

import bagward.climate.Climate;
import bagward.climate.MoistAir;
import bagward.climate.RegularSeries;
import bagward.climate.SkyLimits;
import bagward.climate.Span;
import bagward.climate.Statistics;
import bagward.climate.Transmission;
import bagward.mould.HeatLimits;
import bagward.mould.HeatWatch;
import bagward.station.HouseId;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The days of a house, and the share of the light outdoors that its glass lets through, learnt from them.
 *
 * @param house the house
 * @param zone zone of its days
 * @param days in order, without holes
 * @param transmission of the house
 * @param heat house temperatures that hurt the pollen of the next morning: those of the station's usual crop, held against
 *     house air in place of bud temperature, which is a choice of ours
 */
public record HouseSeason(HouseId house, ZoneId zone, List<HouseDay> days, Transmission transmission, HeatLimits heat) {
    private static final int MORNING_FROM = 6;
    private static final int MORNING_TO = 10;

    /** Copies the list. */
    public HouseSeason {
        days = List.copyOf(days);
    }

    /**
     * A season.
     *
     * @param today its transmission is learnt from the days before this one only, which are over
     * @param heat what the flowers bear
     */
    public static HouseSeason of(HouseId house, ZoneId zone, List<HouseDay> days, LocalDate today, HeatLimits heat) {
        double[] ratios = days.stream()
                .filter(day -> day.day().isBefore(today))
                .map(day -> day.ratio(day.daylight()))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
        return new HouseSeason(house, zone, days, Transmission.ofRatios(ratios), heat);
    }

    /** A day of the season. */
    public Optional<HouseDay> find(LocalDate day) {
        if (days.isEmpty()) {
            return Optional.empty();
        }
        long index = day.toEpochDay() - days.get(0).day().toEpochDay();
        return index < 0 || index >= days.size() ? Optional.empty() : Optional.of(days.get((int) index));
    }

    /** What bears on pollen, day by day. */
    public List<PollenDay> summaries() {
        return days.stream().map(this::summary).toList();
    }

    /** What of a day bears on pollen. */
    public PollenDay summary(HouseDay day) {
        Climate climate = day.climate();
        Span morning = day.hours(MORNING_FROM, MORNING_TO, zone);
        OptionalDouble ratio = day.ratio(day.daylight());
        OptionalDouble index =
                ratio.isPresent() ? OptionalDouble.of(ratio.getAsDouble() / transmission.share()) : ratio;
        return new PollenDay(
                day.day(),
                day.light(),
                index,
                index.isPresent() ? Optional.of(SkyLimits.USUAL.judge(index.getAsDouble())) : Optional.empty(),
                mean(climate.humidity(), morning),
                mean(deficit(climate), morning),
                highest(climate.temperature()),
                HeatWatch.assess(climate.temperature(), heat).worst());
    }

    private static OptionalDouble mean(RegularSeries series, Span span) {
        return Statistics.of(series, span)
                .filter(Statistics::complete)
                .map(found -> OptionalDouble.of(found.mean()))
                .orElse(OptionalDouble.empty());
    }

    /** A highest value stands only where so much is known that a mean would. */
    private static OptionalDouble highest(RegularSeries temperature) {
        Span all = new Span(temperature.grid().start(), temperature.grid().end());
        return Statistics.of(temperature, all)
                .filter(Statistics::complete)
                .map(found -> OptionalDouble.of(found.maximum()))
                .orElse(OptionalDouble.empty());
    }

    private static RegularSeries deficit(Climate climate) {
        List<Double> deficits = new ArrayList<>();
        for (int i = 0; i < climate.grid().size(); i++) {
            deficits.add(MoistAir.deficitKilopascals(
                    climate.temperature().valueOrNaN(i), climate.humidity().valueOrNaN(i)));
        }
        return RegularSeries.of(
                climate.grid(), deficits.stream().mapToDouble(d -> d).toArray());
    }
}
