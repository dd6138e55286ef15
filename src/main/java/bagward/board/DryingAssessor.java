package bagward.board;

import bagward.alarm.DryingDampRule;
import bagward.alarm.RuleKind;
import bagward.alarm.Spell;
import bagward.alarm.Verdict;
import bagward.bag.HangingTimes;
import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.mould.SeedAir;
import bagward.mould.StorageFungus;
import bagward.station.House;
import bagward.units.Celsius;
import bagward.units.Quantity;
import bagward.units.RelativeHumidity;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Looks at the places in which seed dries. */
final class DryingAssessor {
    /** A fungus counts as able to grow until the humidity is so far below what it needs; sensors flicker. */
    private static final double FLICKER_PERCENT = 1;

    static final Duration STEP = Duration.ofMinutes(1);

    private final BoardInputs in;
    private final Suppression suppression;

    DryingAssessor(BoardInputs in, Suppression suppression) {
        this.in = in;
        this.suppression = suppression;
    }

    /** The cells of a place that are looked at from an instant. */
    static TimeGrid grid(Instant now) {
        return TimeGrid.covering(now.minus(DryingView.LOOK_BACK), now.plusMillis(1), STEP);
    }

    /** A place as a board shows it, and what the rules say of it. */
    Seen look(House house) {
        TimeGrid grid = grid(in.now());
        Place place = new Places(in.station(), in.readings(), grid, in.now()).at(house.id(), Optional.empty());
        return new Seen(view(house, place), verdicts(house, place, HangingTimes.of(in.register(), house.id())));
    }

    /** One verdict for each rule about drying places. */
    List<Verdict> verdicts(House house, Place place, HangingTimes hanging) {
        return in.rules().stream()
                .filter(rule -> rule.kind() == RuleKind.DRYING_DAMP)
                .map(rule -> suppression.of(
                        DryingDampRule.judge(rule, house, place.climate().humidity(), hanging, in.now()), place))
                .toList();
    }

    private DryingView view(House house, Place place) {
        Climate air = place.climate();
        return new DryingView(
                house,
                Measures.newest(place, air.temperature(), Quantity.TEMPERATURE, in.now()),
                Measures.newest(place, air.humidity(), Quantity.HUMIDITY, in.now()),
                Stream.of(Quantity.TEMPERATURE, Quantity.HUMIDITY)
                        .flatMap(quantity -> place.heardAt(quantity).stream())
                        .max(Instant::compareTo),
                seed(air),
                hanging(house),
                fungi(air.humidity()));
    }

    private int hanging(House house) {
        return (int) in.register().heads().stream()
                .flatMap(head -> head.drying().at(in.now()).stream())
                .filter(stay -> stay.house().filter(house.id()::equals).isPresent())
                .count();
    }

    /** What the newest air means for seed; nothing once it is too old to speak of now. */
    private Optional<SeedAir> seed(Climate air) {
        int warm = Measures.newestKnown(air.temperature(), in.now());
        int damp = Measures.newestKnown(air.humidity(), in.now());
        int older = Math.min(warm, damp);
        if (older < 0 || air.grid().at(older + 1).plus(Spell.FRESH).isBefore(in.now())) {
            return Optional.empty();
        }
        return Optional.of(SeedAir.of(
                new Celsius(air.temperature().valueOrNaN(warm)),
                new RelativeHumidity(air.humidity().valueOrNaN(damp)),
                in.crops().storage()));
    }

    private List<DryingView.FungusSince> fungi(RegularSeries humidity) {
        return in.crops().storage().fungi().stream()
                .flatMap(fungus -> since(fungus, humidity).stream())
                .toList();
    }

    private Optional<DryingView.FungusSince> since(StorageFungus fungus, RegularSeries humidity) {
        Spell spell = Spell.newest(humidity, fungus.fromPercent(), FLICKER_PERCENT, in.now());
        boolean orLonger = !spell.since().isAfter(humidity.grid().start());
        return spell.outcome() == Verdict.Outcome.HOLDS
                ? Optional.of(new DryingView.FungusSince(fungus, spell.since(), orLonger))
                : Optional.empty();
    }

    /**
     * A place that was looked at.
     *
     * @param view as a board shows it
     * @param verdicts what the rules say
     */
    record Seen(DryingView view, List<Verdict> verdicts) {}
}
