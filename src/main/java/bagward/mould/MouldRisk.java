package bagward.mould;

import bagward.bag.BagClimate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Mould risk of a bag from its climate since it was put on. Risk is that of the worst organism and is never taken back:
 * drying a bag does not undo an infection. There is no "no mould": nothing counted reads "low estimated risk, look".
 */
public final class MouldRisk {
    /** What a bag without any finding says; a look is the only proof. */
    private static final String LOOK = "low estimated risk, look";

    private final BagClimate climate;
    private final Level level;
    private final Map<WetRule, WetPieces> piecesByRule = new HashMap<>();

    private MouldRisk(BagClimate climate, Level level) {
        this.climate = climate;
        this.level = level;
    }

    /**
     * The worst organism with its reason in numbers. On equal bands the one that stands first in the list.
     *
     * @param climate inside of the bag since it was put on
     * @param organisms the mould table
     */
    public static RiskAssessment assess(BagClimate climate, List<Organism> organisms) {
        MouldRisk likely = new MouldRisk(climate, Level.LIKELY);
        RiskBand worst = RiskBand.NONE;
        String name = "";
        String reason = "";
        for (Organism organism : organisms) {
            Finding finding = likely.findingOf(organism);
            RiskBand band = finding.times().highest();
            if (band.compareTo(worst) > 0) {
                worst = band;
                name = organism.name();
                reason = finding.reason();
            }
        }
        return likely.assessment(worst, name, reason);
    }

    /**
     * All organisms, each with its interval, and the wet spells.
     *
     * @param climate inside of the bag since it was put on
     * @param organisms the mould table
     * @param dryBreak which dry break ends a spell in the list of spells; organisms use their own
     */
    public static MouldReport report(BagClimate climate, List<Organism> organisms, DryBreak dryBreak) {
        MouldRisk certain = new MouldRisk(climate, Level.CERTAIN);
        MouldRisk likely = new MouldRisk(climate, Level.LIKELY);
        MouldRisk possible = new MouldRisk(climate, Level.POSSIBLE);
        List<OrganismRisk> risks = new ArrayList<>();
        for (Organism organism : organisms) {
            Finding finding = likely.findingOf(organism);
            risks.add(new OrganismRisk(
                    organism,
                    finding.times().highest(),
                    finding.score(),
                    finding.times(),
                    finding.reason(),
                    certain.findingOf(organism).times().highest(),
                    possible.findingOf(organism).times().highest()));
        }
        return new MouldReport(assess(climate, organisms), risks, WetSpells.of(climate, WetRule.WATER, dryBreak));
    }

    private Finding findingOf(Organism organism) {
        MouldModel model = organism.model();
        if (model instanceof SpellModel spells) {
            return SpellPass.over(climate.grid(), organism, spells, pieces(spells.wetRule()));
        }
        return IndexPass.over(climate, organism, (GrowthIndex) model, level);
    }

    private WetPieces pieces(WetRule rule) {
        return piecesByRule.computeIfAbsent(rule, missing -> WetPieces.of(climate, missing, level));
    }

    private RiskAssessment assessment(RiskBand worst, String name, String reason) {
        double wetHours = pieces(WetRule.WATER).totalHours();
        double unknownHours = unknownHours();
        String counted = worst == RiskBand.NONE ? Say.format("wet %.1f h so far: " + LOOK, wetHours) : reason;
        String gaps = unknownHours == 0 ? "" : Say.format("; %.1f h unknown", unknownHours);
        return new RiskAssessment(worst, name, counted + gaps, wetHours, unknownHours);
    }

    private double unknownHours() {
        long unknown = 0;
        for (int i = 0; i < climate.grid().size(); i++) {
            if (!climate.temperature().middle().known(i)
                    || !climate.humidity().middle().known(i)) {
                unknown++;
            }
        }
        return unknown * climate.grid().step().toSeconds() / 3600.0;
    }
}
