package bagward.app;

import bagward.collector.CollectorState;
import bagward.store.QuarantineStore;
import bagward.store.ReadingStore;
import bagward.store.spool.SpoolState;
import bagward.store.spool.SpooledQuarantine;
import bagward.store.spool.SpooledReadings;
import bagward.watch.Health;
import bagward.watch.Intake;
import java.time.Clock;
import java.util.List;

/**
 * What the collector stores into: readings and quarantine, each behind a spool, so that both are taken while their store
 * is away.
 *
 * @param readings the readings; what waits is found as if it were stored
 * @param quarantine the quarantine
 */
record Spooling(SpooledReadings readings, SpooledQuarantine quarantine) implements AutoCloseable {
    private static final double NEARLY_FULL_PERCENT = 80;

    /** Puts spools in front of two stores. */
    static Spooling open(StoreSettings settings, ReadingStore readings, QuarantineStore quarantine, Clock clock) {
        SpooledReadings first = SpooledReadings.open(
                readings, settings.folder().resolve("spool/readings"), settings.spoolBytes(), clock);
        try {
            return new Spooling(
                    first,
                    SpooledQuarantine.open(
                            quarantine, settings.folder().resolve("spool/quarantine"), settings.spoolBytes(), clock));
        } catch (RuntimeException e) {
            first.close();
            throw e;
        }
    }

    /** How store and spool are. */
    List<Health.Part> parts(CollectorState collector) {
        SpoolState state = readings.state();
        boolean takes = collector.storing();
        boolean room = state.depth().percent() < NEARLY_FULL_PERCENT;
        String spool = takes
                ? state.depth().items() + " readings wait, "
                        + Math.round(state.depth().percent()) + " % full"
                : collector.says();
        return List.of(
                new Health.Part("store", state.awaySince().isEmpty(), state.says()),
                new Health.Part("spool", takes && room, spool));
    }

    /** What came in, through the spool or not. */
    Intake intake(CollectorState.Counts counts) {
        SpoolState state = readings.state();
        return new Intake(
                counts.stored() + state.passedOn().stored(),
                counts.repeated() + state.passedOn().repeated(),
                counts.contradicted() + state.passedOn().contradicted(),
                counts.lost(),
                state.depth().items(),
                state.depth().percent());
    }

    @Override
    public void close() {
        readings.close();
        quarantine.close();
    }
}
