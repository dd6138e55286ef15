package bagward.pollen;

import bagward.bag.Head;
import bagward.bag.Line;
import bagward.bag.Register;
import bagward.station.HouseId;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All scores that count: those of the journal and those taken with a pollination. */
public final class Scores {
    private static final Comparator<TakenScore> BY_TIME = Comparator.comparing(TakenScore::at)
            .thenComparing(TakenScore::house)
            .thenComparing(score -> score.line().map(Line::name).orElse(""))
            .thenComparing(TakenScore::score)
            .thenComparing(TakenScore::by);

    private Scores() {}

    /**
     * The scores of a journal and a register, oldest first.
     *
     * @param journal in the order of entry
     * @param register a pollination counts with its pollen parent, in the house of its head
     */
    public static List<TakenScore> of(List<PollenEntry> journal, Register register) {
        Map<Key, TakenScore> entered = new HashMap<>();
        for (PollenEntry entry : journal) {
            Key key = new Key(entry.house(), entry.line(), entry.at());
            if (entry instanceof PollenEntry.Scored scored) {
                entered.put(key, taken(scored));
            } else {
                entered.remove(key);
            }
        }
        List<TakenScore> scores = new ArrayList<>(entered.values());
        register.heads().forEach(head -> ofHead(head).ifPresent(scores::add));
        scores.sort(BY_TIME);
        return List.copyOf(scores);
    }

    private static TakenScore taken(PollenEntry.Scored entry) {
        return new TakenScore(entry.house(), entry.line(), entry.at(), entry.by(), entry.score(), false);
    }

    private static Optional<TakenScore> ofHead(Head head) {
        return head.pollination()
                .score()
                .map(score -> new TakenScore(
                        head.spot().house(),
                        Optional.of(head.pollenParent()),
                        head.pollination().at(),
                        head.pollination().by(),
                        score,
                        true));
    }

    private record Key(HouseId house, Optional<Line> line, Instant at) {}
}
