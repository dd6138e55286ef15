package bagward.site.form;

import bagward.bag.Line;
import bagward.bag.PollenScore;
import bagward.fault.RefusedInputException;
import bagward.pollen.PollenEntry;
import bagward.station.HouseId;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** Reads pollen scores, and their withdrawal, from the forms of the pollen page. */
public final class PollenForm {
    private PollenForm() {}

    /**
     * The score that a form enters.
     *
     * @param now time of a score that was sent without one
     * @throws RefusedInputException with every fault of the fields
     */
    public static PollenEntry score(Fields fields, String by, Instant now) {
        Optional<Pick> pick = fields.optional("pick", Pick::of);
        Optional<HouseId> house = pick.map(Pick::house).or(() -> fields.needed("house", HouseId::new));
        Optional<Line> line = fields.optional("line", Line::new);
        Optional<PollenScore> score = pick.map(Pick::score).or(() -> fields.needed("score", PutOnEntry::score));
        Instant at = fields.sent("at").isEmpty()
                ? now.truncatedTo(ChronoUnit.MINUTES)
                : fields.time("at").orElse(now);
        fields.check();
        return new PollenEntry.Scored(house.orElseThrow(), line, at, by, score.orElseThrow());
    }

    /**
     * The withdrawal that a form enters.
     *
     * @throws RefusedInputException with every fault of the fields
     */
    public static PollenEntry withdrawal(Fields fields, String by) {
        Optional<HouseId> house = fields.needed("house", HouseId::new);
        Optional<Line> line = fields.optional("line", Line::new);
        Optional<Instant> at = fields.needed("at", PollenForm::instant);
        fields.check();
        return new PollenEntry.Withdrawn(house.orElseThrow(), line, at.orElseThrow(), by);
    }

    /** What one key says: the house and the score. */
    private record Pick(HouseId house, PollenScore score) {
        static Pick of(String text) {
            int slash = text.indexOf('/');
            if (slash < 0) {
                throw new IllegalArgumentException(text);
            }
            return new Pick(new HouseId(text.substring(0, slash)), PutOnEntry.score(text.substring(slash + 1)));
        }
    }

    private static Instant instant(String text) {
        try {
            return Instant.parse(text);
        } catch (DateTimeParseException noTime) {
            throw new IllegalArgumentException(noTime);
        }
    }
}
