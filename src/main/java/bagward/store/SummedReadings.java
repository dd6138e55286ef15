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

    /** While old readings are deleted, which may take a server a second, only those who store as old ones wait. */
    private final ReadWriteLock oldOnes = new ReentrantReadWriteLock();

    private volatile Instant deletedBefore = Instant.MIN;

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
        if (!isOld(batch)) {
            underWay.readLock().lock();
            try {
                if (!isOld(batch)) {
                    return noteAndStore(batch);
                }
            } finally {
                underWay.readLock().unlock();
            }
        }
        oldOnes.readLock().lock();
        try {
            underWay.readLock().lock();
            try {
                return noteAndStore(batch);
            } finally {
                underWay.readLock().unlock();
            }
        } finally {
            oldOnes.readLock().unlock();
        }
    }

    private boolean isOld(List<Reading> batch) {
        Instant limit = deletedBefore;
        return batch.stream().anyMatch(reading -> reading.measuredAt().isBefore(limit));
    }

    private Receipt noteAndStore(List<Reading> batch) {
        Set<SeriesDay> days = new HashSet<>(marks.touched(batch));
        days.removeAll(noted);
        if (!days.isEmpty()) {
            summaries.raise(days);
            noted.addAll(days);
        }
        return readings.append(batch);
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
        oldOnes.writeLock().lock();
        try {
            return mayDelete(before) ? readings.deleteBefore(before, most) : 0;
        } finally {
            oldOnes.writeLock().unlock();
        }
    }

    /** Whether nothing that is due needs them; whoever comes with such old readings waits from now on. */
    private boolean mayDelete(Instant before) {
        underWay.writeLock().lock();
        try {
            Optional<LocalDate> due = summaries.oldestDue();
            boolean needed = due.map(marks::neededFrom).filter(before::isAfter).isPresent();
            if (needed) {
                return false;
            }
            if (before.isAfter(summaries.keptSince())) {
                summaries.keepSince(before);
            }
            deletedBefore = before;
            return true;
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
