package bagward.demo;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The weeks before the nine days of the story: the house sensors alone, every sixth minute, under a sky of their own, so
 * that the pollen page has a season to look back on.
 */
final class DemoSeason {
    /** When the season begins. */
    static final Instant BEGINS = DemoStation.HISTORY_BEGINS.minus(Duration.ofDays(30));

    private static final Set<String> HEARD = Set.of("linden-air", "linden-light", "alder-air", "alder-light");
    private static final int MINUTES_BETWEEN = 6;
    private static final long ANOTHER_SKY = 104_729;

    private DemoSeason() {}

    /** The world of the season, at its beginning. */
    static DemoWorld world(long seed) {
        return new DemoWorld(seed + ANOTHER_SKY, BEGINS.minusSeconds(60));
    }

    /** All messages of the season in the order of their times. */
    static List<DemoMessage> messages(long seed) {
        DemoWorld world = world(seed);
        List<DemoSensor> sensors = DemoSensors.all().stream()
                .filter(sensor -> HEARD.contains(sensor.id()))
                .toList();
        List<Feeler> feelers = new ArrayList<>();
        sensors.forEach(sensor -> feelers.add(new Feeler(sensor.nature(), seed * 37 + feelers.size())));
        List<DemoMessage> messages = new ArrayList<>();
        for (Instant at = BEGINS; at.isBefore(DemoStation.HISTORY_BEGINS); at = at.plusSeconds(60)) {
            world.runTo(at);
            boolean speaks = at.getEpochSecond() / 60 % MINUTES_BETWEEN == 0;
            for (int i = 0; i < sensors.size(); i++) {
                AirSample air = sensors.get(i).place().apply(world);
                feelers.get(i).follow(air, 60);
                if (speaks) {
                    Instant measured = at.plusSeconds(sensors.get(i).second());
                    AirSample shown = feelers.get(i).show(air);
                    messages.add(new DemoMessage(
                            sensors.get(i).topic(), sensors.get(i).writer().write(measured, shown), measured));
                }
            }
        }
        return messages;
    }
}
