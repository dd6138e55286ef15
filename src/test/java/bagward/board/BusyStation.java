package bagward.board;

import bagward.alarm.Rule;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.climate.Reading;
import bagward.climate.SeriesId;
import bagward.climate.SortedReadings;
import bagward.station.Sensor;
import bagward.units.Quantity;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A full station, to see what a board costs: two houses heard every minute, with days and nights. */
public final class BusyStation {
    private static final int SPOTS_A_BAY = 400;
    private static final int SPOTS_OF_A_SEASON = 800;

    private static final Rule[] SEASON_RULES = {
        Scenario.DAMP,
        Scenario.HOT,
        Scenario.DUE,
        Scenario.SILENT,
        Scenario.BATTERY,
        Scenario.MOULD,
        Scenario.SHUT,
        Scenario.OFF
    };

    private BusyStation() {}

    /** So many bags, all put on so many days before the board is made. */
    public static BoardInputs inputs(int bags, int days) {
        Scenario scenario = new Scenario(SPOTS_A_BAY);
        for (int i = 0; i < bags; i++) {
            boolean south = i % 2 == 0;
            scenario.bag("T-" + i, south ? Scenario.SOUTH : Scenario.NORTH, Scenario.AISLE, 1 + i / 2, 0.01 * (i % 60));
        }
        scenario.readings().addAll(readings(Scenario.SOUTH_POST, days));
        scenario.readings().addAll(readings(Scenario.NORTH_POST, days));
        return scenario.at(24 * days);
    }

    /**
     * A season: so many bags, each on for some days, put on evenly after the four weeks that an outlook looks back, with
     * nights that are damper and warmer or drier and cooler from one to the next.
     */
    static BoardInputs season(int bags, int days, int daysOn) {
        Scenario scenario = new Scenario(SPOTS_OF_A_SEASON).watch(SEASON_RULES);
        double from = 24.0 * 29;
        for (int i = 0; i < bags; i++) {
            double putOn = from + 8 + (24.0 * (days - 29 - daysOn) * i) / bags;
            String tag = "T-" + i;
            scenario.bag(
                            tag,
                            i % 2 == 0 ? Scenario.SOUTH : Scenario.NORTH,
                            Scenario.AISLE,
                            1 + i / 2 % SPOTS_OF_A_SEASON,
                            putOn)
                    .change(new RegisterChange.TakeOff(new TagCode(tag), Scenario.hours(putOn + 24.0 * daysOn)));
        }
        BoardInputs in = scenario.at(24 * days);
        List<Reading> readings = new ArrayList<>(seasonReadings(Scenario.SOUTH_POST, days, 0));
        readings.addAll(seasonReadings(Scenario.NORTH_POST, days, 1));
        return new BoardInputs(
                in.now(),
                in.station(),
                in.register(),
                in.materials(),
                packed(in, readings),
                in.rules(),
                in.organisms(),
                in.crops());
    }

    private static SortedReadings packed(BoardInputs in, List<Reading> readings) {
        List<SeriesId> series = in.station().sensors().stream()
                .flatMap(sensor -> sensor.series().stream())
                .toList();
        return SortedReadings.of(series, new HeldReadings().take(readings), Scenario.START, in.now());
    }

    private static List<Reading> seasonReadings(Sensor sensor, int days, int seed) {
        Random random = new Random(seed);
        List<Reading> readings = new ArrayList<>();
        double damp = 0;
        for (int minute = 0; minute < days * 1440; minute++) {
            damp = minute % 1440 == 0 ? 8 * random.nextGaussian() : damp;
            Instant at = Scenario.START.plusSeconds(60L * minute + 7);
            double sun = Math.max(0, Math.sin(2 * Math.PI * (minute / 1440.0 - 0.25)));
            double noise = 0.4 * random.nextGaussian();
            double humidity = Math.max(20, Math.min(99, 84 + damp - 35 * sun + noise));
            readings.add(Reading.of(new SeriesId(sensor.id(), Quantity.TEMPERATURE), at, 12 + 14 * sun + noise));
            readings.add(Reading.of(new SeriesId(sensor.id(), Quantity.HUMIDITY), at, humidity));
            readings.add(Reading.of(new SeriesId(sensor.id(), Quantity.LIGHT), at, 700 * sun));
        }
        return readings;
    }

    private static List<Reading> readings(Sensor sensor, int days) {
        List<Reading> readings = new ArrayList<>();
        for (int minute = 0; minute < days * 1440; minute++) {
            Instant at = Scenario.START.plusSeconds(60L * minute);
            double sun = Math.max(0, Math.sin(2 * Math.PI * (minute / 1440.0 - 0.25)));
            readings.add(Reading.of(new SeriesId(sensor.id(), Quantity.TEMPERATURE), at, 12 + 10 * sun));
            readings.add(Reading.of(new SeriesId(sensor.id(), Quantity.HUMIDITY), at, 90 - 35 * sun));
            readings.add(Reading.of(new SeriesId(sensor.id(), Quantity.LIGHT), at, 700 * sun));
        }
        return readings;
    }
}
