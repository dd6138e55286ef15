package bagward.watch.rehearsal;

import bagward.bag.RegisterChange;
import bagward.climate.ReadingSource;
import java.util.List;

/** What a station has stored, opened only to look at; used by one thread. */
public interface StoredPast extends AutoCloseable {
    /** The readings, with the corrections that hold. */
    ReadingSource readings();

    /** The journal of the register. */
    List<RegisterChange> changes();

    @Override
    void close();
}
