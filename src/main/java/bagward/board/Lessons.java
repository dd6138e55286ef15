package bagward.board;

import bagward.bag.BagFit;
import bagward.bag.BagFitCheck;
import bagward.bag.BagLesson;
import bagward.bag.BagMaterial;
import bagward.bag.Bagging;
import bagward.bag.Head;
import bagward.bag.MaterialId;
import bagward.bag.MaterialLearning;
import bagward.bag.NightOutlook;
import bagward.bag.Outlook;
import bagward.bag.Register;
import bagward.bag.SensorLoan;
import bagward.climate.Climate;
import bagward.climate.ReadingSource;
import bagward.climate.TimeGrid;
import bagward.climate.WetnessRule;
import bagward.mould.NightRule;
import bagward.station.HouseId;
import bagward.station.PlaceClimates;
import bagward.station.Station;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts together what is known from lent sensors and past nights. Pure: what can be kept between calls, the caller keeps. */
public final class Lessons {
    private static final Duration OUTLOOK_STEP = Duration.ofMinutes(15);

    /** An outlook looks back four weeks and an hour. */
    private static final Duration OUTLOOK_REACH = Duration.ofDays(28).plusHours(2);

    private Lessons() {}

    /**
     * A sensor in a bag.
     *
     * @param head the head
     * @param bagging its bag
     * @param loan the sensor and when it hung there
     */
    public record Lent(Head head, Bagging bagging, SensorLoan loan) {
        /** Whether the sensor hangs in the bag at an instant. */
        public boolean runsAt(Instant now) {
            return bagging.onAt(now) && BagClimateSource.runs(loan, now);
        }

        /** The end of what it teaches, as far as it is known at an instant. */
        public Instant end(Instant now) {
            return LoanStudy.end(loan, bagging, now);
        }
    }

    /** Every sensor and every bag it hung in up to an instant, oldest loan first. */
    public static List<Lent> lent(Register register, Instant now) {
        List<Lent> all = new ArrayList<>();
        for (SensorLoan loan : register.loans()) {
            register.find(loan.tag())
                    .ifPresent(head -> head.baggings().stream()
                            .filter(bagging -> overlap(loan, bagging, now))
                            .forEach(bagging -> all.add(new Lent(head, bagging, loan))));
        }
        return all;
    }

    private static boolean overlap(SensorLoan loan, Bagging bagging, Instant now) {
        Instant end = LoanStudy.end(loan, bagging, now);
        return loan.from().isBefore(end) && bagging.putOn().isBefore(end);
    }

    /** The outlook of a house to the next morning from the nights of the last four weeks. */
    public static Outlook outlook(Station station, HouseId house, ReadingSource readings, Instant now) {
        TimeGrid grid = outlookGrid(now, now);
        Climate climate = PlaceClimates.climate(station, house, Optional.empty(), new UntilNow(readings, now), grid);
        return NightOutlook.of(climate, station.zone(), now);
    }

    /** Whether the week up to the last full hour favoured grey mould in a house. */
    public static NightRule.Verdict week(
            Station station, HouseId house, ReadingSource readings, WetnessRule foliage, Instant now) {
        Instant hour = now.truncatedTo(ChronoUnit.HOURS);
        TimeGrid grid = TimeGrid.covering(hour.minus(Duration.ofDays(7)), hour, OUTLOOK_STEP);
        Climate climate = PlaceClimates.climate(station, house, Optional.empty(), readings, grid);
        return NightRule.judge(climate, station.zone(), hour, foliage);
    }

    /** The grid of all outlooks that are made from one instant to another. */
    static TimeGrid outlookGrid(Instant first, Instant last) {
        return TimeGrid.covering(nextHour(first).minus(OUTLOOK_REACH), nextHour(last), OUTLOOK_STEP);
    }

    private static Instant nextHour(Instant instant) {
        return instant.truncatedTo(ChronoUnit.HOURS).plus(1, ChronoUnit.HOURS);
    }

    /**
     * What is known.
     *
     * @param studies of all loans
     * @param materials bag materials by name
     * @param outlooks of all houses
     * @param weeks of all houses, by the night rule
     * @param now the fit of the bags in which a sensor hangs at this time is judged
     */
    public static Knowledge known(
            List<LoanStudy> studies,
            Map<MaterialId, BagMaterial> materials,
            Map<HouseId, Outlook> outlooks,
            Map<HouseId, NightRule.Verdict> weeks,
            Instant now) {
        List<Taught> taught = new ArrayList<>();
        for (LoanStudy study : studies) {
            BagMaterial material = materials.get(study.bagging().material());
            if (material != null) {
                Optional<BagFit> fit = BagClimateSource.runs(study.loan(), now)
                                && study.bagging().onAt(now)
                        ? Optional.of(
                                BagFitCheck.at(study.bag(), new MaterialLearning(material, others(studies, study))))
                        : Optional.empty();
                taught.add(new Taught(study.loan(), study.bagging(), study.bag().pairOffset(), study.lesson(), fit));
            }
        }
        return new Knowledge(taught, outlooks, weeks);
    }

    /** Lessons of the other bags of the same material. */
    private static List<BagLesson> others(List<LoanStudy> studies, LoanStudy one) {
        return studies.stream()
                .filter(study -> study.bagging().material().equals(one.bagging().material()))
                .filter(study -> !study.loan().tag().equals(one.loan().tag()))
                .flatMap(study -> study.lesson().stream())
                .toList();
    }
}
