package bagward.mould;

import bagward.bag.BagClimate;
import java.util.HashMap;
import java.util.Map;

/** The mould table put to one bag at one end of its humidity interval; wet pieces are found once for each wet rule. */
final class LevelPass {
    private final BagClimate climate;
    private final Level level;
    private final Map<WetRule, WetPieces> piecesByRule = new HashMap<>();

    LevelPass(BagClimate climate, Level level) {
        this.climate = climate;
        this.level = level;
    }

    Finding findingOf(Organism organism) {
        MouldModel model = organism.model();
        if (model instanceof SpellModel spells) {
            return SpellPass.over(climate, organism, spells, pieces(spells.wetRule()));
        }
        return IndexPass.over(climate, organism, (GrowthIndex) model, level);
    }

    WetPieces pieces(WetRule rule) {
        return piecesByRule.computeIfAbsent(rule, missing -> WetPieces.of(climate, missing, level));
    }
}
