package bagward.mould;

import java.time.Instant;

/**
 * One run of wet time with the dry breaks that did not end it.
 *
 * @param start beginning of its first wet cell
 * @param end end of its last wet cell
 * @param hours wet time by the best humidity value, h
 * @param meanCelsius mean temperature of the wet time, °C
 * @param certainHours wet time between start and end even if the lower end of the humidity interval is true, h
 * @param possibleHours wet time of the spell around it if the upper end is true, h; spells that run together at the
 *     upper end each state the whole
 * @param joinsBefore whether it runs together with the spell before it if the upper end is true
 * @param unknownHours time without data between start and end, h
 */
public record WetSpell(
        Instant start,
        Instant end,
        double hours,
        double meanCelsius,
        double certainHours,
        double possibleHours,
        boolean joinsBefore,
        double unknownHours) {}
