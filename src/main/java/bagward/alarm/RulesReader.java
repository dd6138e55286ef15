package bagward.alarm;

import bagward.document.Section;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads rules. A rule without an action card is refused: what needs no act is no alarm. */
public final class RulesReader {
    private static final Duration LONGEST = Duration.ofDays(30);
    private static final double WIDEST_DEADBAND = 20;
    private static final Map<String, RuleKind> KINDS =
            Arrays.stream(RuleKind.values()).collect(Collectors.toMap(RuleKind::word, Function.identity()));
    private static final Map<String, Priority> PRIORITIES = Arrays.stream(Priority.values())
            .collect(Collectors.toMap(p -> p.name().toLowerCase(Locale.ROOT), Function.identity()));

    private RulesReader() {}

    /**
     * Reads the entries of a list of rules.
     *
     * @param entries each with id, name, watches (a {@link RuleKind#word}), limit, deadband, on-delay, off-delay,
     *     re-alarm (if it is to ask again), priority (low, medium, high) and card (what, why, how-soon, proof, caution)
     * @return the rules that were not refused
     */
    public static List<Rule> read(List<Section> entries) {
        List<Rule> rules = new ArrayList<>();
        Set<RuleId> used = new HashSet<>();
        for (Section entry : entries) {
            Optional<RuleId> id = entry.value("id", RuleId::new);
            id.filter(i -> !used.add(i))
                    .ifPresent(i -> entry.refuse("id", "is used by another rule: give each its own"));
            rule(entry, id).ifPresent(rules::add);
        }
        return rules;
    }

    private static Optional<Rule> rule(Section entry, Optional<RuleId> id) {
        String name = entry.text("name");
        Optional<RuleKind> kind = entry.choice("watches", KINDS);
        double limit = kind.map(k -> entry.number("limit", k.lowestLimit(), k.highestLimit(), k.unit()))
                .orElseGet(() -> entry.number("limit", -1000, 1000, ""));
        String unit = kind.map(RuleKind::unit).orElse("");
        double deadband = entry.number("deadband", 0, WIDEST_DEADBAND, unit, 0);
        Duration onDelay = entry.duration("on-delay", Duration.ZERO, LONGEST, Duration.ZERO);
        Duration offDelay = entry.duration("off-delay", Duration.ZERO, LONGEST, Duration.ZERO);
        Optional<Duration> reAlarm = entry.has("re-alarm")
                ? Optional.of(entry.duration("re-alarm", Duration.ofMinutes(10), LONGEST))
                : Optional.empty();
        Optional<Priority> priority = entry.choice("priority", PRIORITIES);
        Optional<ActionCard> card = card(entry.section("card"));
        return entry.make(() -> new Rule(
                id.orElseThrow(),
                name,
                kind.orElseThrow(),
                limit,
                deadband,
                onDelay,
                offDelay,
                reAlarm,
                priority.orElseThrow(),
                card.orElseThrow()));
    }

    private static Optional<ActionCard> card(Section card) {
        String what = card.text("what");
        String why = card.text("why");
        String howSoon = card.text("how-soon");
        String proof = card.text("proof");
        String caution = card.text("caution", "");
        return card.make(() -> new ActionCard(what, why, howSoon, proof, caution));
    }
}
