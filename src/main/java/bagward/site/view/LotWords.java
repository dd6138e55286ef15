package bagward.site.view;

import bagward.bag.Drying;
import bagward.bag.DryingStay;
import bagward.bag.Head;
import bagward.bag.HeadState;
import bagward.board.Board;
import bagward.mould.IndexState;
import bagward.mould.RiskBand;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/** Seed lots and the mould index in words. */
public final class LotWords {
    private LotWords() {}

    /** State of a head with that of its seed lot: "harvested, hangs to dry". */
    public static String state(Head head, Instant at) {
        HeadState state = head.stateAt(at);
        Drying drying = head.drying();
        if (state != HeadState.HARVESTED || drying.isEmpty()) {
            return HeadFacts.state(state);
        }
        return HeadFacts.state(state) + (drying.at(at).isPresent() ? ", hangs to dry" : ", packed");
    }

    /** Where a lot hangs: name of the place, or "elsewhere, climate not known". */
    public static String place(DryingStay stay, Board board) {
        return stay.house().map(house -> Places.house(board, house)).orElse("elsewhere, climate not known");
    }

    /** An index with the highest that it reached: "0.12 of 6, highest 0.15". */
    static String index(IndexState state) {
        return twoDecimals(state.index()) + " of 6, highest " + twoDecimals(state.highest());
    }

    /** A band that never promises that there is no mould. */
    static String band(RiskBand band) {
        return switch (band) {
            case NONE, LOW -> "low estimated risk, look";
            case MODERATE -> "moderate estimated risk, first growth is likely";
            case HIGH -> "high estimated risk, growth is likely to be seen";
        };
    }

    /** "3.5 h are without data and counted as unknown"; empty if there are none. */
    static Optional<String> unknown(double hours) {
        return hours < 0.05
                ? Optional.empty()
                : Optional.of(Words.oneDecimal(hours) + " h are without data and counted as unknown");
    }

    static String twoDecimals(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
