package bagward.alarm;

/** What a rule looks at; the unit of its limit and deadband. */
public enum RuleKind {
    /** In-bag humidity at or above the limit, %RH. */
    BAG_DAMP("bag-damp", "%RH", 50, 100),
    /** In-bag temperature at or above the limit, °C. */
    BAG_HOT("bag-hot", "°C", 0, 60),
    /**
     * Estimated mould risk of a head is high, or will be within the limit if tonight goes as the outlook says, h; 0 asks
     * only for what has been reached. Delays count from the hour of the outlook or from when the risk became high.
     */
    BAG_MOULD("bag-mould", "h", 0, 24),
    /** Days the bag is on reached its due day plus the limit, days; 0 is the due day. */
    BAG_DUE("bag-due", "d", -30, 60),
    /** A bag with a sensor holds back more vapour than it should by at least the limit, as a share of closure. */
    BAG_SHUT("bag-shut", "of closure", 0.1, 1),
    /** A bag with a sensor holds back less vapour than it should by at least the limit, as a share of closure. */
    BAG_OFF("bag-off", "of closure", 0.1, 1),
    /** Humidity of a drying place in which seed lots hang at or above the limit, %RH. */
    DRYING_DAMP("drying-damp", "%RH", 30, 100),
    /** A sensor was not heard for the limit times its expected interval. */
    SENSOR_SILENT("sensor-silent", "intervals", 2, 1000),
    /** Battery of a sensor at or below the limit, % of a full one; the deadband lies above the limit. */
    SENSOR_BATTERY("sensor-battery", "%", 1, 90),
    /** The clock of a sensor, or the way of its messages, is off by the limit or more, min. */
    SENSOR_CLOCK("sensor-clock", "min", 1, 1440),
    /** The store of readings takes nothing for the limit or longer, min. */
    STORE_AWAY("store-away", "min", 0, 1440),
    /** The spool, in which readings wait for their store, is as full as the limit or fuller, %. */
    SPOOL_FILLING("spool-filling", "%", 1, 100),
    /** Free space on the disk of the station's data at or below the limit, GB; the deadband lies above the limit. */
    DISK_FILLING("disk-filling", "GB", 0.1, 10_000),
    /** The station's clock was set by the limit or more, or is certainly wrong, s. */
    STATION_CLOCK("station-clock", "s", 2, 86_400);

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

    /** Whether it looks at the climate in a bag, which may be estimated. */
    public boolean estimated() {
        return this == BAG_DAMP || this == BAG_HOT || this == BAG_MOULD;
    }

    /** Whether many bags may meet it at once for one cause, so that their house can call for all of them. */
    public boolean shared() {
        return this == BAG_DAMP || this == BAG_HOT;
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
