package bagward.climate;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Lowest and highest reading of a window that slides over readings in order of time. */
final class SlidingRange {
    private final Duration window;
    private final Deque<Reading> inside = new ArrayDeque<>();
    private final Deque<Reading> lows = new ArrayDeque<>();
    private final Deque<Reading> highs = new ArrayDeque<>();

    SlidingRange(Duration window) {
        this.window = window;
    }

    /** Takes in the next reading and forgets those more than a window older. */
    void take(Reading reading) {
        inside.addLast(reading);
        while (!lows.isEmpty() && lows.getLast().value() >= reading.value()) {
            lows.removeLast();
        }
        while (!highs.isEmpty() && highs.getLast().value() <= reading.value()) {
            highs.removeLast();
        }
        lows.addLast(reading);
        highs.addLast(reading);
        for (Deque<Reading> queue : List.of(inside, lows, highs)) {
            while (older(queue.getFirst(), reading)) {
                queue.removeFirst();
            }
        }
    }

    private boolean older(Reading first, Reading now) {
        return Duration.between(first.measuredAt(), now.measuredAt()).compareTo(window) > 0;
    }

    /** Highest minus lowest value in the window. */
    double range() {
        return highs.getFirst().value() - lows.getFirst().value();
    }

    double lowest() {
        return lows.getFirst().value();
    }

    /** From the oldest to the newest reading in the window. */
    Span span() {
        return new Span(inside.getFirst().measuredAt(), inside.getLast().measuredAt());
    }

    /** Whether the readings reach over at least nine tenths of the window. */
    boolean full() {
        return span().length().compareTo(window.multipliedBy(9).dividedBy(10)) >= 0;
    }
}
