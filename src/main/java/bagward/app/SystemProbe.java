package bagward.app;

import bagward.alarm.SystemState;
import bagward.climate.SensorId;
import bagward.collector.StationClock;
import bagward.store.spool.SpoolState;
import bagward.watch.Health;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Asks disk and clock how they are. */
final class SystemProbe {
    private static final double BYTES_A_GIGABYTE = 1e9;
    private static final double SCARCE_GIGABYTES = 0.5;

    private final Path folder;
    private final StationClock clock;

    /** @param folder where the station's data lie */
    SystemProbe(Path folder, StationClock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /** The system as its alarms see it. */
    SystemState state(SpoolState spool, Map<SensorId, Duration> sensorClocks, Map<SensorId, Instant> offline) {
        return new SystemState(
                spool.awaySince(), spool.depth().percent(), freeGigabytes(), clockTrouble(), sensorClocks, offline);
    }

    private double freeGigabytes() {
        try {
            return Files.getFileStore(folder).getUsableSpace() / BYTES_A_GIGABYTE;
        } catch (IOException unknown) {
            return Double.NaN;
        }
    }

    private Optional<SystemState.ClockTrouble> clockTrouble() {
        Instant now = clock.clock().instant();
        Optional<SystemState.ClockTrouble> wrong =
                clock.trouble().map(says -> new SystemState.ClockTrouble(now, clock.behindAtLeast(), says));
        return wrong.or(() -> clock.newestJump()
                .map(jump -> new SystemState.ClockTrouble(
                        jump.at(),
                        jump.by(),
                        "the station's clock was set " + (jump.by().isNegative() ? "back" : "forward") + " by "
                                + jump.by().abs().toSeconds()
                                + " s; readings without a time of their own may be dated wrongly before that")));
    }

    /** The disk as a part. */
    Health.Part disk() {
        double free = freeGigabytes();
        return new Health.Part(
                "disk",
                !(free < SCARCE_GIGABYTES),
                Double.isNaN(free)
                        ? "free space is not known"
                        : String.format(Locale.ROOT, "%.1f GB free in %s", free, folder));
    }

    /** The station's clock as a part. */
    Health.Part clock() {
        Optional<String> trouble = clock.trouble();
        return new Health.Part(
                "clock",
                trouble.isEmpty(),
                trouble.orElseGet(() -> clock.newestJump()
                        .map(jump -> "set by " + jump.by().toSeconds() + " s at " + jump.at())
                        .orElse("runs evenly")));
    }
}
