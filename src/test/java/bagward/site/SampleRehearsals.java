package bagward.site;

import bagward.bag.BagMaterial;
import bagward.bag.RegisterChange;
import bagward.board.BoardInputs;
import bagward.board.HeldReadings;
import bagward.board.Scenario;
import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.climate.SeriesId;
import bagward.units.Quantity;
import bagward.watch.rehearsal.RehearsalDesk;
import bagward.watch.rehearsal.RehearsedStation;
import bagward.watch.rehearsal.StoredPast;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A real desk for rehearsals over ten days of the invented station; a test can hold it back while it opens the past. */
final class SampleRehearsals implements AutoCloseable {
    private static final Duration STORED = Duration.ofDays(10);
    private static final Duration STEP = Duration.ofMinutes(2);

    private final Semaphore gate = new Semaphore(1);
    private final Instant now;
    final RehearsalDesk desk;

    SampleRehearsals(Instant now) {
        this.now = now;
        BoardInputs like = new Scenario(20).at(0);
        this.desk = new RehearsalDesk(
                new RehearsedStation(
                        SampleStation.STATION,
                        SampleStation.MATERIALS.stream()
                                .collect(Collectors.toMap(BagMaterial::id, Function.identity())),
                        like.organisms(),
                        like.crops()),
                SampleStation.RULES,
                this::open);
    }

    /** Rehearsals wait from now on before they read anything. */
    void hold() {
        gate.acquireUninterruptibly();
    }

    /** Lets them go on. */
    void letGo() {
        gate.release();
    }

    private StoredPast open() {
        gate.acquireUninterruptibly();
        gate.release();
        ReadingSource readings = new HeldReadings().take(readings());
        return new StoredPast() {
            @Override
            public ReadingSource readings() {
                return readings;
            }

            @Override
            public List<RegisterChange> changes() {
                return SampleRegister.changes(now);
            }

            @Override
            public void close() {
                // Nothing was opened.
            }
        };
    }

    private List<Reading> readings() {
        List<Reading> readings = new ArrayList<>();
        for (Instant at = now.minus(STORED); !at.isAfter(now); at = at.plus(STEP)) {
            for (var sensor : SampleStation.STATION.sensors()) {
                for (SeriesId series : sensor.series()) {
                    readings.add(Reading.of(series, at, value(series.quantity(), at)));
                }
            }
        }
        return readings;
    }

    private static double value(Quantity quantity, Instant at) {
        return switch (quantity) {
            case TEMPERATURE -> SampleClimate.temperature(at);
            case HUMIDITY -> SampleClimate.humidity(at);
            case LIGHT -> 700 * SampleClimate.sun(at);
            case BATTERY -> 81;
        };
    }

    @Override
    public void close() {
        desk.close();
    }
}
