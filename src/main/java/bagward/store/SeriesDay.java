package bagward.store;

import bagward.climate.SeriesId;
import java.time.LocalDate;

/**
 * One day of one series.
 *
 * @param series the series
 * @param day the day in the zone of the station
 */
public record SeriesDay(SeriesId series, LocalDate day) {}
