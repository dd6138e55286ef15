package bagward.units;

/**
 * Relative humidity over liquid water, at every temperature (WMO practice).
 *
 * @param percent %RH, 0 to 100
 */
public record RelativeHumidity(double percent) implements Comparable<RelativeHumidity> {
    /** Saturated air. */
    public static final RelativeHumidity SATURATED = new RelativeHumidity(100);

    /** Refuses anything but 0 to 100 %RH. */
    public RelativeHumidity {
        Checks.within("relative humidity", percent, 0, 100, "%RH");
    }

    /** From a ratio, 0 to 1. */
    public static RelativeHumidity ofRatio(double ratio) {
        return new RelativeHumidity(ratio * 100);
    }

    /** As a ratio, 0 to 1. */
    public double ratio() {
        return percent / 100;
    }

    @Override
    public int compareTo(RelativeHumidity other) {
        return Double.compare(percent, other.percent);
    }
}
