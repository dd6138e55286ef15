package bagward.watch;

import bagward.bag.Outlook;
import bagward.bag.Register;
import bagward.board.Knowledge;
import bagward.board.Lessons;
import bagward.board.LoanStudy;
import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.station.HouseId;
import bagward.store.StoreException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Keeps what was learnt between boards. Loans that run are looked at anew every ten minutes and when the register
 * changes; a loan that has ended once, and again when a reading of its time comes late. While the store is away the
 * knowledge of before stands. Safe for use by several threads.
 */
final class KnowledgeKeeper {
    private static final Logger LOG = LoggerFactory.getLogger(KnowledgeKeeper.class);

    /** How often there is something new to learn, seconds. */
    static final long EVERY_SECONDS = 600;

    private final WatchParts parts;
    private final Duration window;
    private final OutlookKeeper outlooks;
    private final Map<Lessons.Lent, Kept> ended = new HashMap<>();
    private Knowledge known = Knowledge.NONE;
    private Register register = Register.EMPTY;
    private long made = Long.MIN_VALUE;

    /** @param window how far back readings in memory reach; older ones come from the store */
    KnowledgeKeeper(WatchParts parts, Duration window) {
        this.parts = parts;
        this.window = window;
        this.outlooks = new OutlookKeeper(parts);
    }

    /** What is known at an instant, from the readings up to the last full ten minutes. */
    synchronized Knowledge at(Instant now, Register current, ReadingSource inMemory) {
        long mark = Math.floorDiv(now.getEpochSecond(), EVERY_SECONDS);
        if (mark != made || !current.equals(register)) {
            made = mark;
            register = current;
            try {
                known = learn(Instant.ofEpochSecond(mark * EVERY_SECONDS), inMemory);
            } catch (StoreException away) {
                LOG.warn(
                        "what lent sensors and past nights teach could not be read and is tried again: {}",
                        away.getMessage());
            }
        }
        return known;
    }

    /** Takes note of readings: those of the time of a loan that has ended make it be studied again. */
    synchronized void heard(List<Reading> readings) {
        if (!ended.isEmpty()) {
            readings.forEach(reading -> ended.values().removeIf(kept -> kept.concerns(reading)));
        }
    }

    /** Forgets everything, since readings are read otherwise now: the next look starts anew. */
    synchronized void forget() {
        ended.clear();
        outlooks.forget();
        made = Long.MIN_VALUE;
    }

    private Knowledge learn(Instant now, ReadingSource inMemory) {
        List<LoanStudy> studies = new ArrayList<>();
        List<Lessons.Lent> all = Lessons.lent(register, now);
        ended.keySet().retainAll(all);
        for (Lessons.Lent lent : all) {
            study(lent, now, inMemory).ifPresent(studies::add);
        }
        Map<HouseId, Outlook> nights = outlooks.at(now);
        return Lessons.known(studies, parts.materials(), nights, outlooks.weeks(), now);
    }

    private Optional<LoanStudy> study(Lessons.Lent lent, Instant now, ReadingSource inMemory) {
        Kept kept = ended.get(lent);
        if (kept != null) {
            return kept.study;
        }
        Instant from = lent.loan().from().minus(LoanStudy.BESIDE);
        ReadingSource source = from.isBefore(now.minus(window)) ? parts.climateReadings() : inMemory;
        Optional<LoanStudy> study = Optional.ofNullable(
                        parts.materials().get(lent.bagging().material()))
                .flatMap(material -> LoanStudy.of(parts.station(), lent, register.loans(), material, source, now));
        Instant over = lent.end(now).plus(LoanStudy.BESIDE);
        if (!lent.runsAt(now) && over.isBefore(now)) {
            ended.put(lent, new Kept(from, over, study));
        }
        return study;
    }

    /**
     * A loan that has ended.
     *
     * @param from readings from then on concern it
     * @param over and those before this
     * @param study what it taught
     */
    private record Kept(Instant from, Instant over, Optional<LoanStudy> study) {
        boolean concerns(Reading reading) {
            return reading.measuredAt().isAfter(from) && reading.measuredAt().isBefore(over);
        }
    }
}
