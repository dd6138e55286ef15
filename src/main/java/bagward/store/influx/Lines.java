package bagward.store.influx;

import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import java.util.Collection;

/**
 * Readings in the line protocol of InfluxDB, times in ms. Sensor names and quantities hold no character that the
 * protocol would take for its own.
 */
final class Lines {
    private static final int USUAL_LENGTH = 80;

    private Lines() {}

    /** One line for each reading. */
    static String of(Collection<Reading> readings) {
        StringBuilder lines = new StringBuilder(USUAL_LENGTH * readings.size());
        for (Reading reading : readings) {
            lines.append(Statements.MEASUREMENT)
                    .append(",sensor=")
                    .append(reading.series().sensor().value())
                    .append(",quantity=")
                    .append(reading.series().quantity().word())
                    .append(" value=")
                    .append(reading.value())
                    .append(",flags=")
                    .append(ReadingFlag.toBits(reading.flags()))
                    .append("i ")
                    .append(reading.measuredAt().toEpochMilli())
                    .append('\n');
        }
        return lines.toString();
    }
}
