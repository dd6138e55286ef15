package bagward.bag;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The earlier uses of a bag, found in the register. */
public final class BagUses {
    private BagUses() {}

    /**
     * One use of a bag with what is registered of it.
     *
     * @param head the head it was on
     * @param bagging its time there
     */
    public record Use(Head head, Bagging bagging) {}

    /**
     * All uses of a bag before this one, oldest first; empty for a new bag. They end, since each one ends before the next
     * begins, which the rules of the register see to.
     */
    public static List<Use> before(Register register, Bagging bagging) {
        List<Use> uses = new ArrayList<>();
        Optional<Use> earlier = bagging.before().flatMap(use -> find(register, use));
        while (earlier.isPresent()) {
            uses.add(earlier.get());
            earlier = earlier.get().bagging().before().flatMap(use -> find(register, use));
        }
        Collections.reverse(uses);
        return List.copyOf(uses);
    }

    private static Optional<Use> find(Register register, BagUse use) {
        return register.find(use.head())
                .flatMap(head -> head.baggings().stream()
                        .filter(bagging -> bagging.putOn().equals(use.putOn()))
                        .findFirst()
                        .map(bagging -> new Use(head, bagging)));
    }
}
