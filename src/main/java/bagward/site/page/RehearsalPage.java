package bagward.site.page;

import bagward.board.Board;
import bagward.site.form.Entered;
import bagward.site.form.RehearsalEntry;
import bagward.site.view.Words;
import bagward.watch.rehearsal.RehearsalOrder;
import bagward.watch.rehearsal.RehearsalState;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Rules tried on the stored past.
 *
 * @param entered the form
 * @param runs whether one runs
 * @param what what runs, or was tried last; empty if nothing was
 * @param percent how much of it is done
 * @param ended why it ended without a result; empty if it did not
 * @param outcome what came of it
 */
public record RehearsalPage(
        Entered entered, boolean runs, String what, int percent, String ended, Optional<RehearsalOutcome> outcome) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    /** The page of a state. */
    public static RehearsalPage of(Board board, RehearsalState state, Entered entered) {
        if (state instanceof RehearsalState.Runs runs) {
            int percent = (int) Math.floor(100 * runs.share());
            return new RehearsalPage(entered, true, what(runs.order()), percent, "", Optional.empty());
        }
        if (state instanceof RehearsalState.Done done) {
            String what = what(done.order()) + " It took " + Words.span(done.took()) + ".";
            return new RehearsalPage(
                    entered,
                    false,
                    what,
                    100,
                    "",
                    Optional.of(RehearsalOutcome.of(board, done.order(), done.result())));
        }
        if (state instanceof RehearsalState.Ended end) {
            return new RehearsalPage(entered, false, what(end.order()), 0, end.why(), Optional.empty());
        }
        return new RehearsalPage(entered, false, "", 0, "", Optional.empty());
    }

    private static String what(RehearsalOrder order) {
        String rules = order.text().isBlank()
                ? "The running rules"
                : order.besideRunning() ? "Changed rules beside the running ones" : "Changed rules";
        return rules + " from " + day(order.first()) + " to " + day(order.last()) + ", a look every "
                + order.days().every().toMinutes() + " min.";
    }

    private static String day(LocalDate day) {
        return DAY.format(day);
    }

    /** How often the rules may look, minutes. */
    public List<String> minutes() {
        return RehearsalEntry.MINUTES;
    }
}
