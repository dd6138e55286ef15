package bagward.board;

import bagward.climate.Reading;
import bagward.climate.SeriesId;
import bagward.station.Sensor;
import bagward.units.Quantity;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** A full station, to see what a board costs: two houses heard every minute, with days and nights. */
public final class BusyStation {
    private static final int SPOTS_A_BAY = 400;

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
