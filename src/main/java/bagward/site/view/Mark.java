package bagward.site.view;

import bagward.alarm.RuleKind;

/** What is the matter with a thing: a small picture, drawn in a square of 48 units around the origin. */
public enum Mark {
    /** Nothing. */
    NONE("", ""),
    /** Damp: a drop. */
    DROP("damp", "M0 -20C9 -8 15 -1 15 7A15 15 0 0 1 -15 7C-15 -1 -9 -8 0 -20Z"),
    /** Hot: a thermometer. */
    HEAT("hot", "M-6 -18A6 6 0 0 1 6 -18V3A12 12 0 1 1 -6 3ZM-2 -14V7A6 6 0 1 0 2 7V-14Z"),
    /** Due: an arrow that lifts the bag off. */
    LIFT("due to come off", "M0 -21L17 -3H7V9H-7V-3H-17ZM-17 14H17V21H-17Z"),
    /** Shut: two edges that meet. */
    SHUT("fallen shut", "M-20 -19H20L4 -3V3L20 19H-20L-4 3V-3Z"),
    /** Off: a bag outline that is open below and lifted. */
    OFF(
            "off or torn",
            "M-17 4V-8C-17 -24 17 -24 17 -8V4H10V-7C10 -15 -10 -15 -10 -7V4ZM-17 13H-6V20H-17ZM6 13H17V20H6Z"),
    /** Silent: a wave that is cut through. */
    SILENT(
            "silent",
            "M-21 2C-17 -12 -11 -12 -8 -2L-13 1C-14 -3 -15 -3 -16 3ZM21 -2C17 12 11 12 8 2L13 -1C14 3 15 3 16 -3Z"
                    + "M-14 18L10 -21L15 -18L-9 21Z"),
    /** High estimated mould risk: spores. */
    SPORES(
            "high estimated mould risk",
            "M-8 -17A8 8 0 1 1 -8 -1A8 8 0 1 1 -8 -17ZM10 -9A7 7 0 1 1 10 5A7 7 0 1 1 10 -9ZM-3 4A8 8 0 1 1 -3 20A8 8 0 1 1 -3 4Z"),
    /** Nothing is known: a question. */
    UNKNOWN(
            "no data",
            "M-12 -8C-12 -25 13 -25 13 -8C13 2 3 2 3 10H-4C-4 -1 6 -1 6 -8C6 -15 -5 -15 -5 -8ZM-4 14H4V21H-4Z"),
    /** Something else: an exclamation. */
    ALERT("needs a look", "M-5 -21H5L3 7H-3ZM-5 12H5V21H-5Z");

    private final String words;
    private final String path;

    Mark(String words, String path) {
        this.words = words;
        this.path = path;
    }

    /** What it says, as people read it. */
    public String words() {
        return words;
    }

    /** Outline as SVG path data. */
    public String path() {
        return path;
    }

    /** The mark of what a rule looks at. */
    public static Mark of(RuleKind kind) {
        return switch (kind.word()) {
            case "bag-damp", "drying-damp" -> DROP;
            case "bag-hot" -> HEAT;
            case "bag-due" -> LIFT;
            case "bag-shut" -> SHUT;
            case "bag-off" -> OFF;
            case "sensor-silent" -> SILENT;
            case "bag-mould" -> SPORES;
            default -> ALERT;
        };
    }
}
