package bagward.climate;

import bagward.climate.Finding.Oddity;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A humidity sensor that has been wet stays at 99 to 100 %RH until it is dry inside, hours after the air is.
 *
 * <p>The sign: humidity stays at 99 %RH or above while the air warms by 4 °C or more. Air that only warms would have
 * fallen to about 78 %RH by then; open water nearby seldom keeps up with the morning sun. Both limits are ours.
 */
public final class StuckWet {
    private static final double AT_THE_TOP = 99;
    private static final double WARMED = 4;

    private StuckWet() {}

    /**
     * Times in which a humidity sensor was stuck.
     *
     * @param series the humidity series, for the finding
     * @param temperature air temperature at the sensor, °C
     * @param humidity relative humidity on the same grid, %RH
     * @return runs at the top in which the air warmed by at least 4 °C, with the warming as amount; gaps end a run
     */
    public static List<Finding> find(SeriesId series, RegularSeries temperature, RegularSeries humidity) {
        List<Finding> found = new ArrayList<>();
        Run run = null;
        for (int i = 0; i < humidity.grid().size(); i++) {
            boolean top = humidity.valueOrNaN(i) >= AT_THE_TOP && temperature.known(i);
            if (top) {
                run = run == null ? new Run(i, temperature.valueOrNaN(i)) : run;
                run.take(i, temperature.valueOrNaN(i));
            } else {
                report(found, series, humidity.grid(), run);
                run = null;
            }
        }
        report(found, series, humidity.grid(), run);
        return found;
    }

    private static void report(List<Finding> found, SeriesId series, TimeGrid grid, @Nullable Run run) {
        if (run != null && run.warmed >= WARMED) {
            Span when = new Span(grid.at(run.first), grid.at(run.last + 1));
            found.add(new Finding(series, when, Oddity.STUCK_WET, run.warmed));
        }
    }

    /** One unbroken time at the top. */
    private static final class Run {
        private final int first;
        private int last;
        private double coldest;
        private double warmed;

        Run(int first, double celsius) {
            this.first = first;
            last = first;
            coldest = celsius;
        }

        void take(int cell, double celsius) {
            last = cell;
            coldest = Math.min(coldest, celsius);
            warmed = Math.max(warmed, celsius - coldest);
        }
    }
}
