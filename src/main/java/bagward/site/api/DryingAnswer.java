package bagward.site.api;

import bagward.board.DryingView;
import bagward.mould.MoistureRange;
import bagward.mould.SeedAir;
import bagward.units.Quantity;
import bagward.units.SeedMoisture;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A drying place in the interface.
 *
 * @param id short name
 * @param name as people call it
 * @param temperature newest temperature
 * @param humidity newest humidity
 * @param newestReading when its newest reading was measured
 * @param seed what this air means for seed, estimated; empty if it is not known now
 * @param lotsHanging how many seed lots are entered as hanging there now
 * @param fungi storage fungi that could grow now
 */
public record DryingAnswer(
        String id,
        String name,
        Optional<Value> temperature,
        Optional<Value> humidity,
        Optional<Instant> newestReading,
        Optional<SeedAnswer> seed,
        int lotsHanging,
        List<FungusAnswer> fungi) {
    static DryingAnswer of(DryingView view) {
        return new DryingAnswer(
                view.house().id().value(),
                view.house().name(),
                Value.of(view.temperature(), Quantity.TEMPERATURE.unitCode()),
                Value.of(view.humidity(), Quantity.HUMIDITY.unitCode()),
                view.newestReading(),
                view.seed().map(SeedAnswer::of),
                view.hanging(),
                view.fungi().stream()
                        .map(f -> new FungusAnswer(f.fungus().name(), f.since(), f.orLonger()))
                        .toList());
    }

    /**
     * What air means for seed.
     *
     * @param atLeastPercent it comes to no less than this, % of the moist seed
     * @param percent best value, only where the equation holds
     * @param atMostPercent it comes to no more than this
     * @param dryness "dry-enough", "perhaps" or "too-damp" to be stored
     * @param growth class of growth of mould: "none", "trace", "very-slow" ... "very-fast"
     */
    public record SeedAnswer(
            Optional<Double> atLeastPercent,
            Optional<Double> percent,
            Optional<Double> atMostPercent,
            String dryness,
            String growth) {
        static SeedAnswer of(SeedAir seed) {
            MoistureRange range = seed.moisture();
            return new SeedAnswer(
                    range.atLeast().map(SeedMoisture::percent),
                    range.middle().map(SeedMoisture::percent),
                    range.atMost().map(SeedMoisture::percent),
                    BagAnswer.word(seed.dryness()),
                    BagAnswer.word(seed.growth()));
        }
    }

    /**
     * A storage fungus that could grow.
     *
     * @param name its name
     * @param since without a break since then
     * @param orLonger whether that is only as far back as was looked
     */
    public record FungusAnswer(String name, Instant since, boolean orLonger) {}
}
