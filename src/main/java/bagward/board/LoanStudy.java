package bagward.board;

import bagward.bag.BagFitCheck;
import bagward.bag.BagLearning;
import bagward.bag.BagLesson;
import bagward.bag.BagMaterial;
import bagward.bag.Bagging;
import bagward.bag.SensorLoan;
import bagward.bag.SensorOffset;
import bagward.bag.SensoredBag;
import bagward.climate.Climate;
import bagward.climate.ReadingSource;
import bagward.climate.TimeGrid;
import bagward.station.PlaceClimates;
import bagward.station.Sensor;
import bagward.station.Spot;
import bagward.station.Station;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The readings of one loan in one bag, and what they teach. A pure function of station, loans and readings.
 *
 * @param loan the loan
 * @param bagging the bag
 * @param bag readings of bag and house while both the bag and the sensor were there
 * @param lesson what they teach; empty with less than half a day heard, or without light readings in the house
 */
public record LoanStudy(SensorLoan loan, Bagging bagging, SensoredBag bag, Optional<BagLesson> lesson) {
    /** Step of the readings that are learnt from. */
    public static final Duration STEP = Duration.ofMinutes(5);

    /** How long before and after a loan the sensor may have hung beside that of the house. */
    public static final Duration BESIDE = Duration.ofHours(36);

    /**
     * Studies a loan.
     *
     * @param station houses and sensors
     * @param lent the sensor and the bag
     * @param loans all loans, to know when the sensor hung in no bag
     * @param material what the bag is made of
     * @param readings those before {@code until} are looked at
     * @param until end of what is known
     * @return empty if the sensor is no longer configured or loan and bag do not overlap by a step
     */
    public static Optional<LoanStudy> of(
            Station station,
            Lessons.Lent lent,
            List<SensorLoan> loans,
            BagMaterial material,
            ReadingSource readings,
            Instant until) {
        return sensored(station, lent, loans, readings, until)
                .map(bag -> new LoanStudy(
                        lent.loan(),
                        lent.bagging(),
                        bag,
                        BagLearning.lesson(BagFitCheck.whileItSatWell(bag, material))));
    }

    /** The readings of a loan alone, without what they teach. */
    static Optional<SensoredBag> sensored(
            Station station, Lessons.Lent lent, List<SensorLoan> loans, ReadingSource readings, Instant until) {
        SensorLoan loan = lent.loan();
        Bagging bagging = lent.bagging();
        Spot spot = lent.head().spot();
        Optional<Sensor> sensor = station.findSensor(loan.sensor());
        Instant from = later(loan.from(), bagging.putOn());
        Instant to = end(loan, bagging, until);
        if (sensor.isEmpty() || !from.plus(STEP).isBefore(to)) {
            return Optional.empty();
        }
        Instant beforeNow = earlier(to.plus(BESIDE), until);
        TimeGrid around = TimeGrid.covering(from.minus(BESIDE), beforeNow, STEP);
        ReadingSource known = new UntilNow(readings, until);
        Climate house = PlaceClimates.climate(station, spot.house(), Optional.of(spot.bay()), known, around);
        SensorOffset pair = SensorOffset.sideBySide(house, LentClimate.outside(loans, sensor.get(), known, around));
        Climate inside = LentClimate.during(loan, sensor.get(), known, around);
        int first = around.indexOf(from);
        int end = Math.min(around.size(), around.indexOf(to.minusMillis(1)) + 1);
        return Optional.of(new SensoredBag(house.part(first, end), inside.part(first, end), pair));
    }

    /** End of the readings that a loan teaches from. */
    static Instant end(SensorLoan loan, Bagging bagging, Instant until) {
        return earlier(earlier(loan.to().orElse(until), bagging.takenOff().orElse(until)), until);
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }

    private static Instant earlier(Instant a, Instant b) {
        return a.isBefore(b) ? a : b;
    }
}
