package bagward.watch;

import bagward.climate.Climate;
import bagward.climate.LightSum;
import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.climate.SeriesId;
import bagward.climate.Span;
import bagward.climate.TimeGrid;
import bagward.mould.HeatLimits;
import bagward.pollen.HouseDay;
import bagward.pollen.HouseSeason;
import bagward.station.HouseId;
import bagward.station.PlaceClimates;
import bagward.station.Sensor;
import bagward.station.Station;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * The days of each house, read from the readings once and again only when readings of that day have come since. Used by
 * one thread at a time, but for {@link #stored}.
 */
final class SeasonKeeper {
    /** A reading holds into the next day at most so long; readings near midnight touch two days. */
    private static final Duration NEAR_MIDNIGHT = Duration.ofHours(3);

    private final Station station;
    private final HeatLimits heat;
    private final Supplier<ReadingSource> source;
    private ReadingSource readings;
    private final int longest;
    private final Map<HouseId, SortedMap<LocalDate, HouseDay>> known;
    private final Set<LocalDate> touched = new HashSet<>();

    /**
     * @param heat what the flowers bear
     * @param source readings with the corrections that hold now; when these change, all days are read again
     * @param longest days that a season reaches back
     */
    SeasonKeeper(Station station, HeatLimits heat, Supplier<ReadingSource> source, int longest) {
        this.station = station;
        this.heat = heat;
        this.source = source;
        this.readings = source.get();
        this.longest = longest;
        this.known = station.houses().stream().collect(Collectors.toMap(h -> h.id(), h -> new TreeMap<>()));
    }

    /** Notes that readings have come; returns at once. */
    void stored(List<Reading> news) {
        Set<LocalDate> days = new HashSet<>();
        for (Reading reading : news) {
            days.add(day(reading.measuredAt()));
            days.add(day(reading.measuredAt().plus(NEAR_MIDNIGHT)));
        }
        synchronized (touched) {
            touched.addAll(days);
        }
    }

    /** The season of a house up to now, from its first reading on. */
    HouseSeason season(HouseId house, Instant now) {
        forgetTouched();
        forgetCorrected();
        SortedMap<LocalDate, HouseDay> days = known.getOrDefault(house, new TreeMap<>());
        LocalDate today = day(now);
        LocalDate day = today;
        while (day.isAfter(today.minusDays(longest)) && (days.containsKey(day) || heardBy(house, day))) {
            days.computeIfAbsent(day, missing -> read(house, missing));
            day = day.minusDays(1);
        }
        List<HouseDay> all =
                List.copyOf(days.subMap(day.plusDays(1), today.plusDays(1)).values());
        days.headMap(day.plusDays(1)).clear();
        return HouseSeason.of(house, station.zone(), all, today, heat);
    }

    /** Whether any sensor of a house was heard before the end of a day. */
    private boolean heardBy(HouseId house, LocalDate day) {
        Instant end = Span.ofDay(day, station.zone()).to().minusMillis(1);
        return station.sensors().stream()
                .filter(sensor -> sensor.house().equals(house) && !sensor.spare())
                .flatMap(sensor -> sensor.series().stream())
                .anyMatch(series -> readings.newest(series, end).isPresent());
    }

    private void forgetTouched() {
        Set<LocalDate> days;
        synchronized (touched) {
            days = Set.copyOf(touched);
            touched.clear();
        }
        known.values().forEach(of -> of.keySet().removeAll(days));
    }

    private void forgetCorrected() {
        ReadingSource now = source.get();
        if (!now.equals(readings)) {
            readings = now;
            known.values().forEach(Map::clear);
        }
    }

    private LocalDate day(Instant at) {
        return at.atZone(station.zone()).toLocalDate();
    }

    private HouseDay read(HouseId house, LocalDate day) {
        TimeGrid grid = HouseDay.grid(day, station.zone());
        Climate climate = PlaceClimates.climate(station, house, Optional.empty(), readings, grid);
        return new HouseDay(PlaceClimates.site(station), day, station.zone(), climate, clipped(house, grid));
    }

    private BitSet clipped(HouseId house, TimeGrid grid) {
        BitSet clipped = new BitSet();
        for (Sensor sensor : PlaceClimates.sensors(station, house, Optional.empty(), Quantity.LIGHT)) {
            SeriesId series = new SeriesId(sensor.id(), Quantity.LIGHT);
            clipped.or(LightSum.clippedCells(grid, readings.readings(series, grid.start(), grid.end())));
        }
        return clipped;
    }
}
