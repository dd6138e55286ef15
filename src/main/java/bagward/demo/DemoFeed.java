package bagward.demo;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Queue;

/**
 * All messages of the demo sensors in the order of their times, without end: first a season of the house sensors, then
 * the story, in which each sensor measures every second minute.
 * The same seed gives the same messages.
 */
public final class DemoFeed implements Iterator<DemoMessage> {
    private static final int MINUTES_BETWEEN = 2;

    private final DemoWorld world;
    private final List<DemoSensor> sensors;
    private final List<Feeler> feelers = new ArrayList<>();
    private final Queue<DemoMessage> ready = new ArrayDeque<>();
    private Instant minute;

    /**
     * Messages from the beginning of the season on.
     *
     * @param seed the same seed gives the same messages
     */
    public DemoFeed(long seed) {
        this.minute = DemoStation.HISTORY_BEGINS;
        ready.addAll(DemoSeason.messages(seed));
        this.sensors = DemoSensors.all();
        Instant warmUp = minute.minus(Duration.ofDays(1));
        this.world = new DemoWorld(seed, warmUp);
        for (int i = 0; i < sensors.size(); i++) {
            feelers.add(new Feeler(sensors.get(i).nature(), seed * 31 + i));
        }
        for (Instant at = warmUp.plusSeconds(60); at.isBefore(minute); at = at.plusSeconds(60)) {
            world.runTo(at);
        }
    }

    @Override
    public boolean hasNext() {
        return true;
    }

    @Override
    public DemoMessage next() {
        while (ready.isEmpty()) {
            runMinute();
        }
        return ready.remove();
    }

    private void runMinute() {
        world.runTo(minute);
        boolean even = minute.getEpochSecond() / 60 % MINUTES_BETWEEN == 0;
        List<DemoMessage> measured = new ArrayList<>();
        for (int i = 0; i < sensors.size(); i++) {
            AirSample air = sensors.get(i).place().apply(world);
            feelers.get(i).follow(air, 60);
            if (even) {
                measure(sensors.get(i), feelers.get(i), air, measured);
            }
        }
        measured.sort(Comparator.comparing(DemoMessage::at));
        ready.addAll(measured);
        minute = minute.plusSeconds(60);
    }

    private void measure(DemoSensor sensor, Feeler feeler, AirSample air, List<DemoMessage> measured) {
        Instant at = minute.plusSeconds(sensor.second());
        AirSample shown = feeler.show(air);
        boolean lost = feeler.losesNext();
        if (sensor.speaksAt(at) && !lost) {
            measured.add(new DemoMessage(sensor.topic(), sensor.writer().write(at, shown), at));
        }
    }
}
