package bagward.site.view;

import bagward.bag.Bagging;
import bagward.bag.FlowerSigns;
import bagward.bag.Head;
import bagward.bag.HeadState;
import bagward.bag.PollenScore;
import bagward.bag.PollinationKind;
import bagward.board.BagView;
import bagward.board.Board;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is known of a head, line by line. */
public final class HeadFacts {
    private HeadFacts() {}

    /** State of a head in words. */
    public static String state(HeadState state) {
        return switch (state) {
            case POLLINATED -> "pollinated, no bag yet";
            case BAGGED -> "bag is on";
            case BARE -> "bag is off, pods ripen";
            case HARVESTED -> "harvested";
            case LOST -> "given up";
        };
    }

    /** Parents: "Aster 7 × Bellis 2", "Aster 7, self". */
    public static String parents(Head head) {
        return switch (head.pollination().kind()) {
            case SELF -> head.seedParent() + ", self";
            case SIB -> head.seedParent() + " × " + head.pollenParent() + ", sib";
            case CROSS -> head.seedParent() + " × " + head.pollenParent();
        };
    }

    /** Pollen score in words. */
    public static String score(PollenScore score) {
        return switch (score) {
            case NONE -> "0, none";
            case TRACE -> "1, a trace";
            case CLEAR -> "2, clearly there";
            case PLENTIFUL -> "3, plenty";
        };
    }

    /** Kind of pollination in words. */
    public static String kind(PollinationKind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    /** The lines about a bag that is on. */
    public static List<Fact> ofBag(Board board, BagView bag) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Air in the bag", Figures.temperatureInFull(bag.temperature())));
        facts.add(new Fact("Humidity in the bag", Figures.humidityInFull(bag.humidity())));
        facts.add(new Fact("Water on the film", bag.filmWet() ? "likely now" : "not likely now"));
        if (!bag.dampFor().isZero()) {
            facts.add(new Fact("Damp without a break", Words.span(bag.dampFor())));
        }
        facts.add(new Fact("Mould", RiskWords.inFull(bag.risk())));
        bag.care()
                .ifPresent(care -> facts.addAll(
                        CareFacts.of(care, bag.head().flowers(), bag.risk().band(), board.at(), board.zone())));
        facts.add(new Fact(
                "Comes off",
                Words.day(bag.due(), board.zone()) + ", " + Words.dueIn(bag.due(), board.at(), board.zone())));
        facts.add(new Fact(
                "Bag",
                bag.material() + ", on since " + Words.dayAndClock(bag.putOn(), board.zone()) + ", "
                        + Words.span(Duration.between(bag.putOn(), board.at()))));
        facts.add(new Fact(
                "Sensor in the bag", bag.lentSensor().map(Object::toString).orElse("none, estimated")));
        return facts;
    }

    /**
     * The lines about a head, whatever its state.
     *
     * @param crop name of its crop; empty if none was named for its line
     */
    public static List<Fact> ofHead(Head head, Optional<String> crop, ZoneId zone) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Parents", parents(head)));
        crop.ifPresent(name -> facts.add(new Fact("Crop", name)));
        String score =
                head.pollination().score().map(s -> ", pollen " + score(s)).orElse(", pollen not scored");
        facts.add(new Fact(
                "Pollinated",
                Words.dayAndClock(head.pollination().at(), zone) + " by "
                        + head.pollination().by() + ", "
                        + Words.count(head.pollination().budsOpened(), "bud", "buds") + " opened" + score));
        flowers(head.flowers(), zone).ifPresent(seen -> facts.add(new Fact("Flowers", seen)));
        facts.add(new Fact("Bags so far", baggings(head, zone)));
        head.ending()
                .ifPresent(e -> facts.add(new Fact(
                        Words.sentence(state(e.state())),
                        Words.dayAndClock(e.at(), zone) + (e.note().isBlank() ? "" : ": " + e.note()))));
        return facts;
    }

    private static Optional<String> flowers(FlowerSigns signs, ZoneId zone) {
        List<String> seen = new ArrayList<>();
        signs.lastFlowerOpened().ifPresent(at -> seen.add("last one opened " + Words.dayAndClock(at, zone)));
        signs.petalsDropped().ifPresent(at -> seen.add("petals had dropped " + Words.dayAndClock(at, zone)));
        return seen.isEmpty() ? Optional.empty() : Optional.of(Words.sentence(String.join("; ", seen)));
    }

    private static String baggings(Head head, ZoneId zone) {
        List<String> texts = new ArrayList<>();
        for (Bagging b : head.baggings()) {
            String end = b.takenOff().map(t -> Words.dayAndClock(t, zone)).orElse("now");
            texts.add(b.material() + " " + Words.dayAndClock(b.putOn(), zone) + " to " + end);
        }
        return String.join("; ", texts);
    }
}
