package bagward.mould;

import bagward.bag.BagClimate;
import java.util.ArrayList;
import java.util.List;

/** Mould risk of a bag from its climate since it was put on, in short and in full. */
public final class MouldRisk {
    private MouldRisk() {}

    /**
     * The worst organism with its reason in numbers.
     *
     * @param climate inside of the bag since it was put on
     * @param organisms the mould table
     * @see MouldCourse#assessment
     */
    public static RiskAssessment assess(BagClimate climate, List<Organism> organisms) {
        return MouldCourse.of(climate, organisms).assessment();
    }

    /**
     * All organisms, each with its interval, and the wet spells.
     *
     * @param climate inside of the bag since it was put on
     * @param organisms the mould table
     * @param dryBreak which dry break ends a spell in the list of spells; organisms use their own
     */
    public static MouldReport report(BagClimate climate, List<Organism> organisms, DryBreak dryBreak) {
        LevelPass certain = new LevelPass(climate, Level.CERTAIN);
        LevelPass likely = new LevelPass(climate, Level.LIKELY);
        LevelPass possible = new LevelPass(climate, Level.POSSIBLE);
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
}
