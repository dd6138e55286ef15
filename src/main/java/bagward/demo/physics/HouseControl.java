package bagward.demo.physics;

/** Heating pipe and vents of a house: slow proportional control, as a simple climate computer does it. */
final class HouseControl {
    private static final double LARGEST_PIPE = 170;
    private static final double PIPE_GAIN = 45;
    private static final double PIPE_SECONDS = 600;
    private static final double VENT_SECONDS = 180;

    private final HouseDesign design;
    private double pipe;
    private double vent;

    HouseControl(HouseDesign design) {
        this.design = design;
    }

    /** One step on what a sensor in the house shows. */
    void step(double celsius, double percent, double light, double seconds) {
        double set = light > 5 ? design.heatDayCelsius() : design.heatNightCelsius();
        double tooMoist = Math.min(1, Math.max(0, (percent - design.dryAbovePercent()) / 8));
        double wanted = Math.max(PIPE_GAIN * (set - celsius), tooMoist * design.dryingPipe());
        double pipeTarget = Math.min(LARGEST_PIPE, Math.max(0, wanted));
        pipe += (pipeTarget - pipe) * seconds / PIPE_SECONDS;
        double tooWarm = (celsius - design.ventCelsius()) / 4;
        double ventTarget = Math.min(1, Math.max(tooWarm, 0.14 * tooMoist));
        vent += (Math.max(0, ventTarget) - vent) * seconds / VENT_SECONDS;
    }

    /** Heat of the pipe, W m⁻². */
    double pipe() {
        return pipe;
    }

    /** How far the vents are open, 0 to 1. */
    double vent() {
        return vent;
    }
}
