package bagward.site.form;

import bagward.fault.Fault;
import bagward.fault.ImpossibleValueException;
import bagward.fault.RefusedInputException;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Reads the fields of a form and collects all that is wrong with them. Used once, by one thread. */
public final class Fields {
    private static final Duration CLOCKS_DIFFER_BY = Duration.ofMinutes(2);

    private final Map<String, String> values = new HashMap<>();
    private final List<Fault> faults = new ArrayList<>();
    private final ZoneId zone;
    private final Instant now;

    /**
     * Fields as they were sent.
     *
     * @param sent values by field; of several values the first counts
     * @param zone zone of times
     * @param now times after this are refused
     */
    public Fields(Map<String, List<String>> sent, ZoneId zone, Instant now) {
        sent.forEach(
                (name, all) -> values.put(name, all.isEmpty() ? "" : all.get(0).strip()));
        this.zone = zone;
        this.now = now;
    }

    /** What was sent. */
    public Map<String, String> values() {
        return Map.copyOf(values);
    }

    /** Value of a field as it was sent; empty if it was not. */
    public String sent(String name) {
        return values.getOrDefault(name, "");
    }

    /** Notes a fault. */
    public void refuse(String name, String rule) {
        faults.add(Fault.of(name, sent(name), rule));
    }

    /** A text that may be empty, of at most so many characters. */
    public String text(String name, int longest) {
        if (sent(name).length() > longest) {
            refuse(name, "at most " + longest + " characters are allowed");
        }
        return sent(name);
    }

    /** A text that must be given, of at most so many characters. */
    public String neededText(String name, int longest) {
        if (sent(name).isEmpty()) {
            refuse(name, "this is needed");
        }
        return text(name, longest);
    }

    /** A value that must be given; empty if it is wrong, which is noted. */
    public <T> Optional<T> needed(String name, Function<String, T> read) {
        if (sent(name).isEmpty()) {
            refuse(name, "this is needed");
            return Optional.empty();
        }
        return read(name, read);
    }

    /** A value that may be left out; empty also if it is wrong, which is noted. */
    public <T> Optional<T> optional(String name, Function<String, T> read) {
        return sent(name).isEmpty() ? Optional.empty() : read(name, read);
    }

    private <T> Optional<T> read(String name, Function<String, T> read) {
        try {
            return Optional.of(read.apply(sent(name)));
        } catch (NumberFormatException noNumber) {
            refuse(name, "a whole number is needed");
        } catch (ImpossibleValueException impossible) {
            faults.add(new Fault(name, "", impossible.getMessage(), ""));
        } catch (IllegalArgumentException unknown) {
            refuse(name, "this is none of the choices");
        }
        return Optional.empty();
    }

    /** A time in the station's zone, not in the future; of two times in the hour when clocks go back the first. */
    public Optional<Instant> time(String name) {
        LocalDateTime local;
        try {
            local = LocalDateTime.parse(sent(name));
        } catch (DateTimeException noTime) {
            refuse(name, "a day and a time are needed, such as 2027-05-11T07:30");
            return Optional.empty();
        }
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
        if (offsets.isEmpty()) {
            refuse(name, "this time does not exist: the clocks go forward then");
            return Optional.empty();
        }
        Instant at = local.toInstant(offsets.get(0));
        if (at.isAfter(now.plus(CLOCKS_DIFFER_BY))) {
            refuse(name, "this lies in the future: enter what was done, not what is planned");
        }
        return Optional.of(at);
    }

    /**
     * Ends the reading.
     *
     * @throws RefusedInputException with every fault, if there is one
     */
    public void check() {
        if (!faults.isEmpty()) {
            throw new RefusedInputException(faults);
        }
    }
}
