package bagward.station;

/** What a house is for. */
public enum HouseUse {
    /** Plants grow in it, and bags are put on their heads. */
    GROWING("growing"),
    /** Harvested seed hangs in it to dry; it has no bays, and no bags are put on there. */
    DRYING("drying");

    private final String word;

    HouseUse(String word) {
        this.word = word;
    }

    /** The word in configuration files. */
    public String word() {
        return word;
    }
}
