package bagward.mould;

import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.Span;
import bagward.climate.TimeAtLeast;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the air of a drying place did to seed over a stay. A function of the climate alone; time without data is counted and
 * never filled.
 *
 * @param span the stay
 * @param course where the moisture of the seed was heading
 * @param fungi each storage fungus and for how long it could grow, the one that needs least humidity first
 * @param growth for how long mould could grow how fast; classes that did not come are left out
 * @param unknown time without temperature or humidity
 * @param dryEnough time in which the air was surely dry enough for seed as it is stored; unknown is time without data and
 *     time in which the estimate leaves it open
 * @param firstDryEnough when it was so first
 */
public record SeedStay(
        Span span,
        MoistureCourse course,
        List<FungusHours> fungi,
        Map<GrowthClass, Duration> growth,
        Duration unknown,
        TimeAtLeast dryEnough,
        Optional<Instant> firstDryEnough) {
    /** Copies the collections. */
    public SeedStay {
        fungi = List.copyOf(fungi);
        growth = Map.copyOf(growth);
    }

    /**
     * Goes over a stay.
     *
     * @param air climate of the place on any time step; time of the stay that it does not cover is unknown
     * @param span the stay; a cell belongs to it if it starts in it
     * @param storage what is known of keeping seed
     */
    public static SeedStay over(Climate air, Span span, Storage storage) {
        Count count = new Count(air, span, storage);
        return new SeedStay(
                span,
                MoistureCourse.of(air, storage.oil()),
                storage.fungi().stream()
                        .map(fungus -> FungusHours.of(fungus, air.humidity(), span))
                        .toList(),
                count.growth,
                count.unknown(),
                new TimeAtLeast(count.dry, count.unknown().plus(count.open)),
                Optional.ofNullable(count.firstDry));
    }

    /** The fastest growth that the air allowed; empty if nothing is known of it. */
    public Optional<GrowthClass> worst() {
        return growth.keySet().stream().max(GrowthClass::compareTo);
    }

    /**
     * How long a fungus could grow.
     *
     * @param fungus the fungus
     * @param time for how long, by the humidity of the air
     */
    public record FungusHours(StorageFungus fungus, TimeAtLeast time) {
        static FungusHours of(StorageFungus fungus, RegularSeries humidity, Span span) {
            return new FungusHours(fungus, TimeAtLeast.atOrAbove(humidity, span, fungus.fromPercent()));
        }
    }

    private static final class Count {
        private final Map<GrowthClass, Duration> growth = new EnumMap<>(GrowthClass.class);
        private final Span span;
        private Duration known = Duration.ZERO;
        private Duration dry = Duration.ZERO;
        private Duration open = Duration.ZERO;
        private @Nullable Instant firstDry;

        Count(Climate air, Span span, Storage storage) {
            this.span = span;
            TimeGrid grid = air.grid();
            for (int i = 0; i < grid.size(); i++) {
                Instant at = grid.at(i);
                if (span.holds(at)
                        && air.temperature().known(i)
                        && air.humidity().known(i)) {
                    SeedAir found = SeedAir.of(
                            air.temperature().valueOrNaN(i), air.humidity().valueOrNaN(i), storage);
                    take(found, at, new Span(at, grid.at(i + 1)).within(span).length());
                }
            }
        }

        Duration unknown() {
            return span.length().minus(known);
        }

        private void take(SeedAir air, Instant at, Duration length) {
            known = known.plus(length);
            growth.merge(air.growth(), length, Duration::plus);
            switch (air.dryness()) {
                case DRY_ENOUGH -> {
                    dry = dry.plus(length);
                    firstDry = firstDry == null ? at : firstDry;
                }
                case PERHAPS -> open = open.plus(length);
                case TOO_DAMP -> {}
            }
        }
    }
}
