package bagward.alarm;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Says in words what to tune about rules that ask too much of people. */
public final class AlarmAdvice {
    /** So many new alarms a day a person with other work bears. Ours. */
    public static final double BEARABLE_A_DAY = 6;

    /** A share of high ones above this wears the word out; the trade aims at 5 % (secondary texts), this is ours. */
    public static final double MOST_HIGH = 0.2;

    /** Half of the alarms waiting longer than this deserves a word. Ours. */
    public static final Duration LONG_WAIT = Duration.ofHours(4);

    private static final int NAMED = 5;

    private final AlarmLoad load;
    private final Map<RuleId, Rule> rules = new HashMap<>();
    private final Function<Subject, String> names;
    private final List<Advice> advice = new ArrayList<>();

    private AlarmAdvice(AlarmLoad load, Collection<Rule> rules, Function<Subject, String> names) {
        this.load = load;
        rules.forEach(rule -> this.rules.put(rule.id(), rule));
        this.names = names;
    }

    /**
     * What to tune.
     *
     * @param load of some days
     * @param days how many
     * @param rules that are watched; what others raised is not advised on
     * @param names subjects as people call them
     * @return the weightiest first; empty if there is nothing to tune
     */
    public static List<Advice> of(AlarmLoad load, int days, Collection<Rule> rules, Function<Subject, String> names) {
        AlarmAdvice words = new AlarmAdvice(load, rules, names);
        words.tooMany(days);
        words.chattering();
        words.standing();
        words.tooManyHigh();
        words.longWaits();
        return List.copyOf(words.advice);
    }

    private void tooMany(int days) {
        double aDay = (double) load.raised() / days;
        if (aDay <= BEARABLE_A_DAY) {
            return;
        }
        String found = Words.number(aDay, 1) + " new alarms a day; a person with other work bears three to six.";
        rules.values().stream()
                .max(Comparator.comparingInt(this::raisedBy).thenComparing(Rule::id))
                .ifPresent(most -> {
                    long percent = Math.round(100.0 * raisedBy(most) / load.raised());
                    advice.add(new Advice(
                            found, "Most come from “" + most.name() + "” (" + percent + " %): " + rarer(most)));
                });
    }

    private int raisedBy(Rule rule) {
        return load.perRule().getOrDefault(rule.id(), 0);
    }

    private static String rarer(Rule rule) {
        return "raise its limit (now " + limit(rule) + ") or lengthen its on-delay (now "
                + Words.duration(rule.onDelay()) + "), after a rehearsal on the past.";
    }

    private static String limit(Rule rule) {
        return Words.number(rule.limit(), 1) + " " + rule.kind().unit();
    }

    private void chattering() {
        byRule(load.chattering())
                .forEach((rule, subjects) -> advice.add(new Advice(
                        "“" + rule.name() + "” chattered, at least " + AlarmLoad.CHATTER + " times within "
                                + Words.duration(AlarmLoad.CHATTER_WINDOW) + ": " + named(subjects) + ".",
                        "Widen its deadband (now " + Words.number(rule.deadband(), 1) + " "
                                + rule.kind().unit() + ") or lengthen its off-delay (now "
                                + Words.duration(rule.offDelay()) + ").")));
    }

    private void standing() {
        List<AlarmKey> keys = load.standing().stream().map(Alarm::key).toList();
        byRule(keys)
                .forEach((rule, subjects) -> advice.add(new Advice(
                        "“" + rule.name() + "” has stood for more than a day: " + named(subjects) + ".",
                        "Do what its card says, or shelve it with a reason. If nothing can be done about it, the rule"
                                + " should not call.")));
    }

    private void tooManyHigh() {
        int high = rules.values().stream()
                .filter(rule -> rule.priority() == Priority.HIGH)
                .mapToInt(this::raisedBy)
                .sum();
        if (high > MOST_HIGH * load.raised()) {
            advice.add(new Advice(
                    high + " of " + load.raised() + " alarms were high.",
                    "Keep high for what cannot wait until the next round, and make the others medium."));
        }
    }

    private void longWaits() {
        load.timeToAcknowledge()
                .filter(wait -> wait.compareTo(LONG_WAIT) > 0)
                .ifPresent(wait -> advice.add(new Advice(
                        "Half of the alarms waited for more than " + Words.duration(wait) + " until somebody saw them.",
                        "If that was soon enough, their priority can be lower; if not, name a second person to be"
                                + " told.")));
    }

    private Map<Rule, List<Subject>> byRule(List<AlarmKey> keys) {
        Map<Rule, List<Subject>> byRule = new TreeMap<>(Comparator.comparing(Rule::id));
        for (AlarmKey key : keys) {
            Rule rule = rules.get(key.rule());
            if (rule != null) {
                byRule.computeIfAbsent(rule, r -> new ArrayList<>()).add(key.subject());
            }
        }
        return byRule;
    }

    private String named(List<Subject> subjects) {
        String first = subjects.stream().limit(NAMED).map(names).collect(Collectors.joining(", "));
        return subjects.size() <= NAMED ? first : first + " and " + (subjects.size() - NAMED) + " more";
    }

    /**
     * One piece of advice.
     *
     * @param found what was found, in numbers
     * @param tune what to change
     */
    public record Advice(String found, String tune) {}
}
