package bagward.site.page;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmKey;
import bagward.alarm.AlarmPhase;
import bagward.alarm.OtherLimit;
import bagward.alarm.Rule;
import bagward.board.AlarmView;
import bagward.board.Board;
import bagward.site.form.Entered;
import bagward.site.view.AlarmWords;
import bagward.site.view.AsideLine;
import bagward.site.view.ConcernedBag;
import bagward.site.view.Fact;
import bagward.site.view.JournalLine;
import bagward.site.view.ToDo;
import bagward.site.view.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One alarm: how it stands, what to do about it, putting it aside, and what it did.
 *
 * @param address its page
 * @param subject what it is about
 * @param rule its rule
 * @param toDo what it asks for, while it is listed
 * @param aside who or what hides it
 * @param bags those that a house calls for, in walking order
 * @param facts how it stands, and the numbers of its rule
 * @param may what a person can do with it now
 * @param entered what was typed into its forms
 * @param journal what it did, newest first
 */
public record AlarmPage(
        String address,
        String subject,
        Rule rule,
        Optional<ToDo> toDo,
        Optional<AsideLine> aside,
        List<ConcernedBag> bags,
        List<Fact> facts,
        May may,
        Entered entered,
        List<JournalLine> journal) {
    /**
     * What a person can do with an alarm.
     *
     * @param shelve whether it can be hidden for a time
     * @param takeOff whether it can be taken out of service
     * @param bringBack whether it can be brought back
     */
    public record May(boolean shelve, boolean takeOff, boolean bringBack) {}

    /**
     * The page of an alarm.
     *
     * @param there whether its subject is watched now
     * @param journal what it did, newest first
     */
    public static AlarmPage of(
            Board board, AlarmKey key, Rule rule, boolean there, Entered entered, List<JournalLine> journal) {
        Optional<AlarmView> listed = find(board.alarms(), key);
        Optional<AlarmView> hidden = find(board.setAside(), key);
        boolean byPerson = hidden.filter(view -> view.alarm().phase() != AlarmPhase.SUPPRESSED)
                .isPresent();
        return new AlarmPage(
                AlarmWords.address(key),
                Words.sentence(AlarmWords.subject(board, key.subject())),
                rule,
                listed.map(view -> ToDo.of(board, view)),
                hidden.flatMap(view -> AsideLine.of(board, view)),
                listed.or(() -> hidden)
                        .map(view -> ConcernedBag.of(board, view))
                        .orElse(List.of()),
                facts(board, rule, listed.or(() -> hidden)),
                new May(listed.isPresent(), there && !byPerson, byPerson),
                entered,
                journal);
    }

    private static Optional<AlarmView> find(List<AlarmView> views, AlarmKey key) {
        return views.stream().filter(view -> view.alarm().key().equals(key)).findFirst();
    }

    private static List<Fact> facts(Board board, Rule rule, Optional<AlarmView> view) {
        List<Fact> facts = new ArrayList<>();
        Optional<Alarm> alarm = view.map(AlarmView::alarm);
        facts.add(new Fact(
                "State",
                alarm.map(a -> Words.sentence(AlarmWords.phase(a.phase())))
                        .orElse("Not raised. That is no promise: look on your round all the same")));
        alarm.ifPresent(a -> {
            facts.add(new Fact("Figures", a.message()));
            facts.add(new Fact("Holds since", Words.dayAndClock(a.since(), board.zone())));
            a.raisedAt().ifPresent(at -> facts.add(new Fact("Raised", Words.dayAndClock(at, board.zone()))));
            a.acknowledgedAt()
                    .ifPresent(at -> facts.add(new Fact(
                            "Seen",
                            Words.dayAndClock(at, board.zone()) + " by "
                                    + a.acknowledgedBy().orElse("somebody"))));
        });
        facts.add(new Fact("Priority", AlarmWords.priority(rule.priority())));
        facts.add(new Fact("Limit", number(rule.limit(), rule)));
        rule.otherLimits()
                .forEach(other -> facts.add(new Fact("Other limit", number(other.limit(), rule) + where(other))));
        if (rule.kind().estimated()) {
            facts.add(new Fact("Acts on", rule.actsOn().words() + "; measured values as they are"));
        }
        rule.togetherFrom()
                .ifPresent(from -> facts.add(new Fact("House calls instead", "from " + from + " bags at once")));
        facts.add(new Fact("Deadband", number(rule.deadband(), rule)));
        facts.add(new Fact("Raised when it has held for", Words.span(rule.onDelay())));
        facts.add(new Fact("Over when it has been gone for", Words.span(rule.offDelay())));
        rule.reAlarm().ifPresent(after -> facts.add(new Fact("Asks again after", Words.span(after))));
        return facts;
    }

    private static String where(OtherLimit other) {
        return other.house().map(house -> ", house " + house).orElse("")
                + other.material().map(material -> ", bags of " + material).orElse("");
    }

    private static String number(double value, Rule rule) {
        return Words.oneDecimal(value) + " " + rule.kind().unit();
    }
}
