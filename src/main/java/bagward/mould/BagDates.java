package bagward.mould;

import bagward.bag.Bagging;
import bagward.bag.FlowerSigns;
import bagward.bag.Head;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * When the bag of a head should come off: on the morning of its day, whatever the hour at which it was put on. Swapping a
 * wet bag for a dry one does not start the time anew. Safety of an early removal is never promised: the earliest date is
 * a rule of thumb of ours, the look at the head decides.
 *
 * @param due when its time is over
 * @param earliest when it may sensibly come off; the due date if nobody noted anything of the flowers
 * @param overdueEvery how long until it is one step more overdue
 */
public record BagDates(Instant due, Instant earliest, Duration overdueEvery) {
    /** When the day's work begins, house time; ours. */
    private static final LocalTime MORNING = LocalTime.of(6, 0);

    /**
     * Dates of the bag that is on at an instant.
     *
     * @param head the head
     * @param at an instant at which a bag is on
     * @param daysOfMaterial how long a bag of this material stays on; the shorter of this and the crop's time counts,
     *     in whole days
     * @param times times of the crop
     * @param zone zone of the house
     * @return empty if no bag is on
     */
    public static Optional<BagDates> of(
            Head head, Instant at, Duration daysOfMaterial, Crop.BagTimes times, ZoneId zone) {
        return head.baggingAt(at).map(bagging -> {
            Duration longest = daysOfMaterial.compareTo(times.dueAfter()) < 0 ? daysOfMaterial : times.dueAfter();
            Instant due = morningAfter(firstOfUnbroken(head.baggings(), bagging).putOn(), longest.toDays(), zone);
            return new BagDates(
                    due, earliest(head.pollination().at(), due, times, head.flowers()), times.overdueEvery());
        });
    }

    /** Where the bag stands. */
    public BagStage stageAt(Instant now) {
        if (overdueSteps(now) >= 1) {
            return BagStage.OVERDUE;
        }
        if (!now.isBefore(due)) {
            return BagStage.DUE;
        }
        return now.isBefore(earliest) ? BagStage.STAYS_ON : BagStage.MAY_COME_OFF;
    }

    /** Whole steps by which it is overdue; 0 before and on the first one. */
    public long overdueSteps(Instant now) {
        return now.isBefore(due) ? 0 : Duration.between(due, now).dividedBy(overdueEvery);
    }

    private static Instant morningAfter(Instant putOn, long days, ZoneId zone) {
        return putOn.atZone(zone)
                .toLocalDate()
                .plusDays(days)
                .atTime(MORNING)
                .atZone(zone)
                .toInstant();
    }

    /** The bag with which the time began that a later one still runs in. */
    static Bagging firstOfUnbroken(List<Bagging> baggings, Bagging last) {
        Bagging first = last;
        for (int i = baggings.indexOf(last) - 1; i >= 0; i--) {
            Bagging before = baggings.get(i);
            if (before.takenOff().filter(first.putOn()::equals).isEmpty()) {
                break;
            }
            first = before;
        }
        return first;
    }

    /** Flowers past by what was seen of them, or the due date if nothing was seen; and pollination long enough ago. */
    private static Instant earliest(Instant pollinated, Instant due, Crop.BagTimes times, FlowerSigns signs) {
        Instant past = Stream.of(
                        signs.petalsDropped(),
                        signs.lastFlowerOpened().map(opened -> opened.plus(times.afterLastFlower())))
                .flatMap(Optional::stream)
                .min(Comparator.naturalOrder())
                .orElse(due);
        Instant fertilised = pollinated.plus(times.afterPollination());
        return past.isAfter(fertilised) ? past : fertilised;
    }
}
