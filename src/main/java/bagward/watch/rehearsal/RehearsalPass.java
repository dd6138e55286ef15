package bagward.watch.rehearsal;

import bagward.alarm.Rule;
import bagward.bag.Head;
import bagward.bag.Register;
import bagward.bag.RegisterRules;
import bagward.board.BagDays;
import bagward.board.BoardInputs;
import bagward.board.Rehearsal;
import bagward.board.Rehearsed;
import bagward.board.RehearsedAlarm;
import bagward.climate.ReadingSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/** Reads a stretch of the stored past once, and puts one or two sets of rules to it, bag by bag. */
public final class RehearsalPass {
    private final RehearsedStation station;
    private final RehearsedDays days;
    private final boolean allProcessors;
    private final Progress progress;
    private final AtomicInteger swept = new AtomicInteger();
    private final AtomicBoolean stopped = new AtomicBoolean();

    /** @param allProcessors whether heads are swept by all processors at once, or by the calling thread alone */
    public RehearsalPass(RehearsedStation station, RehearsedDays days, boolean allProcessors, Progress progress) {
        this.station = station;
        this.days = days;
        this.allProcessors = allProcessors;
        this.progress = progress;
    }

    /**
     * Runs.
     *
     * @param past what is stored
     * @param sets one or two sets of rules
     * @return empty if it was stopped
     */
    public Optional<RehearsalResult> run(StoredPast past, List<List<Rule>> sets) {
        ReadingSource readings = new ReadOnce(station.series(), past.readings(), days);
        Register register = new RegisterRules(
                        station.station(),
                        station.materials().keySet(),
                        station.crops().ids())
                .apply(Register.EMPTY, past.changes());
        List<Rehearsed> tried = new ArrayList<>();
        for (List<Rule> rules : sets) {
            if (!stopped.get()) {
                tried.add(tried(station.inputs(days.to(), register, readings, rules), sets.size()));
            }
        }
        double bagDays = BagDays.between(register, days.from(), days.to());
        return stopped.get() ? Optional.empty() : Optional.of(new RehearsalResult(days, bagDays, tried));
    }

    private Rehearsed tried(BoardInputs season, int sets) {
        Rehearsal rehearsal = new Rehearsal(season, days.from(), days.every());
        List<Head> heads = rehearsal.heads();
        Stream<Head> stream = allProcessors ? heads.parallelStream() : heads.stream();
        List<RehearsedAlarm> alarms = new ArrayList<>(rehearsal.ofSensors());
        alarms.addAll(rehearsal.ofDryingPlaces());
        stream.map(head -> swept(rehearsal, head, heads.size() * sets)).toList().forEach(alarms::addAll);
        if (!stopped.get()) {
            alarms.addAll(rehearsal.ofHouses());
        }
        return Rehearsed.of(season.rules(), alarms, days.to(), season.station().zone());
    }

    private List<RehearsedAlarm> swept(Rehearsal rehearsal, Head head, int heads) {
        if (stopped.get()) {
            return List.of();
        }
        List<RehearsedAlarm> alarms = rehearsal.of(head);
        if (!progress.done((double) swept.incrementAndGet() / heads)) {
            stopped.set(true);
        }
        return alarms;
    }
}
