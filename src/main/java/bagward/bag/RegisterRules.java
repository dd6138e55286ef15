package bagward.bag;

import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import bagward.station.Station;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/**
 * The rules of the register. A register is the fold of all its changes sorted by the time they were done, so the order
 * in which they were entered does not matter. Times in the future are the caller's to refuse: here is no clock.
 */
public final class RegisterRules {
    private final Station station;
    private final Set<MaterialId> materials;
    private final Set<CropId> crops;

    /**
     * Rules for a station.
     *
     * @param station with its spots and spare sensors
     * @param materials bag materials that are known
     * @param crops crops that are known
     */
    public RegisterRules(Station station, Set<MaterialId> materials, Set<CropId> crops) {
        this.station = station;
        this.materials = Set.copyOf(materials);
        this.crops = Set.copyOf(crops);
    }

    /** Rules for a station whose heads name no crop. */
    public RegisterRules(Station station, Set<MaterialId> materials) {
        this(station, materials, Set.of());
    }

    /**
     * Adds changes, all or none.
     *
     * @param before the register so far
     * @param more changes to add, in any order
     * @return the register with all changes of both
     * @throws RefusedInputException with every fault; its place is "change N, field", N counted from 1 in {@code more},
     *     or the earlier entry that would no longer hold
     */
    public Register apply(Register before, List<RegisterChange> more) {
        List<RegisterChange> all = new ArrayList<>(before.changes());
        all.addAll(more);
        all.sort(ChangeOrder.BY_EVENT);
        RegisterFold fold = new RegisterFold(station, materials, crops, all);
        all.forEach(fold::take);
        if (!fold.breaches().isEmpty()) {
            throw new RefusedInputException(faults(fold.breaches(), more));
        }
        return fold.register(all);
    }

    private static List<Fault> faults(List<Breach> breaches, List<RegisterChange> more) {
        IdentityHashMap<RegisterChange, Integer> numbers = new IdentityHashMap<>();
        for (int i = 0; i < more.size(); i++) {
            numbers.put(more.get(i), i + 1);
        }
        return breaches.stream()
                .sorted((a, b) -> Integer.compare(number(a, numbers), number(b, numbers)))
                .map(breach -> breach.fault(place(breach, numbers)))
                .toList();
    }

    private static int number(Breach breach, IdentityHashMap<RegisterChange, Integer> numbers) {
        Integer own = numbers.get(breach.change());
        return own != null ? own : numbers.getOrDefault(breach.against(), Integer.MAX_VALUE);
    }

    private static String place(Breach breach, IdentityHashMap<RegisterChange, Integer> numbers) {
        int number = number(breach, numbers);
        if (number < Integer.MAX_VALUE) {
            return "change " + number + ", " + breach.field();
        }
        return "head " + breach.change().tag() + " as entered before, " + breach.field();
    }
}
