package bagward.mould;

import bagward.units.Checks;

/**
 * A plain clock of humid hours: it runs while the air is humid and the temperature in range, and starts anew after a dry
 * break. It serves as the sporulation clock of Alternaria, as the petal rule of Sclerotinia and as plain damp hours.
 *
 * @param wetRule when the clock runs
 * @param neededHours humid hours until the event, h
 * @param dryBreak dry break that sets it back to zero
 */
public record HumidHours(WetRule wetRule, double neededHours, DryBreak dryBreak) implements SpellModel {
    /** Refuses a need that is not positive. */
    public HumidHours {
        Checks.within("humid time needed", neededHours, 0.1, 1000, "h");
    }

    /** Humid hours as a share of the needed ones. */
    @Override
    public double score(double hours, double celsius) {
        return hours / neededHours;
    }

    @Override
    public BandLimits usualBands() {
        return BandLimits.OF_NEED;
    }

    @Override
    public String reason(String name, double hours, double celsius, BandLimits bands) {
        return Say.format(
                        "at least %.4g %%RH for %.1f h at %.0f °C, %s needs %.1f h",
                        wetRule.onPercent(), hours, celsius, name, neededHours)
                + Say.forHigh(neededHours * bands.high(), bands);
    }
}
