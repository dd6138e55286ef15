package bagward.mould;

import bagward.climate.TimeGrid;

/**
 * Puts a spell model to the wet pieces of a bag. The score is taken at the end of every piece, so that an infection that
 * was complete before the air cooled stays one, and the worst of all is kept.
 */
final class SpellPass {
    private final Organism organism;
    private final SpellModel model;
    private final WetPieces pieces;
    private final BandClock clock;
    private double worst = Double.NEGATIVE_INFINITY;
    private double worstHours;
    private double worstCelsius = Double.NaN;

    private SpellPass(Organism organism, SpellModel model, WetPieces pieces) {
        this.organism = organism;
        this.model = model;
        this.pieces = pieces;
        this.clock = new BandClock(organism.bands());
    }

    static Finding over(TimeGrid grid, Organism organism, SpellModel model, WetPieces pieces) {
        SpellPass pass = new SpellPass(organism, model, pieces);
        pass.run();
        return new Finding(pass.worst, pass.clock.times(grid), pass.reason());
    }

    private void run() {
        int cells = 0;
        double degrees = 0;
        for (int piece = 0; piece < pieces.count(); piece++) {
            if (model.dryBreak().ends(pieces.drySecondsBefore(piece))) {
                cells = 0;
                degrees = 0;
            }
            cells += pieces.cells(piece);
            degrees += pieces.degreeSum(piece);
            take(pieces.hoursOf(cells), degrees / cells, pieces.endCell(piece));
        }
    }

    private void take(double hours, double celsius, int endCell) {
        double score = model.score(hours, celsius);
        clock.note(score, endCell);
        if (score > worst || (score == worst && hours > worstHours)) {
            worst = score;
            worstHours = hours;
            worstCelsius = celsius;
        }
    }

    private String reason() {
        return pieces.count() == 0 ? "" : model.reason(organism.name(), worstHours, worstCelsius);
    }
}
