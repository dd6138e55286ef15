package bagward.watch.rehearsal;

import bagward.alarm.Rule;
import java.time.LocalDate;
import java.util.List;

/**
 * What somebody wants to try.
 *
 * @param first first civil day
 * @param last last civil day
 * @param days the same as a stretch of time
 * @param text changes to the running rules as they were written; empty for the running rules as they are
 * @param rules the rules to try
 * @param besideRunning whether the running rules are tried as well
 */
public record RehearsalOrder(
        LocalDate first, LocalDate last, RehearsedDays days, String text, List<Rule> rules, boolean besideRunning) {
    /** Copies the list. */
    public RehearsalOrder {
        rules = List.copyOf(rules);
    }
}
