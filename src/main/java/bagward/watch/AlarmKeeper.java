package bagward.watch;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEvent;
import bagward.alarm.Step;
import bagward.store.AlarmStore;
import bagward.store.StoreException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The alarms as they stand, and their way to disk. What could not be saved is kept and saved with the next step, so that
 * people see their alarms while the store is away. Steps are taken by one thread at a time, the book is there for all.
 */
final class AlarmKeeper {
    private static final Logger LOG = LoggerFactory.getLogger(AlarmKeeper.class);

    private final AlarmStore store;
    private final List<AlarmEvent> unsaved = new ArrayList<>();
    private AlarmBook saved;
    private volatile AlarmBook book;

    AlarmKeeper(AlarmStore store) {
        this.store = store;
        this.saved = store.loadAlarms();
        this.book = saved;
    }

    /** The state as it is now. */
    AlarmBook book() {
        return book;
    }

    /**
     * Takes a step and saves it if it changed more than words.
     *
     * @return why it could not be saved; empty if it was
     */
    Optional<String> take(Step step) {
        book = step.book();
        unsaved.addAll(step.events());
        if (unsaved.isEmpty() && wordless(book).equals(wordless(saved))) {
            return Optional.empty();
        }
        try {
            store.save(book, unsaved);
        } catch (StoreException e) {
            LOG.warn("the alarms are not saved yet", e);
            return Optional.of("alarms are not saved yet: " + e.getMessage());
        }
        saved = book;
        unsaved.clear();
        return Optional.empty();
    }

    /** Messages carry the newest numbers and change with every reading; they are made anew at each step. */
    private static AlarmBook wordless(AlarmBook book) {
        return AlarmBook.of(book.alarms().stream().map(AlarmKeeper::wordless).toList());
    }

    private static Alarm wordless(Alarm alarm) {
        return new Alarm(
                alarm.key(),
                alarm.phase(),
                alarm.since(),
                alarm.raisedAt(),
                alarm.acknowledgedAt(),
                alarm.acknowledgedBy(),
                alarm.clearSince(),
                "",
                alarm.aside());
    }
}
