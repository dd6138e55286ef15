package bagward.watch;

import bagward.bag.Register;
import bagward.bag.RegisterChange;
import bagward.bag.RegisterRules;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import bagward.store.RegisterStore;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The register as it stands, and its way to disk. Safe for use by several threads. */
final class RegisterKeeper {
    private final RegisterRules rules;
    private final RegisterStore store;
    private final Duration tolerance;
    private volatile Register register;

    /** @throws RefusedInputException if what is stored no longer fits the configuration */
    RegisterKeeper(RegisterRules rules, RegisterStore store, Duration tolerance) {
        this.rules = rules;
        this.store = store;
        this.tolerance = tolerance;
        this.register = load();
    }

    private Register load() {
        try {
            return rules.apply(Register.EMPTY, store.changes());
        } catch (RefusedInputException e) {
            throw new RefusedInputException(e.faults().stream()
                    .map(fault -> new Fault(
                            "stored register, " + fault.place(),
                            fault.found(),
                            fault.rule(),
                            "The configuration no longer fits it: put back what was taken out."))
                    .toList());
        }
    }

    /** The register as it is now. */
    Register register() {
        return register;
    }

    /** Checks changes, stores them and takes them over; all or none. */
    synchronized void change(List<RegisterChange> changes, String by, Instant now) {
        List<Fault> faults = new ArrayList<>(inFuture(changes, now));
        Register next = register;
        try {
            next = rules.apply(register, changes);
        } catch (RefusedInputException e) {
            faults.addAll(e.faults());
        }
        if (!faults.isEmpty()) {
            throw new RefusedInputException(faults);
        }
        store.append(changes, by, now);
        register = next;
    }

    private List<Fault> inFuture(List<RegisterChange> changes, Instant now) {
        List<Fault> faults = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            Instant at = changes.get(i).at();
            if (at.isAfter(now.plus(tolerance))) {
                faults.add(new Fault(
                        "change " + (i + 1) + ", at",
                        at.toString(),
                        "lies in the future: the station's clock says " + now,
                        "Enter it when it is done."));
            }
        }
        return faults;
    }
}
