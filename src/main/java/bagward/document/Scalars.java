package bagward.document;

import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads single values of a section into numbers, durations and words. */
final class Scalars {
    private static final Pattern DURATION = Pattern.compile("(\\d{1,9})\\s*(s|min|h|d)");
    private static final Map<String, Duration> UNITS = Map.of(
            "s", Duration.ofSeconds(1),
            "min", Duration.ofMinutes(1),
            "h", Duration.ofHours(1),
            "d", Duration.ofDays(1));

    private Scalars() {}

    static Optional<Double> number(Section section, String key, double low, double high, String unit) {
        String rule = "must be a number from " + plain(low) + " to " + plain(high) + suffix(unit);
        return within(section, key, Double::valueOf, low, high, rule);
    }

    static Optional<Integer> whole(Section section, String key, int low, int high, String unit) {
        String rule = "must be a whole number from " + low + " to " + high + suffix(unit);
        return within(section, key, Integer::valueOf, low, high, rule);
    }

    private static <T extends Comparable<T>> Optional<T> within(
            Section section, String key, Function<String, T> parse, T low, T high, String rule) {
        return section.findText(key).flatMap(text -> {
            Optional<T> value =
                    parsed(text.strip(), parse).filter(v -> v.compareTo(low) >= 0 && v.compareTo(high) <= 0);
            if (value.isEmpty()) {
                section.refuse(key, rule);
            }
            return value;
        });
    }

    private static <T> Optional<T> parsed(String text, Function<String, T> parse) {
        try {
            return Optional.of(parse.apply(text));
        } catch (NumberFormatException notANumber) {
            return Optional.empty();
        }
    }

    static Optional<Duration> duration(Section section, String key, Duration low, Duration high) {
        return section.findText(key).flatMap(text -> {
            Matcher matcher = DURATION.matcher(text.strip());
            if (matcher.matches()) {
                Duration value = UNITS.getOrDefault(matcher.group(2), Duration.ZERO)
                        .multipliedBy(Long.parseLong(matcher.group(1)));
                if (value.compareTo(low) >= 0 && value.compareTo(high) <= 0) {
                    return Optional.of(value);
                }
            }
            section.refuse(
                    key,
                    "must be a duration from " + words(low) + " to " + words(high)
                            + ", written as a whole number and s, min, h or d");
            return Optional.empty();
        });
    }

    static <T> Optional<T> choice(Section section, String key, Map<String, T> words) {
        return section.findText(key).flatMap(text -> {
            T value = words.get(text.strip());
            if (value != null) {
                return Optional.of(value);
            }
            TreeSet<String> known = new TreeSet<>(words.keySet());
            section.refuse(
                    key,
                    "must be one of " + String.join(", ", known),
                    Nearest.of(text, known)
                            .map(k -> "Did you mean '" + k + "'?")
                            .orElse(""));
            return Optional.empty();
        });
    }

    /** A duration in the form that documents use. */
    static String words(Duration duration) {
        long seconds = duration.toSeconds();
        if (seconds % 86_400 == 0 && seconds > 0) {
            return seconds / 86_400 + " d";
        }
        if (seconds % 3600 == 0 && seconds > 0) {
            return seconds / 3600 + " h";
        }
        return seconds % 60 == 0 && seconds > 0 ? seconds / 60 + " min" : seconds + " s";
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? Long.toString((long) value)
                : Double.toString(value);
    }

    private static String suffix(String unit) {
        return unit.isEmpty() ? "" : " " + unit;
    }
}
