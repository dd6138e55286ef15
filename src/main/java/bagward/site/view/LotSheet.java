package bagward.site.view;

import bagward.bag.Head;
import bagward.bag.Packing;
import bagward.board.Board;
import bagward.mould.LotCourse;
import bagward.mould.LotStay;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/**
 * How pods and their seed lot fared since the last bag came off, line by line.
 *
 * @param title what it is about: ripening pods, or a seed lot
 * @param together lines about all of the time
 * @param stays one sheet for each place where the lot hung, oldest first
 * @param packed one line for each time it was packed
 * @param hint what to enter next; empty if nothing is missing
 */
public record LotSheet(String title, List<Fact> together, List<Stay> stays, List<Fact> packed, String hint) {
    /** Copies the lists. */
    public LotSheet {
        together = List.copyOf(together);
        stays = List.copyOf(stays);
        packed = List.copyOf(packed);
    }

    /**
     * Hanging in one place.
     *
     * @param title where
     * @param facts lines about it
     */
    public record Stay(String title, List<Fact> facts) {}

    /** The sheet of a course. */
    public static LotSheet of(Head head, LotCourse course, Board board) {
        boolean harvested = head.ending().isPresent();
        boolean hung = !head.drying().isEmpty();
        return new LotSheet(
                harvested ? "Seed lot" : "Ripening pods",
                together(course, board.zone()),
                course.stays().stream().map(stay -> stay(stay, board)).toList(),
                head.drying().packings().stream()
                        .map(p -> packed(p, board.zone()))
                        .toList(),
                harvested && !hung ? "Enter where it hangs to dry, and the air there is followed." : "");
    }

    private static List<Fact> together(LotCourse course, ZoneId zone) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(
                "Ripening",
                "without a bag from " + Words.dayAndClock(course.ripening().from(), zone) + " to "
                        + Words.dayAndClock(course.ripening().to(), zone) + ", "
                        + Words.span(course.ripening().length())));
        facts.add(new Fact(
                "Mould index of the pods",
                LotWords.index(course.state()) + " (first growth at 1, visible at 3): "
                        + LotWords.band(course.band())));
        String unknown =
                LotWords.unknown(course.unknownHours()).map(text -> "; " + text).orElse("");
        facts.add(new Fact(
                "Damp enough for it to grow",
                "for " + Words.oneDecimal(course.growingHours()) + " h in all" + unknown));
        return facts;
    }

    private static Stay stay(LotStay stay, Board board) {
        List<Fact> facts = new ArrayList<>();
        Instant from = stay.stay().from();
        String end = stay.stay()
                .to()
                .map(to -> " to " + Words.dayAndClock(to, board.zone()) + ", " + Words.span(Duration.between(from, to)))
                .orElseGet(() -> " on, " + Words.span(Duration.between(from, board.at())));
        facts.add(new Fact("Hung", "from " + Words.dayAndClock(from, board.zone()) + end));
        if (stay.seed().isPresent()) {
            facts.addAll(SeedFacts.of(stay, stay.seed().get(), board.zone()));
        } else {
            facts.add(new Fact("Air", "not known there; the index was left as it was"));
        }
        return new Stay("Hung to dry: " + LotWords.place(stay.stay(), board), facts);
    }

    private static Fact packed(Packing packing, ZoneId zone) {
        String moisture = packing.moisture()
                .map(m -> "; seed of " + Words.oneDecimal(m.moisture().percent())
                        + " % moisture (of the moist seed), measured: " + m.method())
                .orElse("; no moisture was measured");
        String note = packing.note().isBlank() ? "" : ": " + packing.note();
        return new Fact("Packed", Words.dayAndClock(packing.at(), zone) + note + moisture);
    }
}
