package bagward.mould;

import bagward.bag.BagClimate;
import bagward.climate.RegularSeries;
import java.util.Optional;

/**
 * Puts a spell model to the wet pieces of a bag. The score is taken at the end of every piece, so that an infection that
 * was complete before the air cooled stays one, and the worst of all is kept. In a piece that reaches a band the cell is
 * looked for, so that the time of a band is exact and does not depend on how far the climate goes on.
 */
final class SpellPass {
    private final Organism organism;
    private final SpellModel model;
    private final WetPieces pieces;
    private final RegularSeries temperature;
    private final BandClock clock;
    private double worst = Double.NEGATIVE_INFINITY;
    private double worstHours;
    private double worstCelsius = Double.NaN;
    private Optional<String> atHigh = Optional.empty();

    private SpellPass(Organism organism, SpellModel model, WetPieces pieces, RegularSeries temperature) {
        this.organism = organism;
        this.model = model;
        this.pieces = pieces;
        this.temperature = temperature;
        this.clock = new BandClock(organism.bands());
    }

    static Finding over(BagClimate climate, Organism organism, SpellModel model, WetPieces pieces) {
        SpellPass pass =
                new SpellPass(organism, model, pieces, climate.temperature().middle());
        pass.run();
        return new Finding(pass.worst, pass.clock.times(climate.grid()), pass.reason(), pass.atHigh.orElse(""));
    }

    private void run() {
        int cells = 0;
        double degrees = 0;
        for (int piece = 0; piece < pieces.count(); piece++) {
            if (model.dryBreak().ends(pieces.drySecondsBefore(piece))) {
                cells = 0;
                degrees = 0;
            }
            take(piece, cells, degrees);
            cells += pieces.cells(piece);
            degrees += pieces.degreeSum(piece);
        }
    }

    private void take(int piece, int cellsBefore, double degreesBefore) {
        int cells = cellsBefore + pieces.cells(piece);
        double hours = pieces.hoursOf(cells);
        double celsius = (degreesBefore + pieces.degreeSum(piece)) / cells;
        double score = model.score(hours, celsius);
        if (clock.reaches(score)) {
            lookFor(piece, cellsBefore, degreesBefore);
        }
        if (score > worst || (score == worst && hours > worstHours)) {
            worst = score;
            worstHours = hours;
            worstCelsius = celsius;
        }
    }

    private void lookFor(int piece, int cellsBefore, double degreesBefore) {
        int cells = cellsBefore;
        double degrees = degreesBefore;
        for (int cell = pieces.firstCell(piece); cell < pieces.endCell(piece); cell++) {
            cells++;
            degrees += temperature.valueOrNaN(cell);
            double hours = pieces.hoursOf(cells);
            clock.note(model.score(hours, degrees / cells), cell + 1);
            if (clock.high() && atHigh.isEmpty()) {
                atHigh = Optional.of(model.reason(organism.name(), hours, degrees / cells, organism.bands()));
            }
        }
    }

    private String reason() {
        return pieces.count() == 0 ? "" : model.reason(organism.name(), worstHours, worstCelsius, organism.bands());
    }
}
