package bagward.site.view;

import bagward.mould.MouldReport;
import bagward.mould.OrganismRisk;
import bagward.mould.RiskBand;
import bagward.mould.WetSpell;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Wet spells of a head and what every organism makes of them, in words.
 *
 * @param spells newest first
 * @param left how many older spells are not listed
 * @param organisms in the order of their table
 */
public record MouldSheet(List<Spell> spells, int left, List<Organism> organisms) {
    private static final int MOST_SPELLS = 12;

    /** Copies the lists. */
    public MouldSheet {
        spells = List.copyOf(spells);
        organisms = List.copyOf(organisms);
    }

    /**
     * One wet spell.
     *
     * @param from beginning of its first wet time
     * @param to end of its last wet time
     * @param wet wet hours by the best value
     * @param celsius mean temperature of the wet time
     * @param certain wet hours even if the lower end of the interval is true
     * @param possible wet hours if the upper end is true
     * @param unknown hours without data in it
     */
    public record Spell(
            String from, String to, String wet, String celsius, String certain, String possible, String unknown) {}

    /**
     * One organism.
     *
     * @param name of it
     * @param risk its band by the best value
     * @param between its bands at the ends of the interval
     * @param reason in numbers
     */
    public record Organism(String name, String risk, String between, String reason) {}

    /** The sheet of a report. */
    public static MouldSheet of(MouldReport report, ZoneId zone) {
        List<WetSpell> newestFirst = new ArrayList<>(report.spells());
        Collections.reverse(newestFirst);
        return new MouldSheet(
                newestFirst.stream()
                        .limit(MOST_SPELLS)
                        .map(spell -> spell(spell, zone))
                        .toList(),
                Math.max(0, newestFirst.size() - MOST_SPELLS),
                report.risks().stream().map(MouldSheet::organism).toList());
    }

    private static Spell spell(WetSpell spell, ZoneId zone) {
        return new Spell(
                Words.dayAndClock(spell.start(), zone),
                Words.dayAndClock(spell.end(), zone),
                Words.oneDecimal(spell.hours()) + " h",
                Words.oneDecimal(spell.meanCelsius()) + " °C",
                Words.oneDecimal(spell.certainHours()) + " h",
                Words.oneDecimal(spell.possibleHours()) + " h",
                Words.oneDecimal(spell.unknownHours()) + " h");
    }

    private static Organism organism(OrganismRisk risk) {
        String between = risk.certain() == risk.possible() ? "" : band(risk.certain()) + " to " + band(risk.possible());
        return new Organism(
                Words.sentence(risk.organism().name()),
                band(risk.band()),
                between,
                risk.reason().isEmpty() ? "nothing counted so far" : risk.reason());
    }

    /** NONE is told as low: nobody can promise that there is no mould. */
    private static String band(RiskBand band) {
        return switch (band) {
            case NONE, LOW -> "low";
            case MODERATE -> "moderate";
            case HIGH -> "high";
        };
    }
}
