package bagward.watch;

import bagward.bag.Line;
import bagward.bag.Register;
import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.clockwork.Clockwork;
import bagward.clockwork.Pause;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import bagward.mould.HeatLimits;
import bagward.pollen.BlockBootstrap;
import bagward.pollen.PollenEntry;
import bagward.pollen.PollenReport;
import bagward.pollen.Predictor;
import bagward.pollen.Relation;
import bagward.pollen.ScorePoint;
import bagward.pollen.ScoreRow;
import bagward.pollen.Scores;
import bagward.pollen.TakenScore;
import bagward.station.House;
import bagward.station.HouseId;
import bagward.station.PlaceClimates;
import bagward.station.Station;
import bagward.store.PollenStore;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Keeps pollen scores, the days of the houses, and the newest report of each house. Reports are functions of readings,
 * register, scores and time; only what was read and fitted before is remembered.
 */
public final class PollenKeeper implements PollenWatch, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(PollenKeeper.class);

    /** Days that a season reaches back. */
    private static final int SEASON_DAYS = 120;

    /** Pollen changes slowly beside alarms: one report for so many boards that come without news. */
    private static final int BOARDS_EACH = 6;

    private static final Duration SHORTEST_PAUSE = Duration.ofSeconds(5);
    private static final int FITS_REMEMBERED = 24;
    private static final long SEED = 8;

    private final Clock clock;
    private final Station station;
    private final PollenStore store;
    private final Supplier<Register> register;
    private final Duration tolerance;
    private final SeasonKeeper seasons;
    private final Map<Asked, Relation> fits = new RecentlyUsed<>(FITS_REMEMBERED);
    private final Map<HouseId, PollenReport> newest = new ConcurrentHashMap<>();
    private final Object entering = new Object();
    private final Clockwork ticker;
    private volatile List<PollenEntry> journal;

    /**
     * A keeper that has loaded the scores.
     *
     * @param heat what the flowers of the usual crop bear
     * @param readings all readings on disk, with the corrections that hold now
     * @param register the register as it stands
     * @param settings how often the newest reports are made
     */
    public PollenKeeper(
            Clock clock,
            Station station,
            HeatLimits heat,
            Supplier<ReadingSource> readings,
            PollenStore store,
            Supplier<Register> register,
            WatchSettings settings) {
        this.clock = clock;
        this.station = station;
        this.store = store;
        this.register = register;
        this.tolerance = settings.futureTolerance();
        this.seasons = new SeasonKeeper(station, heat, readings, SEASON_DAYS);
        this.journal = store.entries();
        Duration pause = settings.longestPause().multipliedBy(BOARDS_EACH);
        this.ticker = Clockwork.resting("pollen reports", new Pause(SHORTEST_PAUSE, pause), this::renew);
    }

    /** Begins to keep the newest reports. */
    public void start() {
        ticker.start();
    }

    /** Takes note of readings that are on disk; returns at once. */
    public void stored(List<Reading> news) {
        seasons.stored(news);
    }

    @Override
    public List<TakenScore> scores() {
        return Scores.of(journal, register.get());
    }

    @Override
    public void enter(List<PollenEntry> entries) {
        Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
        List<Fault> faults = new ArrayList<>();
        entries.forEach(entry -> faults.addAll(check(entry, now)));
        if (!faults.isEmpty()) {
            throw new RefusedInputException(faults);
        }
        synchronized (entering) {
            store.append(entries, now);
            List<PollenEntry> all = new ArrayList<>(journal);
            all.addAll(entries);
            journal = List.copyOf(all);
        }
        ticker.ask();
    }

    private List<Fault> check(PollenEntry entry, Instant now) {
        List<Fault> faults = new ArrayList<>();
        if (station.findHouse(entry.house()).isEmpty()) {
            faults.add(Fault.of("house", entry.house().value(), "the station has no such house"));
        }
        if (entry.at().isAfter(now.plus(tolerance))) {
            faults.add(new Fault("at", entry.at().toString(), "this lies in the future", "Enter what was seen."));
        }
        return faults;
    }

    @Override
    public synchronized Optional<PollenReport> report(HouseId house, Optional<Line> line, Predictor predictor) {
        return station.findHouse(house).map(found -> {
            Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
            return PollenReport.of(
                    now,
                    PlaceClimates.site(station),
                    seasons.season(house, now),
                    scores(),
                    line,
                    predictor,
                    this::relation);
        });
    }

    private Relation relation(List<ScoreRow> rows, Predictor predictor) {
        Asked asked = new Asked(ScorePoint.of(rows, predictor), predictor);
        return fits.computeIfAbsent(
                asked, missing -> Relation.of(asked.points(), predictor, BlockBootstrap.usual(SEED)));
    }

    @Override
    public Map<HouseId, PollenReport> newest() {
        return Map.copyOf(newest);
    }

    private void renew() {
        for (House house : station.growing()) {
            try {
                report(house.id(), Optional.empty(), Predictor.LIGHT_TO_SCORE)
                        .ifPresent(report -> newest.put(house.id(), report));
            } catch (RuntimeException e) {
                LOG.error("the pollen report of house {} could not be made; it is tried again", house.id(), e);
            }
        }
    }

    @Override
    public void close() {
        ticker.close();
    }

    private record Asked(List<ScorePoint> points, Predictor predictor) {}

    /** A map that forgets what was not asked for the longest time. */
    private static final class RecentlyUsed<K, V> extends LinkedHashMap<K, V> {
        private static final long serialVersionUID = 1L;

        private final int most;

        RecentlyUsed(int most) {
            super(most, 0.75f, true);
            this.most = most;
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > most;
        }
    }
}
