package bagward.mould;

import bagward.bag.BagClimate;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Carries the spell that is open at the hour of an outlook on through the outlook, in quarters of an hour. */
final class SpellAhead {
    private static final int QUARTERS = 4;

    private final Organism organism;
    private final SpellModel model;
    private final BagClimate outlook;
    private boolean humid;
    private double hours;
    private double degreeHours;
    private double drySeconds;

    private SpellAhead(Organism organism, SpellModel model, BagClimate outlook) {
        this.organism = organism;
        this.model = model;
        this.outlook = outlook;
    }

    /** The open spell of an organism, found at the beginning of an outlook. */
    static SpellAhead of(Organism organism, BagClimate climate, LevelPass pass, BagClimate outlook) {
        SpellModel model = (SpellModel) organism.model();
        SpellAhead ahead = new SpellAhead(organism, model, outlook);
        TimeGrid grid = climate.grid();
        int cell = Math.max(0, Math.min(grid.size(), grid.indexOf(outlook.grid().start())));
        ahead.open(climate, pass.pieces(model.wetRule()), cell);
        return ahead;
    }

    private void open(BagClimate climate, WetPieces pieces, int cell) {
        int piece = pieces.lastBefore(cell);
        humid = pieces.wetBefore(cell);
        int dry = 0;
        for (int i = piece < 0 ? cell : pieces.endCell(piece); i < cell; i++) {
            if (climate.temperature().middle().known(i)
                    && climate.humidity().middle().known(i)) {
                dry++;
            }
        }
        drySeconds = dry * (double) climate.grid().step().toSeconds();
        while (piece >= 0) {
            int cells = Math.min(cell, pieces.endCell(piece)) - pieces.firstCell(piece);
            hours += pieces.hoursOf(cells);
            degreeHours += pieces.hoursOf(cells) * pieces.degreeSum(piece) / pieces.cells(piece);
            if (model.dryBreak().ends(pieces.drySecondsBefore(piece))) {
                return;
            }
            piece--;
        }
    }

    /** When a band is reached first within the outlook. Good for one question. */
    Optional<Reach> first(RiskBand band) {
        TimeGrid grid = outlook.grid();
        double limit = band == RiskBand.HIGH
                ? organism.bands().high()
                : organism.bands().moderate();
        Duration quarter = grid.step().dividedBy(QUARTERS);
        for (int i = 0; i < grid.size(); i++) {
            if (!wet(i)) {
                continue;
            }
            for (int part = 1; part <= QUARTERS; part++) {
                hours += quarter.toSeconds() / 3600.0;
                degreeHours += quarter.toSeconds()
                        / 3600.0
                        * outlook.temperature().middle().valueOrNaN(i);
                if (model.score(hours, degreeHours / hours) >= limit) {
                    Instant at = grid.at(i).plus(quarter.multipliedBy(part));
                    String reason = model.reason(organism.name(), hours, degreeHours / hours, organism.bands());
                    return Optional.of(new Reach(band, at, organism.name(), reason));
                }
            }
        }
        return Optional.empty();
    }

    /** Whether a cell of the outlook is wet; keeps account of dry time, and closes the spell when it was dry for long. */
    private boolean wet(int i) {
        double celsius = outlook.temperature().middle().valueOrNaN(i);
        double percent = outlook.humidity().middle().valueOrNaN(i);
        if (Double.isNaN(celsius) || Double.isNaN(percent)) {
            return false;
        }
        WetRule rule = model.wetRule();
        humid = percent >= (humid ? rule.offPercent() : rule.onPercent());
        boolean wet = (humid || (rule.filmCounts() && outlook.filmWetAt(i))) && rule.temperatureCounts(celsius);
        if (!wet) {
            drySeconds += outlook.grid().step().toSeconds();
            return false;
        }
        if (model.dryBreak().ends(Math.round(drySeconds))) {
            hours = 0;
            degreeHours = 0;
        }
        drySeconds = 0;
        return true;
    }
}
