package bagward.bag;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds which bag a person means by the head it was on before, and that each bag is in one place only. Used within one fold. */
final class UsedBagFold {
    private static final String FIELD = "bag_before";

    private final Map<TagCode, HeadLog> heads;
    private final Breaches breaches;
    private final Map<BagUse, RegisterChange> usedAgain = new HashMap<>();

    /** @param heads all heads so far, as the fold goes on */
    UsedBagFold(Map<TagCode, HeadLog> heads, Breaches breaches) {
        this.heads = heads;
        this.breaches = breaches;
    }

    /** The earlier use that is meant; empty for a new bag, or if there is none, whose breach is then noted. */
    Optional<BagUse> take(RegisterChange change, MaterialId material, Optional<UsedBefore> said) {
        return said.flatMap(used -> find(change, material, used));
    }

    private Optional<BagUse> find(RegisterChange change, MaterialId material, UsedBefore used) {
        HeadLog head = heads.get(used.head());
        List<Bagging> ended = head == null ? List.of() : ended(head, change.at(), used.takenOff());
        if (head == null || ended.isEmpty()) {
            String rule = used.takenOff().isPresent()
                    ? "no bag came off this head at that time"
                    : "no bag had come off this head by then";
            breach(change, change, used, rule, "Check the tag and the times, or enter first that it came off");
            return Optional.empty();
        }
        Bagging meant = ended.get(ended.size() - 1);
        BagUse use = new BagUse(used.head(), meant.putOn());
        RegisterChange since = usedAgain.get(use);
        if (!meant.material().equals(material)) {
            breach(change, change, used, "that bag was of " + meant.material(), "Give its material");
        } else if (since != null) {
            breach(
                    change,
                    since,
                    used,
                    "that bag was used on head " + since.tag() + " since",
                    "Name the head it was on last");
        } else {
            usedAgain.put(use, change);
            return Optional.of(use);
        }
        return Optional.empty();
    }

    private static List<Bagging> ended(HeadLog head, Instant by, Optional<Instant> takenOff) {
        return head.baggings().stream()
                .filter(bagging -> bagging.takenOff()
                        .filter(off -> !off.isAfter(by))
                        .filter(off -> takenOff.map(said -> minute(said).equals(minute(off)))
                                .orElse(true))
                        .isPresent())
                .sorted(Comparator.comparing(Bagging::putOn))
                .toList();
    }

    private static Instant minute(Instant at) {
        return at.truncatedTo(ChronoUnit.MINUTES);
    }

    private void breach(RegisterChange change, RegisterChange against, UsedBefore used, String rule, String remedy) {
        breaches.add(change, against, FIELD, used.head(), rule, remedy);
    }
}
