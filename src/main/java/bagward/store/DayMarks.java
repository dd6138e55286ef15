package bagward.store;

import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.climate.Span;
import bagward.climate.Summary;
import bagward.climate.TimeGrid;
import bagward.station.PlaceClimates;
import bagward.station.Sensor;
import bagward.station.Station;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which days a reading tells about, and what the readings of a day sum up to. A pure function of station and readings. */
public final class DayMarks {
    /** Length of the shorter summaries. */
    static final Duration TEN_MINUTES = Duration.ofMinutes(10);

    private static final Duration USUAL_HOLD = Duration.ofMinutes(3);

    private final ZoneId zone;
    private final Map<SensorId, Duration> holds = new HashMap<>();

    /** Days in the zone of a station; readings of its sensors stand as long as they do for the climate of its places. */
    public DayMarks(Station station) {
        this.zone = station.zone();
        for (Sensor sensor : station.sensors()) {
            holds.put(sensor.id(), PlaceClimates.hold(sensor));
        }
    }

    /** The days on which any of these readings stands, or may cut short one that stood. */
    public Set<SeriesDay> touched(List<Reading> readings) {
        Set<SeriesDay> days = new HashSet<>();
        for (Reading reading : readings) {
            Instant end = reading.measuredAt().plus(hold(reading.series()));
            LocalDate last = day(end);
            for (LocalDate day = day(reading.measuredAt()); !day.isAfter(last); day = day.plusDays(1)) {
                days.add(new SeriesDay(reading.series(), day));
            }
        }
        return days;
    }

    /** What a day sums up to. */
    public SummaryStore.Result sum(SeriesDay of, ReadingSource source) {
        Span day = Span.ofDay(of.day(), zone);
        TimeGrid grid = TimeGrid.covering(day.from(), day.to(), TEN_MINUTES);
        Duration hold = hold(of.series());
        List<Reading> readings = source.readings(of.series(), grid.start().minus(hold), grid.end()).stream()
                .filter(Reading::timeHolds)
                .toList();
        return new SummaryStore.Result(
                new Span(grid.start(), grid.end()),
                Summary.onto(grid, readings, hold),
                Summary.over(day, readings, hold));
    }

    /** The first instant of a day less the longest time for which a reading before it may stand into it. */
    public Instant neededFrom(LocalDate day) {
        Duration longest = holds.values().stream().max(Duration::compareTo).orElse(USUAL_HOLD);
        return Span.ofDay(day, zone).from().minus(TEN_MINUTES).minus(longest);
    }

    /** The day of an instant. */
    public LocalDate day(Instant instant) {
        return instant.atZone(zone).toLocalDate();
    }

    private Duration hold(SeriesId series) {
        return holds.getOrDefault(series.sensor(), USUAL_HOLD);
    }
}
