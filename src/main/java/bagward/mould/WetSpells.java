package bagward.mould;

import bagward.bag.BagClimate;
import java.util.ArrayList;
import java.util.List;

/** Wet spells of a bag, for people and reports; models work on the pieces beneath. */
public final class WetSpells {
    /**
     * The break that ends a spell in lists for people: 4 h, after which Broome and others (1995) stop their count. Organisms
     * use their own.
     */
    public static final DryBreak USUAL_BREAK = DryBreak.endingFrom(4);

    private WetSpells() {}

    /**
     * All wet spells of a bag by the best humidity value, oldest first.
     *
     * @param climate inside of the bag
     * @param rule what counts as wet
     * @param dryBreak which dry break ends a spell
     */
    public static List<WetSpell> of(BagClimate climate, WetRule rule, DryBreak dryBreak) {
        WetPieces likely = WetPieces.of(climate, rule, Level.LIKELY);
        WetPieces certain = WetPieces.of(climate, rule, Level.CERTAIN);
        List<Run> possible = runs(WetPieces.of(climate, rule, Level.POSSIBLE), dryBreak);
        List<WetSpell> spells = new ArrayList<>();
        Run widestBefore = null;
        for (Run run : runs(likely, dryBreak)) {
            Run widest = around(run, possible);
            spells.add(new WetSpell(
                    climate.grid().at(run.first),
                    climate.grid().at(run.end),
                    likely.hoursOf(run.cells),
                    run.degrees / run.cells,
                    likely.hoursOf(certain.cellsWithin(run.first, run.end)),
                    likely.hoursOf(widest.cells),
                    widest.equals(widestBefore),
                    likely.hoursOf(run.unknown)));
            widestBefore = widest;
        }
        return spells;
    }

    private static Run around(Run run, List<Run> possible) {
        return possible.stream()
                .filter(p -> p.first <= run.first && p.end >= run.end)
                .findFirst()
                .orElse(run);
    }

    private static List<Run> runs(WetPieces pieces, DryBreak dryBreak) {
        List<Run> runs = new ArrayList<>();
        for (int piece = 0; piece < pieces.count(); piece++) {
            Run run = new Run(
                    pieces.firstCell(piece),
                    pieces.endCell(piece),
                    pieces.cells(piece),
                    pieces.unknownCellsBefore(piece),
                    pieces.degreeSum(piece));
            boolean apart = runs.isEmpty() || dryBreak.ends(pieces.drySecondsBefore(piece));
            if (apart) {
                runs.add(run.beginning());
            } else {
                runs.add(runs.remove(runs.size() - 1).join(run));
            }
        }
        return runs;
    }

    private record Run(int first, int end, long cells, long unknown, double degrees) {
        Run beginning() {
            return new Run(first, end, cells, 0, degrees);
        }

        Run join(Run later) {
            return new Run(first, later.end, cells + later.cells, unknown + later.unknown, degrees + later.degrees);
        }
    }
}
