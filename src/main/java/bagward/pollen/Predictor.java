package bagward.pollen;

import bagward.climate.LightSum;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a score may be set against. The first is chosen beforehand; the others are looked at on demand only. */
public enum Predictor {
    /** Light from sunrise to the time of the score. */
    LIGHT_TO_SCORE("light-to-score", "Light from sunrise to the score", "mol m⁻²"),
    /** Light of the whole day, that after the score with it. */
    LIGHT_OF_DAY("light-of-day", "Light of the whole day", "mol m⁻²"),
    /** Light of the day before. */
    LIGHT_DAY_BEFORE("light-day-before", "Light of the day before", "mol m⁻²"),
    /** Mean vapour pressure deficit of 06 to 10 h. */
    MORNING_DEFICIT("morning-deficit", "Vapour pressure deficit, 06 to 10 h", "kPa"),
    /** Mean humidity of 06 to 10 h. */
    MORNING_HUMIDITY("morning-humidity", "Humidity, 06 to 10 h", "%RH"),
    /** Highest temperature of the day before. */
    HEAT_DAY_BEFORE("heat-day-before", "Highest temperature of the day before", "°C");

    private final String key;
    private final String words;
    private final String unit;

    Predictor(String key, String words, String unit) {
        this.key = key;
        this.words = words;
        this.unit = unit;
    }

    /** Short name in addresses and files. */
    public String key() {
        return key;
    }

    /** What it is, for people. */
    public String words() {
        return words;
    }

    /** Its unit. */
    public String unit() {
        return unit;
    }

    /** The predictor of a short name. */
    public static Optional<Predictor> find(String key) {
        for (Predictor predictor : values()) {
            if (predictor.key.equals(key)) {
                return Optional.of(predictor);
            }
        }
        return Optional.empty();
    }

    /** Its value for a score; empty where it is not wholly known. */
    OptionalDouble of(TakenScore score, HouseSeason season) {
        LocalDate day = score.at().atZone(season.zone()).toLocalDate();
        Optional<HouseDay> same = season.find(day);
        Optional<HouseDay> before = season.find(day.minusDays(1));
        return switch (this) {
            case LIGHT_TO_SCORE ->
                same.map(d -> whole(d.lightUntil(score.at()))).orElse(OptionalDouble.empty());
            case LIGHT_OF_DAY -> same.map(d -> whole(d.light())).orElse(OptionalDouble.empty());
            case LIGHT_DAY_BEFORE -> before.map(d -> whole(d.light())).orElse(OptionalDouble.empty());
            case MORNING_DEFICIT ->
                same.map(d -> season.summary(d).morningDeficit()).orElse(OptionalDouble.empty());
            case MORNING_HUMIDITY ->
                same.map(d -> season.summary(d).morningHumidity()).orElse(OptionalDouble.empty());
            case HEAT_DAY_BEFORE ->
                before.map(d -> season.summary(d).highestTemperature()).orElse(OptionalDouble.empty());
        };
    }

    private static OptionalDouble whole(LightSum sum) {
        return sum.complete() ? OptionalDouble.of(sum.moles()) : OptionalDouble.empty();
    }
}
