package bagward.site.view;

import bagward.bag.Origin;
import bagward.board.Measure;
import java.util.Optional;

/** Values with unit, and with their interval where they are estimated. */
public final class Figures {
    private Figures() {}

    /** "21.4 °C", or "no data". */
    public static String temperature(Optional<Measure> measure) {
        return known(measure).map(m -> Words.oneDecimal(m.value()) + " °C").orElse("no data");
    }

    /** "93 %RH", or "no data". */
    public static String humidity(Optional<Measure> measure) {
        return known(measure).map(m -> Words.whole(m.value()) + " %RH").orElse("no data");
    }

    /** "412 µmol", photons per square metre and second, or "no data". */
    public static String light(Optional<Measure> measure) {
        return known(measure).map(m -> Words.whole(m.value()) + " µmol").orElse("no data");
    }

    /** "21.4 °C estimated, 20.1 to 22.7", or "no data". */
    public static String temperatureInFull(Optional<Measure> measure) {
        return known(measure)
                .map(m -> Words.oneDecimal(m.value()) + " °C " + origin(m) + ", " + Words.oneDecimal(m.low()) + " to "
                        + Words.oneDecimal(m.high()))
                .orElse("no data");
    }

    /** "93 %RH estimated, 88 to 97", or "no data". */
    public static String humidityInFull(Optional<Measure> measure) {
        return known(measure)
                .map(m -> Words.whole(m.value()) + " %RH " + origin(m) + ", " + Words.whole(m.low()) + " to "
                        + Words.whole(m.high()))
                .orElse("no data");
    }

    private static String origin(Measure measure) {
        return measure.origin() == Origin.MEASURED ? "measured" : "estimated";
    }

    /** The measure, if it has a value at all. */
    public static Optional<Measure> known(Optional<Measure> measure) {
        return measure.filter(m -> Double.isFinite(m.value()));
    }
}
