package bagward.store;

import bagward.climate.Reading;
import bagward.climate.SeriesId;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;

/**
 * A store of readings that notes which days have to be summed up, whatever store lies beneath. A day is noted on disk
 * before its readings are, so a program that dies in between sums a day up once too often, never once too seldom.
 */
public final class SummedReadings implements ReadingStore {
    private final ReadingStore readings;
    private final SummaryStore summaries;
    private final DayMarks marks;

    /** Days that were noted since the list of them was last looked at; there is no need to note them again. */
    private final Set<SeriesDay> noted = ConcurrentHashMap.newKeySet();

    /** Many may store at once; while the list is looked at, nobody is between noting and storing. */
    private final ReadWriteLock underWay = new ReentrantReadWriteLock();

    /**
     * Wraps a store.
     *
     * @param readings where readings are
     * @param summaries where days are noted
     * @param marks which days a reading tells about
     */
    public SummedReadings(ReadingStore readings, SummaryStore summaries, DayMarks marks) {
        this.readings = readings;
        this.summaries = summaries;
        this.marks = marks;
    }

    @Override
    public Receipt append(List<Reading> batch) {
        underWay.readLock().lock();
        try {
            Set<SeriesDay> days = new HashSet<>(marks.touched(batch));
            days.removeAll(noted);
            if (!days.isEmpty()) {
                summaries.raise(days);
                noted.addAll(days);
            }
            return readings.append(batch);
        } finally {
            underWay.readLock().unlock();
        }
    }

    /** Days that are due, oldest first; all readings for which they were noted are stored. */
    public List<SummaryStore.Due> due(int most) {
        underWay.writeLock().lock();
        try {
            noted.clear();
            return summaries.due(most);
        } finally {
            underWay.writeLock().unlock();
        }
    }

    /** Deletes nothing that a day that is due still needs. */
    @Override
    public int deleteBefore(Instant before, int most) {
        underWay.writeLock().lock();
        try {
            Optional<LocalDate> due = summaries.oldestDue();
            boolean needed = due.map(marks::neededFrom).filter(before::isAfter).isPresent();
            if (needed) {
                return 0;
            }
            if (before.isAfter(summaries.keptSince())) {
                summaries.keepSince(before);
            }
            return readings.deleteBefore(before, most);
        } finally {
            underWay.writeLock().unlock();
        }
    }

    @Override
    public List<Reading> readings(SeriesId series, Instant from, Instant to) {
        return readings.readings(series, from, to);
    }

    @Override
    public Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
        return readings.newest(series, atOrBefore);
    }
}
