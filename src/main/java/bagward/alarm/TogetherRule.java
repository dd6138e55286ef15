package bagward.alarm;

import bagward.bag.Quantile;
import bagward.station.HouseId;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Judges a house by its bags: from so many on that meet a rule at once the house calls, and its bags do not call each for
 * itself. It goes on as long as one of them meets the rule and so many did at once within {@link #MEMORY}: else a last hot bag of
 * a hot day, or a bag that comes off, would turn one call into several. Each bag is held against its own limit.
 */
public final class TogetherRule {
    /** How long a house is looked back at: half a day, so that each day and each night counts anew. Ours. */
    public static final Duration MEMORY = Duration.ofHours(12);

    private static final int NAMED = 3;
    private static final Comparator<TogetherMember> LONGEST_FIRST = Comparator.comparing(
                    (TogetherMember member) -> member.verdict().since())
            .thenComparing(member -> member.tag().value());

    private final Rule rule;
    private final HouseId house;
    private final Instant now;

    /**
     * @param rule with {@link Rule#togetherFrom}
     * @param now the time to judge at
     */
    public TogetherRule(Rule rule, HouseId house, Instant now) {
        this.rule = rule;
        this.house = house;
        this.now = now;
    }

    /** Its alarm. */
    public AlarmKey key() {
        return new AlarmKey(rule.id(), new Subject.InHouse(house));
    }

    /**
     * Judges the house.
     *
     * @param members the bags that are on, one or more
     * @param recent the times within {@link #MEMORY} for which each bag met the rule, of those too that came off since
     */
    public Verdict judge(List<TogetherMember> members, Supplier<List<HeldSpan>> recent) {
        List<TogetherMember> met = members.stream()
                .filter(member -> member.verdict().met())
                .sorted(LONGEST_FIRST)
                .toList();
        int from = rule.togetherFrom().orElse(Integer.MAX_VALUE);
        long known = members.stream()
                .filter(member -> member.verdict().met() || outcome(member) == Verdict.Outcome.CLEAR)
                .count();
        if (known == 0) {
            return unknown(members);
        }
        boolean together = met.size() >= from || (!met.isEmpty() && HeldSpan.mostAtOnce(recent.get()) >= from);
        return together ? holds(met, known) : clear(members, met.size(), known);
    }

    private Verdict holds(List<TogetherMember> met, long known) {
        DoubleSummaryStatistics values =
                met.stream().mapToDouble(member -> member.verdict().value()).summaryStatistics();
        Instant since = met.get(0).verdict().since();
        BagClimateRule words = BagClimateRule.of(rule.kind());
        String message = met.size() + " of " + known + " bags " + words.adjective() + ", the longest "
                + Words.duration(Duration.between(since, now)) + ": up to "
                + words.figure(values.getMax(), rule.kind()) + " now" + by(met) + ", " + limits(met) + ", "
                + origin(met) + "; " + names(met);
        return new Verdict(key(), Verdict.Outcome.HOLDS, since, values.getMax(), message);
    }

    private String by(List<TogetherMember> met) {
        boolean allMeasured = met.stream().allMatch(TogetherMember::measured);
        return allMeasured || rule.actsOn().equals(Quantile.MIDDLE)
                ? ""
                : " by " + rule.actsOn().words();
    }

    private String limits(List<TogetherMember> met) {
        DoubleSummaryStatistics limits =
                met.stream().mapToDouble(TogetherMember::limit).summaryStatistics();
        String lowest = Words.number(limits.getMin(), 1);
        String highest = Words.number(limits.getMax(), 1);
        String unit = " " + rule.kind().unit();
        return lowest.equals(highest)
                ? "limit " + lowest + unit
                : "each against its own limit of " + lowest + " to " + highest + unit;
    }

    private static String origin(List<TogetherMember> met) {
        long measured = met.stream().filter(TogetherMember::measured).count();
        return measured == 0 ? "estimated" : measured == met.size() ? "measured" : measured + " measured";
    }

    private static String names(List<TogetherMember> met) {
        String first =
                met.stream().limit(NAMED).map(member -> member.tag().value()).collect(Collectors.joining(", "));
        return met.size() <= NAMED ? first : first + " and " + (met.size() - NAMED) + " more";
    }

    /** Clear since the last of its bags was; if none met the rule of late, for as long as one of them is known to be clear. */
    private Verdict clear(List<TogetherMember> members, int met, long known) {
        Instant since = members.stream()
                .filter(member -> outcome(member) == Verdict.Outcome.CLEAR)
                .flatMap(member -> member.lastMet().stream())
                .max(Comparator.naturalOrder())
                .or(() -> members.stream()
                        .filter(member -> outcome(member) == Verdict.Outcome.CLEAR)
                        .map(member -> member.verdict().since())
                        .min(Comparator.naturalOrder()))
                .orElse(now);
        String adjective = BagClimateRule.of(rule.kind()).adjective();
        String message = met == 0
                ? "none of " + known + " bags " + adjective
                : met + " of " + known + " bags " + adjective + ", too few to call together";
        return new Verdict(key(), Verdict.Outcome.CLEAR, since, Double.NaN, message);
    }

    /** Of no bag anything is known: suppressed as one of them is, or just not known. */
    private Verdict unknown(List<TogetherMember> members) {
        return members.stream()
                .map(TogetherMember::verdict)
                .filter(verdict -> verdict.outcome() == Verdict.Outcome.SUPPRESSED)
                .min(Comparator.comparing(Verdict::key))
                .map(verdict ->
                        new Verdict(key(), Verdict.Outcome.SUPPRESSED, verdict.since(), Double.NaN, verdict.message()))
                .orElseGet(() ->
                        new Verdict(key(), Verdict.Outcome.UNKNOWN, now, Double.NaN, "not known: no data of any bag"));
    }

    private static Verdict.Outcome outcome(TogetherMember member) {
        return member.verdict().outcome();
    }

    /** What a bag says that is left to its house. */
    public static Verdict covered(Verdict single, Rule rule, String house) {
        return single.outcome() == Verdict.Outcome.HOLDS
                ? single.coveredBy("“" + rule.name() + "” calls for " + house + " as a whole")
                : single;
    }
}
