package bagward.board;

import bagward.alarm.Alarm;
import bagward.alarm.Rule;
import bagward.alarm.Subject;
import bagward.bag.TagCode;
import bagward.station.Spot;
import java.util.List;
import java.util.Optional;

/**
 * A listed alarm with its rule and place.
 *
 * @param alarm the alarm
 * @param rule its rule with priority and action card
 * @param spot where to walk to, if it is about a bag
 * @param bags those that a house calls for, in walking order; empty for other alarms, and once it is over
 */
public record AlarmView(Alarm alarm, Rule rule, Optional<Spot> spot, List<TagCode> bags) {
    /** Copies the list. */
    public AlarmView {
        bags = List.copyOf(bags);
    }

    /** An alarm that is about its subject alone. */
    public AlarmView(Alarm alarm, Rule rule, Optional<Spot> spot) {
        this(alarm, rule, spot, List.of());
    }

    /** Whether it is about a bag, by itself or among others of its house. */
    public boolean concerns(TagCode tag) {
        return alarm.key().subject().equals(new Subject.Bag(tag)) || bags.contains(tag);
    }
}
