package bagward.document;

import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** What was found while one input was read: all faults, and which keys the readers asked for. Not shared by threads. */
public final class Inspection {
    private final Set<Fault> faults = new LinkedHashSet<>();
    private final Set<String> refusedPaths = new LinkedHashSet<>();
    private final SortedMap<String, SortedSet<String>> asked = new TreeMap<>();

    /** Notes a fault, once however often it is found; reading goes on. */
    public void refuse(Fault fault) {
        faults.add(fault);
    }

    /** All faults so far, in the order in which they were found. */
    public List<Fault> faults() {
        return List.copyOf(faults);
    }

    /**
     * Ends the reading.
     *
     * @throws RefusedInputException with all faults, if there is any
     */
    public void throwIfRefused() {
        if (!faults.isEmpty()) {
            throw new RefusedInputException(faults());
        }
    }

    /** Keys that were asked for, by path; list positions are written "[]". Lets a test hold a schema against the code. */
    public SortedMap<String, SortedSet<String>> asked() {
        return Collections.unmodifiableSortedMap(asked);
    }

    void refuse(Fault fault, String path) {
        faults.add(fault);
        refusedPaths.add(path);
    }

    /** Whether anything at a path or below it was refused. */
    boolean refusedWithin(String path) {
        return refusedPaths.stream()
                .anyMatch(
                        p -> p.equals(path) || path.isEmpty() || p.startsWith(path + ".") || p.startsWith(path + "["));
    }

    void ask(String path, String key) {
        asked.computeIfAbsent(path.replaceAll("\\[\\d+]", "[]"), p -> new TreeSet<>())
                .add(key);
    }
}
