package bagward.site.api;

import bagward.board.HouseView;
import bagward.mould.NightRule;
import bagward.units.Quantity;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A house in the interface.
 *
 * @param id short name
 * @param name as people call it
 * @param bays its bays in walking order
 * @param temperature newest air temperature
 * @param humidity newest relative humidity
 * @param light newest light
 * @param newestReading when its newest reading was measured
 * @param week whether the last week favoured grey mould
 */
public record HouseAnswer(
        String id,
        String name,
        List<BayAnswer> bays,
        Optional<Value> temperature,
        Optional<Value> humidity,
        Optional<Value> light,
        Optional<Instant> newestReading,
        Optional<WeekAnswer> week) {
    static HouseAnswer of(HouseView view) {
        return new HouseAnswer(
                view.house().id().value(),
                view.house().name(),
                view.house().bays().stream()
                        .map(b -> new BayAnswer(b.id().value(), b.name(), b.spots(), b.across()))
                        .toList(),
                Value.of(view.temperature(), Quantity.TEMPERATURE.unitCode()),
                Value.of(view.humidity(), Quantity.HUMIDITY.unitCode()),
                Value.of(view.light(), Quantity.LIGHT.unitCode()),
                view.newestReading(),
                view.week().map(WeekAnswer::of));
    }

    /**
     * The last week of a house by the night rule.
     *
     * @param favoursMould "conducive", "not-conducive" or "unknown"
     * @param wetHours known wet hours a day, mean
     * @param nightHours known night hours a day within 9 to 21 °C, mean
     * @param unknownHours hours of the week without data
     */
    public record WeekAnswer(String favoursMould, double wetHours, double nightHours, double unknownHours) {
        static WeekAnswer of(NightRule.Verdict week) {
            return new WeekAnswer(
                    BagAnswer.word(week.weather()), week.wetHours(), week.nightHours(), week.unknownHours());
        }
    }

    /**
     * A bay in the interface.
     *
     * @param id short name
     * @param name as people call it
     * @param spots how many places it has
     * @param across how many lie side by side in one row
     */
    public record BayAnswer(String id, String name, int spots, int across) {}
}
