package bagward.mould;

import java.util.List;

/**
 * Everything that the mould models say about a bag.
 *
 * @param worst the worst organism in short
 * @param risks all organisms in the order of their table
 * @param spells wet spells, oldest first
 */
public record MouldReport(RiskAssessment worst, List<OrganismRisk> risks, List<WetSpell> spells) {
    /** Copies the lists. */
    public MouldReport {
        risks = List.copyOf(risks);
        spells = List.copyOf(spells);
    }
}
