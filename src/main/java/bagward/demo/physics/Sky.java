package bagward.demo.physics;

/** The three kinds of day that the demo knows. */
enum Sky {
    /** Blue, with a stray cloud: warm noon, cold night. */
    CLEAR(0.05, 6.5, 4.0, 0.004, 0.25, 0.55),
    /** Clouds that come and go. */
    BROKEN(0.5, 4.5, 3.0, 0.08, 0.10, 0.40),
    /** Grey all day: little light, little difference between day and night. */
    OVERCAST(0.95, 2.0, 1.5, 0.30, 0.005, 0.24);

    private final double cover;
    private final double halfSwing;
    private final double dewPointGap;
    private final double cloudArrives;
    private final double cloudLeaves;
    private final double lightUnderCloud;

    Sky(
            double cover,
            double halfSwing,
            double dewPointGap,
            double cloudArrives,
            double cloudLeaves,
            double lightUnderCloud) {
        this.cover = cover;
        this.halfSwing = halfSwing;
        this.dewPointGap = dewPointGap;
        this.cloudArrives = cloudArrives;
        this.cloudLeaves = cloudLeaves;
        this.lightUnderCloud = lightUnderCloud;
    }

    /** Share of the sky that is covered, 0 to 1. */
    double cover() {
        return cover;
    }

    /** Half the difference between the warmest and the coldest hour, K. */
    double halfSwing() {
        return halfSwing;
    }

    /** How far the dew point lies below the mean temperature, K. */
    double dewPointGap() {
        return dewPointGap;
    }

    /** Chance in a minute that a cloud covers a free sun, 0 to 1. */
    double cloudArrives() {
        return cloudArrives;
    }

    /** Chance in a minute that a covered sun comes free, 0 to 1. */
    double cloudLeaves() {
        return cloudLeaves;
    }

    /** Share of the clear-sky light that passes a cloud, 0 to 1. */
    double lightUnderCloud() {
        return lightUnderCloud;
    }
}
