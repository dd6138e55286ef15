package bagward.site;

import bagward.bag.Line;
import bagward.bag.MaterialId;
import bagward.bag.PollenScore;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.Spot;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Some forty bags of an invented season, put on during the days before an instant. */
final class SampleRegister {
    static final TagCode DAMP = new TagCode("L-104");
    static final TagCode MEASURED = new TagCode("L-109");
    static final TagCode OVERDUE = new TagCode("L-112");
    static final TagCode DUE = new TagCode("L-117");
    static final TagCode HOT = new TagCode("L-123");
    static final TagCode RISKY = new TagCode("L-129");
    static final TagCode UNKNOWN = new TagCode("L-133");
    static final TagCode BARE = new TagCode("L-099");
    static final TagCode HARVESTED = new TagCode("L-098");

    private static final List<String> LINES =
            List.of("Harebell 12", "Rook 3", "Sedge 41", "Thrift 7", "Vetch 19", "Yarrow 5");
    private static final List<String> PEOPLE = List.of("Ada", "Bo", "Mikkel");

    private SampleRegister() {}

    static List<RegisterChange> changes(Instant now) {
        List<RegisterChange> changes = new ArrayList<>();
        int number = 101;
        number = fill(changes, number, SampleStation.ALDER, SampleStation.LONG, 14, now);
        number = fill(changes, number, SampleStation.ALDER, SampleStation.DOOR, 7, now);
        number = fill(changes, number, SampleStation.BIRCH, SampleStation.NORTH, 9, now);
        fill(changes, number, SampleStation.BIRCH, SampleStation.SOUTH, 10, now);
        Instant lent = now.minus(Duration.ofHours(30));
        changes.add(new RegisterChange.Lend(MEASURED, lent, SampleStation.SPARE_IN_USE));
        addFinished(changes, BARE, 15, now);
        addFinished(changes, HARVESTED, 14, now);
        changes.add(new RegisterChange.Harvest(HARVESTED, now.minus(Duration.ofDays(1)), "brown pods"));
        return changes;
    }

    private static int fill(List<RegisterChange> changes, int first, HouseId house, BayId bay, int bags, Instant now) {
        int number = first;
        for (int i = 0; i < bags; i++) {
            TagCode tag = new TagCode("L-" + number);
            Duration on = Duration.ofHours(
                    tag.equals(OVERDUE) ? 9 * 24 + 3 : tag.equals(DUE) ? 7 * 24 : 34 + (number * 37) % 116);
            changes.add(putOn(tag, new Spot(house, bay, i + 1 + i / 5), number, now.minus(on)));
            number++;
        }
        return number;
    }

    private static void addFinished(List<RegisterChange> changes, TagCode tag, int spot, Instant now) {
        Instant putOn = now.minus(Duration.ofDays(30));
        changes.add(putOn(tag, new Spot(SampleStation.BIRCH, SampleStation.SOUTH, spot), 3, putOn));
        changes.add(new RegisterChange.TakeOff(tag, putOn.plus(Duration.ofDays(7))));
    }

    static RegisterChange.PutOn putOn(TagCode tag, Spot spot, int variant, Instant at) {
        boolean self = variant % 3 == 0;
        Line seed = new Line(LINES.get(variant % LINES.size()));
        Line pollen = self ? seed : new Line(LINES.get((variant + 2) % LINES.size()));
        Pollination pollination = new Pollination(
                at,
                PEOPLE.get(variant % PEOPLE.size()),
                self ? PollinationKind.SELF : PollinationKind.CROSS,
                6 + variant % 5,
                Optional.of(List.of(PollenScore.values()).get(variant % 4)));
        MaterialId material = SampleStation.MATERIALS.get(variant % 2).id();
        return new RegisterChange.PutOn(tag, at, spot, material, seed, pollen, pollination);
    }
}
