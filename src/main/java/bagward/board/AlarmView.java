package bagward.board;

import bagward.alarm.Alarm;
import bagward.alarm.Rule;
import bagward.station.Spot;
import java.util.Optional;

/**
 * A listed alarm with its rule and place.
 *
 * @param alarm the alarm
 * @param rule its rule with priority and action card
 * @param spot where to walk to, if it is about a bag
 */
public record AlarmView(Alarm alarm, Rule rule, Optional<Spot> spot) {}
