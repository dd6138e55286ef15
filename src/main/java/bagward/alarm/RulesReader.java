package bagward.alarm;

import bagward.bag.CropId;
import bagward.bag.MaterialId;
import bagward.bag.Quantile;
import bagward.document.Section;
import bagward.station.HouseId;
import java.time.Duration;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Reads rules. A rule without an action card is refused: what needs no act is no alarm. An entry that names a known rule
 * changes what it gives and leaves the rest.
 */
public final class RulesReader {
    private static final Duration LONGEST = Duration.ofDays(30);
    private static final double WIDEST_DEADBAND = 20;
    private static final int MOST_TOGETHER = 1000;
    private static final Map<String, RuleKind> KINDS =
            Arrays.stream(RuleKind.values()).collect(Collectors.toMap(RuleKind::word, Function.identity()));
    private static final Map<String, Priority> PRIORITIES = Arrays.stream(Priority.values())
            .collect(Collectors.toMap(p -> p.name().toLowerCase(Locale.ROOT), Function.identity()));

    private final OtherLimitsReader otherLimits;

    /**
     * A reader.
     *
     * @param houses whether there is such a house
     * @param materials whether there is such a bag material
     * @param crops whether there is such a crop
     */
    public RulesReader(Predicate<HouseId> houses, Predicate<MaterialId> materials, Predicate<CropId> crops) {
        this.otherLimits = new OtherLimitsReader(houses, materials, crops);
    }

    /** Reads the entries of a list of rules, none of which is known before, for whatever houses, materials and crops. */
    public static List<Rule> read(List<Section> entries) {
        return new RulesReader(house -> true, material -> true, crop -> true).changed(List.of(), entries);
    }

    /**
     * Known rules with the changes of a list.
     *
     * @param known rules so far
     * @param entries each with id, name, watches (a {@link RuleKind#word}), limit, other-limits (house, material, crop, limit),
     *     acts-on (sure, middle, possible or a number), together-from (0 for never), deadband, on-delay, off-delay, re-alarm (if it is to ask again), priority (low, medium, high), card (what, why,
     *     how-soon, proof, caution) and enabled; where the id is known and it watches the same, each may be left out
     * @return the rules that were not refused and are enabled, the known ones first
     */
    public List<Rule> changed(List<Rule> known, List<Section> entries) {
        Map<RuleId, Rule> rules = new LinkedHashMap<>();
        known.forEach(rule -> rules.put(rule.id(), rule));
        Set<RuleId> used = new HashSet<>();
        for (Section entry : entries) {
            Optional<RuleId> id = entry.value("id", RuleId::new);
            id.filter(i -> !used.add(i))
                    .ifPresent(i -> entry.refuse("id", "is used by another rule: give each its own"));
            boolean enabled = entry.flag("enabled", true);
            Optional<Rule> before = id.flatMap(i -> Optional.ofNullable(rules.get(i)));
            rule(entry, id, before).ifPresent(rule -> {
                rules.remove(rule.id());
                if (enabled) {
                    rules.put(rule.id(), rule);
                }
            });
        }
        return List.copyOf(rules.values());
    }

    private Optional<Rule> rule(Section entry, Optional<RuleId> id, Optional<Rule> known) {
        Optional<RuleKind> kind = known.map(Rule::kind)
                .map(k -> Optional.of(entry.choice("watches", KINDS, k)))
                .orElseGet(() -> entry.choice("watches", KINDS));
        Optional<Rule> before = known.filter(rule -> kind.equals(Optional.of(rule.kind())));
        String name = before.map(rule -> entry.text("name", rule.name())).orElseGet(() -> entry.text("name"));
        double limit = limit(entry, kind, before.map(Rule::limit));
        double deadband = entry.number(
                "deadband",
                0,
                WIDEST_DEADBAND,
                kind.map(RuleKind::unit).orElse(""),
                before.map(Rule::deadband).orElse(0.0));
        Duration onDelay = delay(entry, "on-delay", before.map(Rule::onDelay));
        Duration offDelay = delay(entry, "off-delay", before.map(Rule::offDelay));
        Optional<Duration> reAlarm = entry.has("re-alarm")
                ? Optional.of(entry.duration("re-alarm", Duration.ofMinutes(10), LONGEST))
                : before.flatMap(Rule::reAlarm);
        List<OtherLimit> others = others(entry, kind, before);
        Quantile actsOn = actsOn(entry, kind, before);
        Optional<Integer> togetherFrom = togetherFrom(entry, kind, before);
        Optional<Priority> priority = before.map(Rule::priority)
                .map(p -> Optional.of(entry.choice("priority", PRIORITIES, p)))
                .orElseGet(() -> entry.choice("priority", PRIORITIES));
        Optional<ActionCard> card =
                before.filter(rule -> !entry.has("card")).map(Rule::card).or(() -> card(entry.section("card")));
        return entry.make(() -> new Rule(
                id.orElseThrow(),
                name,
                kind.orElseThrow(),
                limit,
                deadband,
                onDelay,
                offDelay,
                reAlarm,
                others,
                actsOn,
                togetherFrom,
                priority.orElseThrow(),
                card.orElseThrow()));
    }

    private static double limit(Section entry, Optional<RuleKind> kind, Optional<Double> before) {
        double lowest = kind.map(RuleKind::lowestLimit).orElse(-1000.0);
        double highest = kind.map(RuleKind::highestLimit).orElse(1000.0);
        String unit = kind.map(RuleKind::unit).orElse("");
        return before.map(value -> entry.number("limit", lowest, highest, unit, value))
                .orElseGet(() -> entry.number("limit", lowest, highest, unit));
    }

    private static Duration delay(Section entry, String key, Optional<Duration> before) {
        return entry.duration(key, Duration.ZERO, LONGEST, before.orElse(Duration.ZERO));
    }

    private List<OtherLimit> others(Section entry, Optional<RuleKind> kind, Optional<Rule> before) {
        if (!entry.has("other-limits")) {
            return before.map(Rule::otherLimits).orElse(List.of());
        }
        return otherLimits.read(entry, other -> limit(other, kind, Optional.empty()));
    }

    private static Quantile actsOn(Section entry, Optional<RuleKind> kind, Optional<Rule> before) {
        Optional<Quantile> given = entry.findValue("acts-on", Quantile::read);
        if (given.isPresent() && kind.filter(k -> !k.estimated()).isPresent()) {
            entry.refuse("acts-on", "is only for rules on bag-damp, bag-hot and bag-mould", "Leave it out.");
        }
        if (kind.filter(RuleKind.BAG_MOULD::equals).isPresent()
                && !given.map(Quantile::named).orElse(true)) {
            entry.refuse("acts-on", "must be sure, middle or possible for bag-mould");
        }
        return given.or(() -> before.map(Rule::actsOn)).orElse(Quantile.MIDDLE);
    }

    private static Optional<Integer> togetherFrom(Section entry, Optional<RuleKind> kind, Optional<Rule> before) {
        if (!entry.has("together-from")) {
            return before.flatMap(Rule::togetherFrom);
        }
        int from = entry.whole("together-from", 0, MOST_TOGETHER, "bags");
        if (from == 1) {
            entry.refuse("together-from", "must be 2 or more, or 0 if each bag is to call for itself");
        }
        if (kind.filter(k -> !k.shared()).isPresent()) {
            entry.refuse("together-from", "is only for rules on bag-damp and bag-hot", "Leave it out.");
        }
        return Optional.of(from).filter(bags -> bags > 1);
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
