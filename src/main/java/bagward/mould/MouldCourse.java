package bagward.mould;

import bagward.bag.BagClimate;
import bagward.climate.RegularSeries;
import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How the mould risk of a head went under its bags, by the best humidity value: how it stands at the end, when each band
 * was reached, and what an outlook would add. Risk is that of the worst organism and is never taken back: drying a bag
 * does not undo an infection, and neither does swapping it.
 */
public final class MouldCourse {
    /** What a bag without any finding says; a look is the only proof. */
    private static final String LOOK = "low estimated risk, look";

    private final BagClimate climate;
    private final LevelPass likely;
    private final Map<Organism, Finding> findings = new LinkedHashMap<>();

    private MouldCourse(BagClimate climate, List<Organism> organisms) {
        this.climate = climate;
        this.likely = new LevelPass(climate, Level.LIKELY);
        organisms.forEach(organism -> findings.put(organism, likely.findingOf(organism)));
    }

    /**
     * The course of a climate.
     *
     * @param climate inside of the bags since the first was put on
     * @param organisms the mould table
     */
    public static MouldCourse of(BagClimate climate, List<Organism> organisms) {
        return new MouldCourse(climate, organisms);
    }

    /** The worst organism with its reason in numbers. On equal bands the one that stands first in the table. */
    public RiskAssessment assessment() {
        RiskBand worst = RiskBand.NONE;
        String name = "";
        String reason = "";
        for (Map.Entry<Organism, Finding> entry : findings.entrySet()) {
            RiskBand band = entry.getValue().times().highest();
            if (band.compareTo(worst) > 0) {
                worst = band;
                name = entry.getKey().name();
                reason = entry.getValue().reason();
            }
        }
        double wetHours = likely.pieces(WetRule.WATER).totalHours();
        double unknownHours = unknownHours();
        String counted = worst == RiskBand.NONE ? Say.format("wet %.1f h so far: " + LOOK, wetHours) : reason;
        String gaps = unknownHours == 0 ? "" : Say.format("; %.1f h unknown", unknownHours);
        return new RiskAssessment(worst, name, counted + gaps, wetHours, unknownHours);
    }

    /** When the risk became high, and by which organism first; empty if it did not. */
    public Optional<Reach> high() {
        return findings.entrySet().stream()
                .flatMap(entry -> high(entry.getKey(), entry.getValue()).stream())
                .min(Comparator.comparing(Reach::at));
    }

    /** The highest band reached up to an instant. */
    public RiskBand bandAt(Instant at) {
        return findings.values().stream()
                .map(finding -> finding.times().highestAt(at))
                .max(Comparator.naturalOrder())
                .orElse(RiskBand.NONE);
    }

    /**
     * What an outlook would bring. Only spells are carried on: an index moves too slowly for one night to matter.
     *
     * @param outlook climate in the bag from the hour on for which it was made; what is known of later is not looked at
     */
    public Ahead ahead(BagClimate outlook) {
        Instant from = outlook.grid().start();
        RiskBand before = bandAt(from);
        return new Ahead(
                from,
                outlook.grid().end(),
                earliest(outlook, before, RiskBand.MODERATE),
                earliest(outlook, before, RiskBand.HIGH));
    }

    private Optional<Reach> earliest(BagClimate outlook, RiskBand before, RiskBand band) {
        if (before.compareTo(band) >= 0) {
            return Optional.empty();
        }
        return findings.keySet().stream()
                .filter(organism -> organism.model() instanceof SpellModel)
                .flatMap(organism -> SpellAhead.of(organism, climate, likely, outlook).first(band).stream())
                .min(Comparator.comparing(Reach::at));
    }

    private static Optional<Reach> high(Organism organism, Finding finding) {
        return finding.times().high().map(at -> new Reach(RiskBand.HIGH, at, organism.name(), finding.atHigh()));
    }

    private double unknownHours() {
        RegularSeries temperature = climate.temperature().middle();
        RegularSeries humidity = climate.humidity().middle();
        long unknown = 0;
        for (int i = 0; i < climate.grid().size(); i++) {
            if (!temperature.known(i) || !humidity.known(i)) {
                unknown++;
            }
        }
        return unknown * climate.grid().step().toSeconds() / 3600.0;
    }
}
