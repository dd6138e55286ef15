package bagward.station;

import bagward.climate.Finding;
import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import bagward.climate.ReadingSource;
import bagward.climate.Resampler;
import bagward.climate.SensorSense;
import bagward.climate.SeriesId;
import bagward.climate.Span;
import bagward.climate.StuckWet;
import bagward.climate.TimeGrid;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How a sensor did on one day.
 *
 * @param date the day in the house's zone
 * @param heard share of the day so far in which every quantity of the climate was heard, 0 to 1: a reading stands for at
 *     most three expected intervals
 * @param longestSilence longest time that no reading stood for
 * @param capped readings of humidity above 100 %RH, stored as 100
 * @param clipped readings at the top of the sensor's range
 * @param findings what was odd
 */
public record SensorDay(
        LocalDate date, double heard, Duration longestSilence, int capped, int clipped, List<Finding> findings) {
    private static final int PATIENCE = 3;
    private static final Duration STEP = Duration.ofMinutes(1);

    /** Copies the list. */
    public SensorDay {
        findings = List.copyOf(findings);
    }

    /**
     * The last days of a sensor, newest first.
     *
     * @param sensor the sensor
     * @param raw readings as they were stored
     * @param now end of the newest day so far
     * @param zone zone of the house
     * @param days how many, 1 or more
     */
    public static List<SensorDay> last(Sensor sensor, ReadingSource raw, Instant now, ZoneId zone, int days) {
        LocalDate today = now.atZone(zone).toLocalDate();
        Span all = new Span(Span.ofDay(today.minusDays(days - 1L), zone).from(), now);
        Map<Quantity, List<Reading>> readings = new EnumMap<>(Quantity.class);
        for (SeriesId series : sensor.climateSeries()) {
            List<Reading> stored = raw.readings(series, all.from(), now.plusMillis(1));
            readings.put(
                    series.quantity(),
                    stored.stream().filter(Reading::timeHolds).toList());
        }
        List<Finding> findings = findings(sensor, readings, all);
        List<SensorDay> found = new ArrayList<>();
        for (int i = 0; i < days; i++) {
            LocalDate date = today.minusDays(i);
            found.add(day(sensor, date, Span.ofDay(date, zone).within(all), readings, findings));
        }
        return found;
    }

    private static SensorDay day(
            Sensor sensor, LocalDate date, Span day, Map<Quantity, List<Reading>> readings, List<Finding> findings) {
        double heard = 1;
        Duration silence = Duration.ZERO;
        int capped = 0;
        int clipped = 0;
        for (List<Reading> series : readings.values()) {
            Silences silences = Silences.of(series, day, sensor.expectedEvery().multipliedBy(PATIENCE));
            heard = Math.min(heard, silences.heardShare());
            silence = silences.longest().compareTo(silence) > 0 ? silences.longest() : silence;
            capped += count(series, day, ReadingFlag.HUMIDITY_CAPPED);
            clipped += count(series, day, ReadingFlag.CLIPPED);
        }
        List<Finding> ofDay =
                findings.stream().filter(f -> touches(f.when(), day)).toList();
        return new SensorDay(date, heard, silence, capped, clipped, ofDay);
    }

    private static boolean touches(Span finding, Span day) {
        return day.holds(finding.from()) || day.holds(finding.to()) || finding.holds(day.from());
    }

    private static int count(List<Reading> readings, Span day, ReadingFlag flag) {
        return (int) readings.stream()
                .filter(r -> day.holds(r.measuredAt()) && r.flags().contains(flag))
                .count();
    }

    private static List<Finding> findings(Sensor sensor, Map<Quantity, List<Reading>> readings, Span all) {
        List<Finding> findings = new ArrayList<>();
        readings.values().forEach(series -> {
            findings.addAll(SensorSense.suspectValues(series));
            findings.addAll(SensorSense.steps(series));
            findings.addAll(SensorSense.noChanges(series));
        });
        if (readings.containsKey(Quantity.TEMPERATURE) && readings.containsKey(Quantity.HUMIDITY)) {
            TimeGrid grid = TimeGrid.covering(all.from(), all.to(), STEP);
            Duration hold = sensor.expectedEvery().multipliedBy(PATIENCE);
            findings.addAll(StuckWet.find(
                    new SeriesId(sensor.id(), Quantity.HUMIDITY),
                    Resampler.onto(grid, readings.get(Quantity.TEMPERATURE), hold),
                    Resampler.onto(grid, readings.get(Quantity.HUMIDITY), hold)));
        }
        return findings;
    }

    /** Times of a day that no reading stands for. */
    private record Silences(Span day, Duration silent, Duration longest) {
        static Silences of(List<Reading> ordered, Span day, Duration stands) {
            Silences soFar = new Silences(day, Duration.ZERO, Duration.ZERO);
            Instant coveredTo = day.from();
            for (Reading reading : ordered) {
                Instant at = reading.measuredAt();
                soFar = soFar.and(coveredTo, at);
                coveredTo = at.plus(stands).isAfter(coveredTo) ? at.plus(stands) : coveredTo;
            }
            return soFar.and(coveredTo, day.to());
        }

        /** With another silence, as far as it lies in the day. */
        private Silences and(Instant from, Instant to) {
            if (!to.isAfter(from)) {
                return this;
            }
            Duration gap = new Span(from, to).within(day).length();
            return new Silences(day, silent.plus(gap), gap.compareTo(longest) > 0 ? gap : longest);
        }

        double heardShare() {
            double length = day.length().toMillis();
            return length == 0 ? 1 : 1 - silent.toMillis() / length;
        }
    }
}
