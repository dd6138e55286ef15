package bagward.site.form;

import bagward.alarm.AlarmEvent;
import bagward.alarm.Subject;
import bagward.bag.Head;
import bagward.bag.Register;
import bagward.board.Board;
import bagward.station.HouseId;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;

/**
 * Which part of the journal is asked for; what is empty does not narrow it.
 *
 * @param day civil day of the station
 * @param house short name of a house: of its own, its sensors and its bags
 * @param tag code of a head
 */
public record JournalFilter(Optional<LocalDate> day, String house, String tag) {
    /** The filter of an address; a day that is none is left out. */
    public static JournalFilter of(String day, String house, String tag) {
        return new JournalFilter(day(day.strip()), house.strip(), tag.strip().toUpperCase(Locale.ROOT));
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException noDay) {
            return Optional.empty();
        }
    }

    /** First instant that counts. */
    public Instant from(ZoneId zone) {
        return day.map(d -> d.atStartOfDay(zone).toInstant()).orElse(Instant.EPOCH);
    }

    /** First instant that does not count any more; days of clock changes have 23 or 25 hours. */
    public Instant to(ZoneId zone) {
        return day.map(d -> d.plusDays(1).atStartOfDay(zone).toInstant()).orElse(Instant.MAX);
    }

    /** Whether an event is about what is asked for. */
    public boolean matches(AlarmEvent event, Register register, Board board) {
        Subject subject = event.key().subject();
        boolean ofTag = tag.isEmpty()
                || (subject instanceof Subject.Bag bag && bag.tag().value().equals(tag));
        boolean ofHouse = house.isEmpty()
                || houseOf(subject, register, board)
                        .filter(id -> id.value().equals(house))
                        .isPresent();
        return ofTag && ofHouse;
    }

    private static Optional<HouseId> houseOf(Subject subject, Register register, Board board) {
        if (subject instanceof Subject.Bag bag) {
            return register.find(bag.tag()).map(Head::spot).map(spot -> spot.house());
        }
        if (subject instanceof Subject.InHouse in) {
            return Optional.of(in.house());
        }
        return board.sensors().stream()
                .filter(view ->
                        subject.equals(new Subject.OfSensor(view.sensor().id())))
                .map(view -> view.sensor().house())
                .findFirst();
    }
}
