package bagward.site.view;

import bagward.mould.MouldReport;
import bagward.mould.OrganismRisk;
import bagward.mould.RiskBand;
import bagward.mould.WetSpell;
import java.time.ZoneId;
import java.util.ArrayList;
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
     * @param possible wet hours if the upper end is true; of spells that then run together the newest tells them for all
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
        List<WetSpell> spells = report.spells();
        List<Spell> newestFirst = new ArrayList<>();
        for (int i = spells.size() - 1; i >= Math.max(0, spells.size() - MOST_SPELLS); i--) {
            newestFirst.add(spell(spells.get(i), possible(spells, i), zone));
        }
        return new MouldSheet(
                newestFirst,
                spells.size() - newestFirst.size(),
                report.risks().stream().map(MouldSheet::organism).toList());
    }

    private static String possible(List<WetSpell> spells, int place) {
        if (place + 1 < spells.size() && spells.get(place + 1).joinsBefore()) {
            return "with the newer";
        }
        int first = place;
        while (spells.get(first).joinsBefore()) {
            first--;
        }
        String older = first == place ? "" : ", together with " + (place - first) + " older";
        return hours(spells.get(place).possibleHours()) + older;
    }

    private static Spell spell(WetSpell spell, String possible, ZoneId zone) {
        return new Spell(
                Words.dayAndClock(spell.start(), zone),
                Words.dayAndClock(spell.end(), zone),
                hours(spell.hours()),
                Words.oneDecimal(spell.meanCelsius()) + " °C",
                hours(spell.certainHours()),
                possible,
                hours(spell.unknownHours()));
    }

    private static String hours(double hours) {
        return Words.oneDecimal(hours) + " h";
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
