package bagward.app;

import bagward.demo.DemoProgress;
import java.io.PrintWriter;

/** Prints how far the history of the demo is, in steps of ten per cent. */
final class HistoryProgress implements DemoProgress {
    private final PrintWriter out;
    private int shown;

    HistoryProgress(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void published(long messages, double share) {
        int tenths = (int) (share * 10);
        if (tenths > shown) {
            shown = tenths;
            out.printf("  %3d %%  %,d messages%n", tenths * 10, messages);
            out.flush();
        }
    }
}
