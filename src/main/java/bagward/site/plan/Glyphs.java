package bagward.site.plan;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmPhase;
import bagward.bag.Origin;
import bagward.board.AlarmView;
import bagward.board.BagView;
import bagward.board.Board;
import bagward.board.Measure;
import bagward.mould.RiskBand;
import bagward.site.view.Figures;
import bagward.site.view.Mark;
import bagward.site.view.Places;
import bagward.site.view.Standing;
import bagward.site.view.Words;
import java.util.Optional;

/** Draws the bags of a board. */
public final class Glyphs {
    private Glyphs() {}

    /** How a bag is drawn. */
    public static Glyph of(Board board, BagView bag) {
        Optional<AlarmView> alarm = worstAlarm(board, bag);
        Standing standing = alarm.map(Standing::of).orElse(Standing.QUIET);
        Mark mark = mark(bag, alarm);
        String value = standing == Standing.QUIET ? "" : value(board, bag, mark);
        boolean fresh =
                alarm.map(a -> a.alarm().phase() != AlarmPhase.ACKNOWLEDGED).orElse(false);
        String tag = bag.head().tag().value();
        return new Glyph(tag, standing, mark, measured(bag), fresh, value, words(board, bag, standing, mark, alarm));
    }

    private static Optional<AlarmView> worstAlarm(Board board, BagView bag) {
        return board.alarms().stream()
                .filter(alarm -> alarm.concerns(bag.head().tag()))
                .findFirst();
    }

    private static Mark mark(BagView bag, Optional<AlarmView> alarm) {
        if (alarm.isPresent()) {
            return Mark.of(alarm.get().rule().kind());
        }
        if (unknown(bag)) {
            return Mark.UNKNOWN;
        }
        return bag.risk().band() == RiskBand.HIGH ? Mark.SPORES : Mark.NONE;
    }

    /** Whether neither temperature nor humidity of a bag is known. */
    public static boolean unknown(BagView bag) {
        return Figures.known(bag.temperature()).isEmpty()
                && Figures.known(bag.humidity()).isEmpty();
    }

    /** Whether the newest values of a bag come from a sensor that hangs in it. */
    public static boolean measured(BagView bag) {
        return measured(bag.humidity()) || measured(bag.temperature());
    }

    private static boolean measured(Optional<Measure> measure) {
        return measure.map(m -> m.origin() == Origin.MEASURED).orElse(false);
    }

    private static String value(Board board, BagView bag, Mark mark) {
        return switch (mark) {
            case DROP, SPORES ->
                Figures.known(bag.humidity())
                        .map(m -> Words.whole(m.value()) + " %")
                        .orElse("");
            case HEAT ->
                Figures.known(bag.temperature())
                        .map(m -> Words.whole(m.value()) + " °C")
                        .orElse("");
            case LIFT ->
                Words.dueIn(bag.due(), board.at(), board.zone())
                        .replace(" late", "")
                        .replace("days", "d")
                        .replace("1 day", "1 d");
            default -> "";
        };
    }

    private static String words(Board board, BagView bag, Standing standing, Mark mark, Optional<AlarmView> alarm) {
        String place = bag.head().tag() + ", " + Places.spot(board, bag.head().spot());
        String state = mark == Mark.NONE ? "well" : mark.words();
        String urgency = standing == Standing.QUIET ? "" : ", " + standing.words();
        String says = alarm.map(AlarmView::alarm)
                .map(Alarm::message)
                .map(m -> ": " + m)
                .orElse("");
        return place + ": " + state + urgency + says + (measured(bag) ? " (measured)" : " (estimated)");
    }
}
