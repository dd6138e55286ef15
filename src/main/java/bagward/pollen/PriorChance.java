package bagward.pollen;

import bagward.bag.PollenScore;

/**
 * What is assumed before enough days were scored: clear pollen is as likely as not after 2.5 mol m⁻² from sunrise on in
 * the house, and each further mol m⁻² adds 0.9 to its log odds; both give or take 2 in log odds. No source is known
 * that gives such numbers for Brassica under glass: sun means pollen, cloud means little is common practice, and the
 * numbers are a guess of ours that only the scores of the house can better.
 */
public final class PriorChance implements ChanceModel {
    /** The one prior. */
    public static final PriorChance USUAL = new PriorChance();

    /** The score from which on there is enough pollen to work with. */
    static final int ENOUGH = PollenScore.CLEAR.number();

    private static final double EVEN_MOLES = 2.5;
    private static final double LOG_ODDS_PER_MOLE = 0.9;
    private static final double UNSURE = 2;
    private static final double LEVEL = 0.95;

    private PriorChance() {}

    @Override
    public Chance at(double moles) {
        double logOdds = LOG_ODDS_PER_MOLE * (moles - EVEN_MOLES);
        return Chance.ofLogOdds(logOdds, new Interval(logOdds - UNSURE, logOdds + UNSURE, LEVEL), Chance.Basis.PRIOR);
    }
}
