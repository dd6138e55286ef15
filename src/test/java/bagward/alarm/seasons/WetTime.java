package bagward.alarm.seasons;

/**
 * Wet time without a sharp limit: an hour counts by a share that rises smoothly with humidity, and what has gathered fades in
 * dry time. Good for one bag.
 */
final class WetTime {
    private final double halfWet;
    private final double fadingHours;
    private final double stepHours;
    private double hours;
    private double degreeHours;

    /**
     * @param halfWet humidity at which an hour counts half, %RH; one point more or less makes 73 or 27 %
     * @param fadingHours dry time in which what has gathered falls to 37 %, h
     * @param stepHours length of a step, h
     */
    WetTime(double halfWet, double fadingHours, double stepHours) {
        this.halfWet = halfWet;
        this.fadingHours = fadingHours;
        this.stepHours = stepHours;
    }

    /** Share of a step that counts as wet. */
    double share(double percent) {
        return 1 / (1 + Math.exp(halfWet - percent));
    }

    /** How much of what has gathered is left after a step. */
    double kept(double percent) {
        return Math.exp(-(1 - share(percent)) * stepHours / fadingHours);
    }

    /** Takes one step. */
    void step(double celsius, double percent) {
        double kept = kept(percent);
        double wet = share(percent) * stepHours;
        hours = hours * kept + wet;
        degreeHours = degreeHours * kept + wet * celsius;
    }

    double hours() {
        return hours;
    }

    double meanCelsius() {
        return degreeHours / hours;
    }
}
