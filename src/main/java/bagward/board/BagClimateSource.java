package bagward.board;

import bagward.bag.BagBelief;
import bagward.bag.BagClimate;
import bagward.bag.BagClimates;
import bagward.bag.BagMaterial;
import bagward.bag.BagOutlook;
import bagward.bag.Bagging;
import bagward.bag.Banded;
import bagward.bag.Head;
import bagward.bag.JoinedClimates;
import bagward.bag.MaterialId;
import bagward.bag.MaterialLearning;
import bagward.bag.Outlook;
import bagward.bag.SensorLoan;
import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.mould.BagDates;
import bagward.mould.Crop;
import bagward.station.PlaceClimates;
import bagward.station.Sensor;
import bagward.station.Spot;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The climate inside bags from readings and register: estimated, and measured where a sensor was lent. One pass, one thread. */
final class BagClimateSource {
    /** Of a bag that was left on longer only the last part is looked at, so that a forgotten one costs no more. */
    static final Duration LONGEST = Duration.ofDays(21);

    private static final Duration STEP = Duration.ofMinutes(1);

    private final BoardInputs in;
    private final Places places;
    private final ClearSkyTable sky;
    private final BagOutlooks outlooks;
    private final Map<MaterialId, MaterialLearning> learnt = new HashMap<>();

    /**
     * @param from when the oldest of the bags that are asked for was put on
     * @param until end of the time that is looked at
     */
    BagClimateSource(BoardInputs in, Instant from, Instant until) {
        this(in, from, until, new BagOutlooks());
    }

    /**
     * The same with outlooks that others use too.
     *
     * @param outlooks of bags of the same station
     */
    BagClimateSource(BoardInputs in, Instant from, Instant until, BagOutlooks outlooks) {
        this.in = in;
        this.outlooks = outlooks;
        Instant earliest = until.minus(LONGEST);
        Instant start = from.isBefore(earliest) ? earliest : from;
        // The grid holds the cell of "until" itself, so the newest reading is on it.
        TimeGrid grid = TimeGrid.covering(start, until.plusMillis(1), STEP);
        this.places = new Places(in.station(), in.readings(), grid, in.now());
        this.sky = new ClearSkyTable(PlaceClimates.site(in.station()));
    }

    /** All places on the grid of this source. */
    Places places() {
        return places;
    }

    /** What a bag is made of; empty if its material is no longer configured. */
    Optional<BagMaterial> material(Bagging bagging) {
        return Optional.ofNullable(in.materials().get(bagging.material()));
    }

    /** When a bag should come off. */
    BagDates dates(Head head, Bagging bagging) {
        Crop.BagTimes times = in.crops().of(head).bag();
        Duration days = material(bagging).map(BagMaterial::daysOn).orElse(times.dueAfter());
        return BagDates.of(head, bagging.putOn(), days, times, in.station().zone())
                .orElseThrow();
    }

    /** What is believed of the climate in a bag of a material. */
    BagBelief belief(BagMaterial material, Head head, Bagging bagging) {
        MaterialLearning learning =
                learnt.computeIfAbsent(material.id(), missing -> in.knowledge().learning(material));
        return in.knowledge().belief(learning, head.tag(), bagging);
    }

    /** What is to be expected in a bag until the next morning; empty without an outlook of its house. */
    Optional<BagOutlook> tonight(BagBelief belief, Head head) {
        return in.knowledge().outlook(head.spot().house(), in.now()) instanceof Outlook.Night night
                ? Optional.of(tonight(belief, night))
                : Optional.empty();
    }

    /** What is to be expected in a bag under an outlook of its house. */
    BagOutlook tonight(BagBelief belief, Outlook.Night night) {
        return outlooks.of(night, belief, sky);
    }

    /** Where a head stands. */
    Place place(Head head) {
        Spot spot = head.spot();
        return places.at(spot.house(), Optional.of(spot.bay()));
    }

    /** The climate around and inside a bag; without a known material only what a lent sensor measured. */
    BaggedClimate climate(Head head, Bagging bagging) {
        Climate house = place(head).since(bagging.putOn());
        BagClimate estimate = material(bagging)
                .map(known -> BagClimates.estimate(house, belief(known, head, bagging), bagging.putOn(), sky))
                .orElseGet(() -> unknown(house.grid()));
        BagClimate inside = estimate;
        for (SensorLoan loan : in.register().loans()) {
            Optional<Sensor> sensor = in.station().findSensor(loan.sensor());
            if (loan.tag().equals(head.tag()) && sensor.isPresent()) {
                inside = BagClimates.withMeasured(
                        inside, LentClimate.during(loan, sensor.get(), in.readings(), house.grid()));
            }
        }
        return new BaggedClimate(house, inside);
    }

    /** The climate in all bags of a head up to one of them, of which it is known already. */
    BagClimate sinceFirst(Head head, Bagging last, BagClimate inLast) {
        int place = head.baggings().indexOf(last);
        List<BagClimate> parts = new ArrayList<>();
        for (Bagging earlier : head.baggings().subList(0, Math.max(0, place))) {
            parts.add(climate(head, earlier).bag());
        }
        parts.add(inLast);
        return JoinedClimates.of(parts);
    }

    private static BagClimate unknown(TimeGrid grid) {
        RegularSeries nothing = RegularSeries.unknown(grid);
        Banded banded = new Banded(nothing, nothing, nothing);
        return new BagClimate(banded, banded, new BitSet(), new BitSet());
    }

    /** The loan of a sensor that runs at an instant. */
    static Optional<SensorLoan> running(List<SensorLoan> loans, Head head, Instant now) {
        return loans.stream()
                .filter(loan -> loan.tag().equals(head.tag()) && runs(loan, now))
                .findFirst();
    }

    /** Whether a loan runs at an instant. */
    static boolean runs(SensorLoan loan, Instant now) {
        return !loan.from().isAfter(now) && loan.to().map(now::isBefore).orElse(true);
    }
}
