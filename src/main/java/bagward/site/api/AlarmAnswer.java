package bagward.site.api;

import bagward.alarm.ActionCard;
import bagward.alarm.Alarm;
import bagward.alarm.Aside;
import bagward.bag.TagCode;
import bagward.board.AlarmView;
import bagward.station.Spot;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * An alarm in the interface.
 *
 * @param rule short name of the rule
 * @param name the rule as people read it
 * @param subject kind and name: "bag:TAG", "house:NAME", "sensor:NAME", "system:PART"
 * @param priority "low", "medium" or "high"
 * @param phase "unacknowledged", "acknowledged", "returned-unacknowledged", "shelved", "suppressed" or "out-of-service"
 * @param since from when the condition holds
 * @param raisedAt when it was raised
 * @param acknowledgedAt when a person confirmed it
 * @param acknowledgedBy who did
 * @param message the newest sentence about it
 * @param house short name of the house to walk to, for bags
 * @param bay short name of the bay
 * @param spot number of the spot
 * @param bags tags of the heads that a house calls for, in walking order
 * @param aside who or what hides it, if anything does
 * @param action what to do
 */
public record AlarmAnswer(
        String rule,
        String name,
        String subject,
        String priority,
        String phase,
        Instant since,
        Optional<Instant> raisedAt,
        Optional<Instant> acknowledgedAt,
        Optional<String> acknowledgedBy,
        String message,
        Optional<String> house,
        Optional<String> bay,
        Optional<Integer> spot,
        List<String> bags,
        Optional<AsideAnswer> aside,
        ActionAnswer action) {
    static AlarmAnswer of(AlarmView view) {
        Alarm alarm = view.alarm();
        return new AlarmAnswer(
                alarm.key().rule().value(),
                view.rule().name(),
                alarm.key().subject().key(),
                BagAnswer.word(view.rule().priority()),
                BagAnswer.word(alarm.phase()),
                alarm.since(),
                alarm.raisedAt(),
                alarm.acknowledgedAt(),
                alarm.acknowledgedBy(),
                alarm.message(),
                view.spot().map(s -> s.house().value()),
                view.spot().map(s -> s.bay().value()),
                view.spot().map(Spot::number),
                view.bags().stream().map(TagCode::value).toList(),
                alarm.aside().map(AsideAnswer::of),
                ActionAnswer.of(view.rule().card()));
    }

    /**
     * Who or what hides an alarm.
     *
     * @param by who; "rule" if the design does
     * @param from since when
     * @param until when it comes back by itself
     * @param why the reason, or what suppresses it
     */
    public record AsideAnswer(String by, Instant from, Optional<Instant> until, String why) {
        static AsideAnswer of(Aside aside) {
            return new AsideAnswer(aside.by(), aside.from(), aside.until(), aside.why());
        }
    }

    /**
     * An action card in the interface.
     *
     * @param what to do
     * @param why it matters
     * @param howSoon by when
     * @param proof how you know it worked
     * @param caution for the people who do it; may be empty
     */
    public record ActionAnswer(String what, String why, String howSoon, String proof, String caution) {
        static ActionAnswer of(ActionCard card) {
            return new ActionAnswer(card.what(), card.why(), card.howSoon(), card.proof(), card.caution());
        }
    }
}
