package bagward.alarm;

/** What a rule looks at; the unit of its limit and deadband. */
public enum RuleKind {
    /** In-bag humidity at or above the limit, %RH. */
    BAG_DAMP("bag-damp", "%RH", 50, 100),
    /** In-bag temperature at or above the limit, °C. */
    BAG_HOT("bag-hot", "°C", 0, 60),
    /** Days the bag is on reached its due day plus the limit, days; 0 is the due day. */
    BAG_DUE("bag-due", "d", -30, 60),
    /** A sensor was not heard for the limit times its expected interval. */
    SENSOR_SILENT("sensor-silent", "intervals", 2, 1000),
    /** Battery of a sensor at or below the limit, % of a full one; the deadband lies above the limit. */
    SENSOR_BATTERY("sensor-battery", "%", 1, 90);

    private final String word;
    private final String unit;
    private final double lowestLimit;
    private final double highestLimit;

    RuleKind(String word, String unit, double lowestLimit, double highestLimit) {
        this.word = word;
        this.unit = unit;
        this.lowestLimit = lowestLimit;
        this.highestLimit = highestLimit;
    }

    /** The word in configuration files. */
    public String word() {
        return word;
    }

    /** Unit of limit and deadband. */
    public String unit() {
        return unit;
    }

    /** Lowest limit that makes sense. */
    public double lowestLimit() {
        return lowestLimit;
    }

    /** Highest limit that makes sense. */
    public double highestLimit() {
        return highestLimit;
    }
}
