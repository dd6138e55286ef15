package bagward.units;

/** What a series measures; each has one canonical unit in which readings are stored. */
public enum Quantity {
    /** Air temperature, °C. */
    TEMPERATURE("temperature", "Cel", "°C", -40, 80),
    /** Relative humidity over water, %RH; the collector stores 100 to 104 as 100 with a flag. */
    HUMIDITY("humidity", "%RH", "%RH", 0, 100),
    /** Photosynthetic photon flux density, 400 to 700 nm, µmol m⁻² s⁻¹. */
    LIGHT("light", "umol/m2/s", "µmol m⁻² s⁻¹", 0, 3000),
    /** What is left in the battery of the sensor, % of a full one; tells about the sensor, not about the air. */
    BATTERY("battery", "%EL", "%", 0, 100);

    private final String word;
    private final String code;
    private final String symbol;
    private final double lowest;
    private final double highest;

    Quantity(String word, String code, String symbol, double lowest, double highest) {
        this.word = word;
        this.code = code;
        this.symbol = symbol;
        this.lowest = lowest;
        this.highest = highest;
    }

    /** Whether it is part of the climate; a sensor that reports nothing else is of no use for bags. */
    public boolean isClimate() {
        return this != BATTERY;
    }

    /** The word used in configuration, pages and exports. */
    public String word() {
        return word;
    }

    /** Canonical unit as an ASCII code (SenML style). */
    public String unitCode() {
        return code;
    }

    /** Canonical unit as shown to people. */
    public String unitSymbol() {
        return symbol;
    }

    /** Lowest physically credible value in the canonical unit. */
    public double lowest() {
        return lowest;
    }

    /** Highest physically credible value in the canonical unit. */
    public double highest() {
        return highest;
    }
}
