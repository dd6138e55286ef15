package bagward.alarm.seasons;

import bagward.alarm.Rule;
import bagward.alarm.RuleKind;
import bagward.alarm.RulesReader;
import bagward.bag.BagMaterial;
import bagward.bag.BagMaterialsReader;
import bagward.document.Inspection;
import bagward.document.Section;
import bagward.mould.Organism;
import bagward.mould.OrganismsReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;

/**
 * Bagward's mould alarm beside what a breeder would have otherwise, on simulated seasons with a stated outcome
 * ({@link HiddenMould}). The main method chooses the limits of the others on 30 seasons from 40000 on and makes the table of
 * mould.md on the 50 seasons from 50000 on, which nothing was tuned on.
 */
final class MouldSeasons {
    private static final long TUNING = 40_000;
    private static final long UNSEEN = 50_000;
    private static final double ANY = Double.POSITIVE_INFINITY;

    private MouldSeasons() {}

    /** Prints the table, one world after the other. */
    public static void main(String[] arguments) {
        List<MouldSeason> tuning = seasons(TUNING, 30);
        List<MouldSeason> unseen = seasons(UNSEEN, 50);
        for (MouldWorld world : MouldWorld.values()) {
            List<Caller> callers = callers(world, tuning);
            Tally any = Tally.of(callers.get(0), world, unseen);
            System.out.println(world + ": " + any.mouldy() + " of " + any.bags() + " bags mouldy");
            callers.forEach(
                    caller -> System.out.println(Tally.of(caller, world, unseen).line()));
        }
    }

    /** Bagward's rule in its variants, and all others with limits chosen on seasons for tuning. */
    static List<Caller> callers(MouldWorld world, List<MouldSeason> tuning) {
        List<Caller> callers = new ArrayList<>(own());
        double allowed = Tally.of(callers.get(0), world, tuning).falsePerHundredWeeks();
        callers.add(best(houseLimits(), world, tuning, ANY));
        callers.add(best(houseLimits(), world, tuning, allowed));
        callers.addAll(days());
        callers.add(best(doses(world), world, tuning, ANY));
        return callers;
    }

    /** Seasons of some seeds from one on. */
    static List<MouldSeason> seasons(long from, int count) {
        BagMaterial material = material();
        return LongStream.range(from, from + count)
                .mapToObj(seed -> new MouldSeason(seed, material))
                .toList();
    }

    /**
     * The rule as shipped, the same without the outlook, the same with the true climate of each bag, and all rules together
     * that send somebody to a bag for damp or mould.
     */
    static List<Caller> own() {
        Rule rule = rules(RuleKind.BAG_MOULD).get(0);
        List<Organism> table = OrganismsReader.parse("organisms.yaml", seed("organisms.yaml"));
        List<Caller> callers = new ArrayList<>(List.of(
                new MouldRuleCaller(
                        "Bagward, rule bag-mould-risk", rule, table, SeasonBag::inside, rule.actsOn(), true),
                new MouldRuleCaller(
                        "the same without tonight's outlook", rule, table, SeasonBag::inside, rule.actsOn(), false),
                new MouldRuleCaller(
                        "the same if each bag had a faultless sensor",
                        rule,
                        table,
                        SeasonBag::truly,
                        rule.actsOn(),
                        false)));
        List<Caller> others = new ArrayList<>();
        for (Rule other : rules(RuleKind.BAG_MOULD).stream().skip(1).toList()) {
            others.add(
                    new MouldRuleCaller("rule " + other.id(), other, table, SeasonBag::inside, other.actsOn(), true));
        }
        callers.addAll(others);
        rules(RuleKind.BAG_DAMP).forEach(damp -> callers.add(new DampRuleCaller(damp)));
        others.add(callers.get(0));
        callers.add(new FirstOf("all mould rules", List.copyOf(others)));
        rules(RuleKind.BAG_DAMP).forEach(damp -> others.add(new DampRuleCaller(damp)));
        callers.add(new FirstOf("all rules on damp and mould", others));
        return callers;
    }

    /** The caller of best balance among those that call falsely no more often than allowed. */
    static Caller best(List<? extends Caller> callers, MouldWorld world, List<MouldSeason> seasons, double allowed) {
        return callers.stream()
                .map(caller -> Tally.of(caller, world, seasons))
                .filter(tally -> tally.falsePerHundredWeeks() <= allowed)
                .max(Comparator.comparingDouble(Tally::balance))
                .orElseThrow()
                .caller();
    }

    static List<HouseHumidityCaller> houseLimits() {
        List<HouseHumidityCaller> limits = new ArrayList<>();
        for (int percent = 74; percent <= 98; percent += 2) {
            for (int hours : new int[] {0, 1, 2, 4, 6, 8, 10, 12}) {
                limits.add(new HouseHumidityCaller(percent, Math.max(hours, 0.1)));
            }
        }
        return limits;
    }

    static List<KnowingCaller> doses(MouldWorld world) {
        return DoubleStream.iterate(0.02, dose -> dose < 8, dose -> dose * 1.2)
                .mapToObj(dose -> new KnowingCaller(world, dose))
                .toList();
    }

    static List<CalendarCaller> days() {
        return List.of(1, 2, 3, 4, 5, 6).stream().map(CalendarCaller::new).toList();
    }

    private static List<Rule> rules(RuleKind kind) {
        Inspection inspection = new Inspection();
        return RulesReader.read(Section.parse("rules.yaml", seed("rules.yaml"), inspection)
                        .sections("rules", 1))
                .stream()
                .filter(rule -> rule.kind() == kind)
                .toList();
    }

    private static BagMaterial material() {
        Section top = Section.parse("bag-materials.yaml", seed("bag-materials.yaml"), new Inspection());
        return BagMaterialsReader.read(top).stream()
                .filter(m -> m.id().value().equals("film-half-mm"))
                .findFirst()
                .orElseThrow();
    }

    private static String seed(String name) {
        try {
            return Files.readString(Path.of("seeds", name));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
