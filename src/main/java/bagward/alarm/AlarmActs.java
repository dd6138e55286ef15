package bagward.alarm;

import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a person may do with an alarm beside confirming it. Each act needs a name and a reason, and leaves an event. What
 * was hidden comes back at the engine's next step: unacknowledged if its condition holds, normal if it does not.
 */
public final class AlarmActs {
    /** An alarm may be shelved for so long at most; ours: a long weekend. */
    public static final Duration LONGEST_SHELVING = Duration.ofDays(3);

    private AlarmActs() {}

    /**
     * Hides a listed alarm for a time.
     *
     * @param until when it comes back, after now and not later than {@link #LONGEST_SHELVING} from now
     * @throws RefusedInputException if name or reason are blank, the time is not allowed, or no such alarm is listed
     */
    public static Step shelve(AlarmBook book, AlarmKey key, String who, Instant until, String why, Instant now) {
        List<Fault> faults = blanks(who, why);
        if (!until.isAfter(now) || until.isAfter(now.plus(LONGEST_SHELVING))) {
            faults.add(Fault.of(
                    "until",
                    until.toString(),
                    "must be after " + now + " and at most " + LONGEST_SHELVING.toDays() + " days later"));
        }
        Optional<Alarm> listed = book.find(key).filter(alarm -> alarm.phase().listed());
        if (listed.isEmpty()) {
            faults.add(Fault.of("alarm", name(key), "must be one that is listed now"));
        }
        refuse(faults);
        Alarm alarm = listed.orElseThrow();
        Aside aside = new Aside(who, now, Optional.of(until), why);
        return AlarmEngine.change(book, alarm, alarm.hidden(AlarmPhase.SHELVED, aside), who, now, why);
    }

    /**
     * Takes an alarm off for maintenance until a person brings it back; also one that is normal now.
     *
     * @throws RefusedInputException if name or reason are blank
     */
    public static Step takeOutOfService(AlarmBook book, AlarmKey key, String who, String why, Instant now) {
        refuse(blanks(who, why));
        Aside aside = new Aside(who, now, Optional.empty(), why);
        Optional<Alarm> before = book.find(key);
        Alarm alarm = before.orElseGet(() -> Alarm.pending(key, now, why));
        AlarmPhase from = before.map(Alarm::phase).orElse(AlarmPhase.NORMAL);
        return AlarmEngine.change(book, alarm.in(from), alarm.hidden(AlarmPhase.OUT_OF_SERVICE, aside), who, now, why);
    }

    /**
     * Brings back a shelved alarm before its time, or one that is out of service.
     *
     * @throws RefusedInputException if the name is blank, or a person has not hidden such an alarm
     */
    public static Step bringBack(AlarmBook book, AlarmKey key, String who, Instant now) {
        List<Fault> faults = blanks(who, "no reason needed");
        Optional<Alarm> hidden = book.find(key).filter(AlarmActs::byPerson);
        if (hidden.isEmpty()) {
            faults.add(Fault.of("alarm", name(key), "must be one that is shelved or out of service"));
        }
        refuse(faults);
        Alarm alarm = hidden.orElseThrow();
        Aside before = alarm.aside().orElse(new Aside(who, now, Optional.empty(), ""));
        Aside over = new Aside(before.by(), before.from(), Optional.of(now), before.why());
        return AlarmEngine.change(book, alarm, alarm.hidden(alarm.phase(), over), who, now, "");
    }

    private static boolean byPerson(Alarm alarm) {
        return alarm.phase() == AlarmPhase.SHELVED || alarm.phase() == AlarmPhase.OUT_OF_SERVICE;
    }

    private static List<Fault> blanks(String who, String why) {
        List<Fault> faults = new ArrayList<>();
        if (who.isBlank()) {
            faults.add(Fault.of("who", who, "must name a person"));
        }
        if (why.isBlank()) {
            faults.add(Fault.of("why", why, "must give a reason"));
        }
        return faults;
    }

    private static String name(AlarmKey key) {
        return key.rule() + " of " + key.subject().key();
    }

    private static void refuse(List<Fault> faults) {
        if (!faults.isEmpty()) {
            throw new RefusedInputException(faults);
        }
    }
}
