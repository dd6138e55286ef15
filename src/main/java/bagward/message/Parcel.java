package bagward.message;

import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmKey;
import java.time.Instant;
import java.util.List;

/** Something that is delivered. */
public sealed interface Parcel {
    /** Stable name; two parcels of the same id are one. */
    String id();

    /** When it came about. */
    Instant at();

    /** Alarms it is about: of these the order is kept. */
    List<AlarmKey> alarms();

    /**
     * A message to a person.
     *
     * @param message the message
     */
    record Letter(Message message) implements Parcel {
        @Override
        public String id() {
            return message.id();
        }

        @Override
        public Instant at() {
            return message.at();
        }

        @Override
        public List<AlarmKey> alarms() {
            return message.tells().stream().map(Told::alarm).distinct().toList();
        }
    }

    /**
     * One line of the alarm journal, for programs that follow it.
     *
     * @param number its place in the journal
     * @param event what changed
     */
    record Change(long number, AlarmEvent event) implements Parcel {
        @Override
        public String id() {
            return "change-" + number;
        }

        @Override
        public Instant at() {
            return event.at();
        }

        @Override
        public List<AlarmKey> alarms() {
            return List.of(event.key());
        }
    }

    /**
     * A trial of one channel, asked for by a person.
     *
     * @param at when it was asked for
     * @param by who asked
     * @param channel which channel
     */
    record Trial(Instant at, String by, ChannelName channel) implements Parcel {
        @Override
        public String id() {
            return "trial-" + channel + "-" + at;
        }

        @Override
        public List<AlarmKey> alarms() {
            return List.of();
        }
    }
}
