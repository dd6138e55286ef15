package bagward.mould;

import bagward.bag.BagClimate;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Notes on how the climate in the bag met the pollination. Both facts are published for Brassica oleracea without hours
 * or limits; the limits here are our choice.
 *
 * <ul>
 *   <li>A film of water on the stigma of an open flower keeps out all pollen; fertilisation takes about a day (B. rapa
 *       ssp. pekinensis, 20 to 24 h).
 *   <li>High humidity alone gave as many selfed seeds as bud selfing in one self-incompatible line.
 * </ul>
 */
public final class PollinationNotes {
    private static final Duration FERTILISATION = Duration.ofHours(24);
    private static final WetRule HUMID = WetRule.humidFrom(90, -90, 100);
    private static final double HUMID_HOURS_WORTH_A_NOTE = 24;

    private PollinationNotes() {}

    /**
     * All notes on a pollination.
     *
     * @param climate inside of the bag since it was put on
     * @param pollination what was done, and when
     */
    public static List<PollinationNote> of(BagClimate climate, Pollination pollination) {
        List<PollinationNote> notes = new ArrayList<>();
        Instant at = pollination.at();
        Span firstDay = Span.of(climate, at, at.plus(FERTILISATION), WetRule.WATER);
        if (firstDay.hours > 0) {
            notes.add(new PollinationNote(
                    PollinationNote.Kind.SEED_SET,
                    firstDay.hours,
                    firstDay.unknownHours,
                    Say.format(
                            "wet for %.1f h in the first day after pollination: fewer seeds may set", firstDay.hours)));
        }
        if (pollination.kind() != PollinationKind.CROSS) {
            return notes;
        }
        Span since = Span.of(climate, at, climate.grid().end(), HUMID);
        if (since.hours >= HUMID_HOURS_WORTH_A_NOTE) {
            notes.add(new PollinationNote(
                    PollinationNote.Kind.PURITY,
                    since.hours,
                    since.unknownHours,
                    Say.format(
                            "at least 90 %%RH for %.0f h: self-incompatibility may have been weakened, check the cross for selfs",
                            since.hours)));
        }
        return notes;
    }

    private record Span(double hours, double unknownHours) {
        static Span of(BagClimate climate, Instant from, Instant to, WetRule rule) {
            TimeGrid grid = climate.grid();
            int first = Math.max(0, grid.indexOf(from));
            int end = Math.max(0, Math.min(grid.size(), grid.indexOf(to)));
            WetPieces pieces = WetPieces.of(climate, rule, Level.LIKELY, end);
            int unknown = 0;
            for (int i = first; i < end; i++) {
                if (!climate.temperature().middle().known(i)
                        || !climate.humidity().middle().known(i)) {
                    unknown++;
                }
            }
            return new Span(pieces.hoursOf(pieces.cellsWithin(first, end)), pieces.hoursOf(unknown));
        }
    }
}
