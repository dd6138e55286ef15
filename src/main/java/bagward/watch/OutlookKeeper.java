package bagward.watch;

import bagward.bag.Outlook;
import bagward.board.Lessons;
import bagward.mould.NightRule;
import bagward.station.House;
import bagward.station.HouseId;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;

/**
 * Keeps the outlook of each house for the hour it was made for. A new one is made ten minutes past the full hour, when the
 * readings of that hour have come in, from the store: it looks back further than the readings in memory. The last week of
 * each house is told anew with each call, since readings of it may come late. Used under the lock of its owner.
 */
final class OutlookKeeper {
    private static final Duration ARRIVED = Duration.ofMinutes(10);

    private final WatchParts parts;
    private final Map<HouseId, Outlook> outlooks = new HashMap<>();
    private final Map<HouseId, NightRule.Verdict> weeks = new HashMap<>();
    private Instant made = Instant.MIN;

    OutlookKeeper(WatchParts parts) {
        this.parts = parts;
    }

    /** The outlooks of all houses at an instant. */
    Map<HouseId, Outlook> at(Instant now) {
        Instant hour = now.minus(ARRIVED).truncatedTo(ChronoUnit.HOURS);
        boolean fresh = !hour.equals(made);
        for (House house : parts.station().growing()) {
            weeks.put(
                    house.id(),
                    Lessons.week(parts.station(), house.id(), parts.climateReadings(), parts.foliage(), now));
            if (fresh || !(outlooks.get(house.id()) instanceof Outlook.Night)) {
                outlooks.put(house.id(), Lessons.outlook(parts.station(), house.id(), parts.climateReadings(), now));
            }
        }
        made = hour;
        return Map.copyOf(outlooks);
    }

    /** How the last week of each house was, as of the last call for outlooks. */
    Map<HouseId, NightRule.Verdict> weeks() {
        return Map.copyOf(weeks);
    }

    void forget() {
        outlooks.clear();
        weeks.clear();
        made = Instant.MIN;
    }
}
