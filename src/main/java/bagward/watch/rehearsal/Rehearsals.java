package bagward.watch.rehearsal;

import bagward.alarm.Rule;
import java.util.List;

/** Rules tried on the stored past beside the running watch, one rehearsal at a time. Safe for use by several threads. */
public interface Rehearsals {
    /** How the last one stands. */
    RehearsalState state();

    /**
     * The running rules with the changes of a text.
     *
     * @throws bagward.fault.RefusedInputException with every fault and its line
     */
    List<Rule> changed(String text);

    /**
     * Starts one.
     *
     * @throws bagward.fault.RefusedInputException if another one runs, or if it would cost too much
     */
    void start(RehearsalOrder order);

    /** Ends the one that runs, without a result; does nothing if none does. */
    void stop();
}
