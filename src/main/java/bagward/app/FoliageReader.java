package bagward.app;

import bagward.climate.WetnessRule;
import bagward.document.Section;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Reads when the foliage of a house counts as wet. */
final class FoliageReader {
    private static final Map<String, Function<Section, Optional<WetnessRule>>> RULES =
            Map.of("humidity", FoliageReader::humidity, "dew-point", FoliageReader::dewPoint);

    private FoliageReader() {}

    /** The rule of a section; the usual humidity limit if it was left out, empty if it was refused. */
    static Optional<WetnessRule> read(Optional<Section> foliage) {
        return foliage.map(section -> section.choice("told-by", RULES).flatMap(rule -> rule.apply(section)))
                .orElse(Optional.of(WetnessRule.HumidityLimit.USUAL));
    }

    private static Optional<WetnessRule> humidity(Section section) {
        WetnessRule.HumidityLimit usual = WetnessRule.HumidityLimit.USUAL;
        double wet = section.number("wet-from", 0, 100, "%RH", usual.wetFrom());
        double dry = section.number("dry-below", 0, 100, "%RH", Math.min(wet, usual.dryBelow()));
        return section.make(() -> new WetnessRule.HumidityLimit(wet, dry));
    }

    private static Optional<WetnessRule> dewPoint(Section section) {
        WetnessRule.DewPointDepression usual = WetnessRule.DewPointDepression.USUAL;
        double wet = section.number("wet-up-to", 0, 50, "K", usual.wetUpTo());
        double dry = section.number("dry-from", 0, 50, "K", Math.max(wet, usual.dryFrom()));
        return section.make(() -> new WetnessRule.DewPointDepression(wet, dry));
    }
}
