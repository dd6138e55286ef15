package bagward.climate;

import bagward.climate.Finding.Oddity;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Checks that tell a sensor in trouble from its own readings.
 *
 * <p>What is physically impossible never becomes a {@link Reading}. What is merely odd is found here and shown to a
 * person: a house in the morning sun warms faster than weather stations allow, so nothing is thrown away for it.
 *
 * <p>All checks take readings of one series in any order and are independent of that order.
 */
public final class SensorSense {
    /** Jump between readings, °C; Austrian weather service, CBS/OPAG-IOS ET AWS-1 Doc. 9(2), 2002. */
    private static final double TEMPERATURE_STEP = 3.0;
    /** Jump between readings, %RH; same source. */
    private static final double HUMIDITY_STEP = 10;
    /** Readings further apart than this are no step but a change over time; ours. */
    private static final Duration STEP_TIME = Duration.ofMinutes(10);
    /** Above this a temperature is suspect; WMO-No. 305 (1993) VI.6 calls it erroneous outdoors. */
    private static final double HOT = 50;
    /** Below this a temperature in a house is suspect; ours. */
    private static final double COLD = -10;
    /** Largest usual change of air temperature by hours, °C; WMO-No. 305 (1993) VI.21, for outdoor air. */
    private static final Map<Integer, Double> CHANGE_BY_HOURS =
            new TreeMap<>(Map.of(1, 4.0, 2, 7.0, 3, 9.0, 6, 15.0, 12, 25.0));
    /** Window in which something should change. */
    private static final Duration CALM = Duration.ofHours(12);
    /** Least change of air temperature in 12 h, °C; United States dispersion modelling guidance. */
    private static final double LEAST_TEMPERATURE_CHANGE = 0.5;
    /** Least change of humidity in 12 h, %RH; ours. */
    private static final double LEAST_HUMIDITY_CHANGE = 1;
    /** From here on an unchanged humidity is no wonder, %RH; ours. */
    private static final double NEARLY_SATURATED = 95;

    private static final Comparator<Reading> BY_TIME =
            Comparator.comparing(Reading::measuredAt).thenComparingDouble(Reading::value);

    private SensorSense() {}

    /** Temperatures that can be, but hardly in a house: below −10 or above 50 °C. Other quantities have none. */
    public static List<Finding> suspectValues(List<Reading> readings) {
        return readings.stream()
                .filter(r -> r.series().quantity() == Quantity.TEMPERATURE)
                .filter(r -> r.value() > HOT || r.value() < COLD)
                .sorted(BY_TIME)
                .map(r -> finding(r, new Span(r.measuredAt(), r.measuredAt()), Oddity.SUSPECT_VALUE, r.value()))
                .toList();
    }

    /** Jumps of more than 3 °C or 10 %RH between readings at most ten minutes apart; light may jump. */
    public static List<Finding> steps(List<Reading> readings) {
        List<Finding> found = new ArrayList<>();
        List<Reading> ordered = ordered(readings);
        for (int i = 1; i < ordered.size(); i++) {
            Reading before = ordered.get(i - 1);
            Reading now = ordered.get(i);
            Span between = new Span(before.measuredAt(), now.measuredAt());
            double jump = now.value() - before.value();
            if (between.length().compareTo(STEP_TIME) <= 0 && Math.abs(jump) > stepLimit(now)) {
                found.add(finding(now, between, Oddity.STEP, jump));
            }
        }
        return found;
    }

    private static double stepLimit(Reading reading) {
        return switch (reading.series().quantity()) {
            case TEMPERATURE -> TEMPERATURE_STEP;
            case HUMIDITY -> HUMIDITY_STEP;
            case LIGHT, BATTERY -> Double.POSITIVE_INFINITY;
        };
    }

    /** The largest change of temperature over 1, 2, 3, 6 and 12 h, each if it is more than weather makes. */
    public static List<Finding> fastChanges(List<Reading> readings) {
        List<Finding> found = new ArrayList<>();
        List<Reading> ordered = ordered(readings).stream()
                .filter(r -> r.series().quantity() == Quantity.TEMPERATURE)
                .toList();
        CHANGE_BY_HOURS.forEach((hours, limit) -> {
            SlidingRange window = new SlidingRange(Duration.ofHours(hours));
            double largest = limit;
            Finding worst = null;
            for (Reading reading : ordered) {
                window.take(reading);
                if (window.range() > largest) {
                    largest = window.range();
                    worst = finding(reading, window.span(), Oddity.FAST_CHANGE, largest);
                }
            }
            if (worst != null) {
                found.add(worst);
            }
        });
        return found;
    }

    /**
     * Times of twelve hours and more in which temperature changed by less than 0.5 °C, or humidity below 95 %RH by less
     * than 1 %RH. Light is dark for longer than that in winter and has none.
     */
    public static List<Finding> noChanges(List<Reading> readings) {
        List<Finding> found = new ArrayList<>();
        SlidingRange window = new SlidingRange(CALM);
        for (Reading reading : ordered(readings)) {
            window.take(reading);
            if (window.full() && tooCalm(reading.series().quantity(), window)) {
                extend(found, finding(reading, window.span(), Oddity.NO_CHANGE, window.range()));
            }
        }
        return found;
    }

    private static boolean tooCalm(Quantity quantity, SlidingRange window) {
        return switch (quantity) {
            case TEMPERATURE -> window.range() < LEAST_TEMPERATURE_CHANGE;
            case HUMIDITY -> window.range() < LEAST_HUMIDITY_CHANGE && window.lowest() < NEARLY_SATURATED;
            case LIGHT, BATTERY -> false;
        };
    }

    /** Adds a finding, or lengthens the last one if they overlap. */
    private static void extend(List<Finding> found, Finding next) {
        int last = found.size() - 1;
        if (last >= 0 && !next.when().from().isAfter(found.get(last).when().to())) {
            Instant from = found.get(last).when().from();
            double amount = Math.max(found.get(last).amount(), next.amount());
            Span both = new Span(from, next.when().to());
            found.set(last, new Finding(next.series(), both, next.oddity(), amount));
        } else {
            found.add(next);
        }
    }

    private static List<Reading> ordered(List<Reading> readings) {
        return readings.stream().sorted(BY_TIME).toList();
    }

    private static Finding finding(Reading reading, Span when, Oddity oddity, double amount) {
        return new Finding(reading.series(), when, oddity, amount);
    }
}
