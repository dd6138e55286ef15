package bagward.site.api;

import bagward.bag.Banded;
import bagward.bag.Origin;
import bagward.board.Measure;
import bagward.climate.TimeGrid;
import bagward.units.Quantity;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * One hour of an outlook in the interface.
 *
 * @param from its begin
 * @param temperature mean of the hour, with its interval
 * @param humidity the same
 * @param intervalPercent so many of a hundred hours the intervals hold
 */
public record HourAnswer(Instant from, Optional<Value> temperature, Optional<Value> humidity, int intervalPercent) {
    static List<HourAnswer> of(Banded temperature, Banded humidity) {
        TimeGrid grid = humidity.middle().grid();
        return IntStream.range(0, grid.size())
                .mapToObj(i -> new HourAnswer(
                        grid.at(i),
                        value(temperature, i, Quantity.TEMPERATURE),
                        value(humidity, i, Quantity.HUMIDITY),
                        humidity.coverage().percent()))
                .toList();
    }

    private static Optional<Value> value(Banded banded, int i, Quantity quantity) {
        Measure measure = new Measure(
                banded.middle().valueOrNaN(i),
                banded.low().valueOrNaN(i),
                banded.high().valueOrNaN(i),
                Origin.ESTIMATED,
                banded.middle().grid().at(i));
        return Value.of(Optional.of(measure), quantity.unitCode());
    }
}
