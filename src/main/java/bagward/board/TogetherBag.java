package bagward.board;

import bagward.alarm.HeldSpan;
import bagward.alarm.RuleId;
import bagward.alarm.TogetherMember;
import bagward.station.HouseId;
import java.util.List;

/**
 * What a rule by which houses call makes of one bag.
 *
 * @param rule which
 * @param house where the bag is
 * @param member the bag as it is now
 * @param recent the times of late for which it met the rule
 */
record TogetherBag(RuleId rule, HouseId house, TogetherMember member, List<HeldSpan> recent) {}
