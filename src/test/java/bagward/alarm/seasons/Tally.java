package bagward.alarm.seasons;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How the calls of one caller went over many bags. */
final class Tally {
    private static final Duration IN_TIME = Duration.ofHours(6);

    private final MouldWorld world;
    private final Caller caller;
    private final List<Double> hoursBefore = new ArrayList<>();
    private int mouldy;
    private int inTime;
    private int before;
    private int sound;
    private int falseCalls;
    private double weeks;

    Tally(Caller caller, MouldWorld world) {
        this.world = world;
        this.caller = caller;
    }

    static Tally of(Caller caller, MouldWorld world, List<MouldSeason> seasons) {
        Tally tally = new Tally(caller, world);
        seasons.forEach(tally::add);
        return tally;
    }

    void add(MouldSeason season) {
        for (SeasonBag bag : season.bags()) {
            take(bag, caller.firstCall(season, bag));
        }
    }

    private void take(SeasonBag bag, Optional<Instant> call) {
        weeks += Duration.between(bag.putOn(), bag.takenOff()).toSeconds() / 604_800.0;
        Optional<Instant> infection = bag.infections().getOrDefault(world, Optional.empty());
        if (infection.isEmpty()) {
            sound++;
            falseCalls += call.isPresent() ? 1 : 0;
            return;
        }
        mouldy++;
        Instant infected = infection.get();
        if (call.isPresent() && !call.get().isAfter(infected)) {
            before++;
            inTime += call.get().plus(IN_TIME).isAfter(infected) ? 0 : 1;
            hoursBefore.add(Duration.between(call.get(), infected).toSeconds() / 3600.0);
        }
    }

    Caller caller() {
        return caller;
    }

    /** Share of mouldy bags called for at least six hours before the infection. */
    double warned() {
        return (double) inTime / mouldy;
    }

    /** Calls for bags that stayed sound, for each 100 weeks of a bag. */
    double falsePerHundredWeeks() {
        return 100 * falseCalls / weeks;
    }

    /** Share warned less share of sound bags called for: 0 for a caller that knows nothing, 1 for one that knows all. */
    double balance() {
        return warned() - (double) falseCalls / sound;
    }

    int mouldy() {
        return mouldy;
    }

    int bags() {
        return mouldy + sound;
    }

    /** A line of the table. */
    String line() {
        Collections.sort(hoursBefore);
        String median = hoursBefore.isEmpty()
                ? "–"
                : String.format(Locale.ROOT, "%.0f", hoursBefore.get(hoursBefore.size() / 2));
        return String.format(
                Locale.ROOT,
                "| %s | %.0f %% | %.0f %% | %s | %.0f | %+.2f |",
                caller.name(),
                100 * warned(),
                100.0 * before / mouldy,
                median,
                falsePerHundredWeeks(),
                balance());
    }
}
