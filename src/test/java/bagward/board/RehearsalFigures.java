package bagward.board;

import bagward.bag.Head;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.Locale;

/**
 * What a rehearsal of a season costs on one thread: so many heads of seven days each, spread evenly over ninety days, in two
 * houses heard every minute, looked at every minute. Seconds of the processor tell more than those of a clock on a busy
 * machine. Arguments: heads (10000), step in minutes (1).
 */
final class RehearsalFigures {
    private static final int DAYS = 90;
    private static final int DAYS_ON = 7;

    private RehearsalFigures() {}

    /** Prints seconds and megabytes. */
    public static void main(String[] args) {
        int heads = args.length > 0 ? Integer.parseInt(args[0]) : 10_000;
        int minutes = args.length > 1 ? Integer.parseInt(args[1]) : 1;
        BoardInputs season = BusyStation.season(heads, DAYS, DAYS_ON);
        System.gc();
        System.out.printf(Locale.ROOT, "inputs %d MB%n", used());
        long start = System.nanoTime();
        long startOfWork = processor();
        Rehearsal rehearsal =
                new Rehearsal(season, season.now().minus(Duration.ofDays(DAYS - 29L)), Duration.ofMinutes(minutes));
        long swept = System.nanoTime();
        long sweptWork = processor();
        int alarms = 0;
        long most = used();
        int done = 0;
        for (Head head : rehearsal.heads()) {
            alarms += rehearsal.of(head).size();
            most = Math.max(most, used());
            if (++done % 1000 == 0) {
                System.out.printf(Locale.ROOT, "%d heads %.1f s%n", done, (System.nanoTime() - swept) / 1e9);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%d heads, %d alarms: sensors %.1f s (processor %.1f s), heads %.1f s (%.1f s); at most %d MB in use%n",
                done,
                alarms,
                (swept - start) / 1e9,
                (sweptWork - startOfWork) / 1e9,
                (System.nanoTime() - swept) / 1e9,
                (processor() - sweptWork) / 1e9,
                most);
    }

    /** Time of this thread on a processor, ns. */
    private static long processor() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static long used() {
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / 1_000_000;
    }
}
