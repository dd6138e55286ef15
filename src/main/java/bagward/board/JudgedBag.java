package bagward.board;

import bagward.alarm.BagDampRule;
import bagward.alarm.BagDueRule;
import bagward.alarm.BagFitRule;
import bagward.alarm.BagHotRule;
import bagward.alarm.BagMouldRule;
import bagward.alarm.Circumstances;
import bagward.alarm.Rule;
import bagward.alarm.Verdict;
import bagward.bag.BagClimate;
import bagward.bag.BagFit;
import bagward.bag.Bagging;
import bagward.bag.CropId;
import bagward.bag.Head;
import bagward.mould.Ahead;
import bagward.mould.MouldCourse;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;

/**
 * A bag with everything that rules about bags look at.
 *
 * @param head the head
 * @param crop the crop of it
 * @param bagging the bag that is on
 * @param climate inside this bag
 * @param course mould risk of the head since its first bag
 * @param ahead what the outlook would add to it; empty without one
 * @param due when the bag is due to come off
 * @param fit how the sensor in it finds the bag to sit; empty without one
 */
record JudgedBag(
        Head head,
        CropId crop,
        Bagging bagging,
        BagClimate climate,
        MouldCourse course,
        Optional<Ahead> ahead,
        Instant due,
        Optional<BagFit> fit) {
    /** A rule with the limit that it has for this bag. */
    Rule here(Rule general) {
        return general.at(new Circumstances(head.spot().house(), Optional.of(bagging.material()), Optional.of(crop)));
    }

    /** The same bag with what is known of the night and by the sensor in it. */
    JudgedBag knowing(Optional<Ahead> night, Optional<BagFit> sits) {
        return new JudgedBag(head, crop, bagging, climate, course, night, due, sits);
    }

    /** What a rule says of the bag; empty if it is not about bags. */
    Optional<Verdict> verdict(Rule general, Instant now, ZoneId zone) {
        Rule rule = here(general);
        return switch (rule.kind()) {
            case BAG_DAMP -> Optional.of(BagDampRule.judge(rule, head.tag(), climate, now));
            case BAG_HOT -> Optional.of(BagHotRule.judge(rule, head.tag(), climate, now));
            case BAG_DUE -> Optional.of(BagDueRule.judge(rule, head.tag(), bagging.putOn(), due, now));
            case BAG_MOULD ->
                Optional.of(new BagMouldRule(rule, now, zone).judge(head.tag(), climate, course.high(), ahead));
            case BAG_SHUT, BAG_OFF -> fit.map(sits -> BagFitRule.judge(rule, head.tag(), sits));
            case DRYING_DAMP,
                    SENSOR_SILENT,
                    SENSOR_BATTERY,
                    SENSOR_CLOCK,
                    STORE_AWAY,
                    SPOOL_FILLING,
                    DISK_FILLING,
                    STATION_CLOCK -> Optional.empty();
        };
    }
}
