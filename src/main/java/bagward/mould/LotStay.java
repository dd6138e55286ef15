package bagward.mould;

import bagward.bag.DryingStay;
import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.Span;
import bagward.climate.TimeGrid;
import java.util.Optional;

/**
 * What hanging in one place did to a seed lot, in whole hours.
 *
 * @param stay where and since when
 * @param span the hours that are looked at
 * @param index of the pods with their seed, gone on from before
 * @param seed what the air meant for the seed; empty for a place whose climate is not known
 * @param newest what the newest air that is known meant, no older than six hours at the end; empty if there is none
 */
public record LotStay(
        DryingStay stay, Span span, IndexStretch index, Optional<SeedStay> seed, Optional<SeedAir> newest) {
    /** What is older says little about the end of the stay. */
    private static final int NEWEST_HOURS = 6;

    static LotStay of(DryingStay stay, TimeGrid hours, LotAir air, Substrate pods, Storage storage, IndexState before) {
        Span span = new Span(hours.start(), hours.end());
        if (stay.house().isEmpty()) {
            IndexStretch unknown = IndexStretch.unknown(hours.size(), before);
            return new LotStay(stay, span, unknown, Optional.empty(), Optional.empty());
        }
        Climate climate = air.of(stay.house().get(), Optional.empty(), hours);
        return new LotStay(
                stay,
                span,
                IndexStretch.over(pods, climate.temperature(), climate.humidity(), before),
                Optional.of(SeedStay.over(climate, span, storage)),
                newest(climate, storage));
    }

    private static Optional<SeedAir> newest(Climate climate, Storage storage) {
        RegularSeries temperature = climate.temperature();
        RegularSeries humidity = climate.humidity();
        int size = climate.grid().size();
        for (int i = size - 1; i >= Math.max(0, size - NEWEST_HOURS); i--) {
            if (temperature.known(i) && humidity.known(i)) {
                return Optional.of(SeedAir.of(temperature.valueOrNaN(i), humidity.valueOrNaN(i), storage));
            }
        }
        return Optional.empty();
    }
}
