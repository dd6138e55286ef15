package bagward.alarm;

/** What a rule looks at; the unit of its limit and deadband. */
public enum RuleKind {
    /** In-bag humidity at or above the limit, %RH. */
    BAG_DAMP("bag-damp", "%RH"),
    /** In-bag temperature at or above the limit, °C. */
    BAG_HOT("bag-hot", "°C"),
    /** Days the bag is on reached its due day plus the limit, days; 0 is the due day. */
    BAG_DUE("bag-due", "d"),
    /** A sensor was not heard for the limit times its expected interval. */
    SENSOR_SILENT("sensor-silent", "intervals");

    private final String word;
    private final String unit;

    RuleKind(String word, String unit) {
        this.word = word;
        this.unit = unit;
    }

    /** The word in configuration files. */
    public String word() {
        return word;
    }

    /** Unit of limit and deadband. */
    public String unit() {
        return unit;
    }
}
