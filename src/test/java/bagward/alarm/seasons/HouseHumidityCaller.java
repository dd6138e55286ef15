package bagward.alarm.seasons;

import bagward.climate.RegularSeries;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * An alarm on the humidity of the house: at or above a limit for some hours on end, over once it falls two points below. It
 * calls for every bag that is on, and for one that is put on while it holds.
 */
record HouseHumidityCaller(double limitPercent, double hours) implements Caller {
    private static final double DEADBAND = 2;

    @Override
    public Optional<Instant> firstCall(MouldSeason season, SeasonBag bag) {
        RegularSeries humidity = season.house().humidity();
        Duration step = humidity.grid().step();
        long needed = Math.round(hours * 3600 / step.toSeconds());
        long run = 0;
        for (int i = 0; humidity.grid().at(i).isBefore(bag.takenOff()); i++) {
            double percent = humidity.valueOrNaN(i);
            boolean damp = percent >= (run > 0 ? limitPercent - DEADBAND : limitPercent);
            run = damp ? run + 1 : 0;
            Instant now = humidity.grid().at(i + 1);
            if (run >= needed && run > 0 && !now.isBefore(bag.putOn())) {
                return Optional.of(now);
            }
        }
        return Optional.empty();
    }

    @Override
    public String name() {
        return String.format(java.util.Locale.ROOT, "house humidity, %.0f %%RH for %.0f h", limitPercent, hours);
    }
}
