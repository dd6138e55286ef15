package bagward.notify;

import bagward.message.Parcel;
import java.net.URI;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Parcels as people read them. */
final class Wording {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("EEE d MMM yyyy, HH:mm", Locale.ENGLISH);

    private Wording() {}

    /** One line, with the station. */
    static String subject(Outgoing outgoing) {
        return plainSubject(outgoing.parcel()) + " – " + outgoing.station();
    }

    private static String plainSubject(Parcel parcel) {
        if (parcel instanceof Parcel.Letter letter) {
            return letter.message().subject();
        }
        if (parcel instanceof Parcel.Change change) {
            return change.event().key().rule() + ", "
                    + change.event().key().subject().key() + ": "
                    + Words.of(change.event().to());
        }
        return "Trial message";
    }

    /** Plain text: what it says, how to confirm it, who sent it. */
    static String text(Outgoing outgoing) {
        StringBuilder text = new StringBuilder(body(outgoing.parcel(), outgoing.zone())).append("\n\n");
        outgoing.answer().ifPresent(link -> text.append(confirm(link)));
        return text.append("Sent by Bagward at ")
                .append(outgoing.station())
                .append(". It is a help, no guarantee: have a look on your round all the same.\n")
                .toString();
    }

    private static String body(Parcel parcel, ZoneId zone) {
        if (parcel instanceof Parcel.Letter letter) {
            return letter.message().text().stripTrailing();
        }
        if (parcel instanceof Parcel.Change change) {
            return change.event().message() + "\nFrom "
                    + Words.of(change.event().from()) + " to "
                    + Words.of(change.event().to()) + " by " + change.event().by() + ", "
                    + TIME.format(change.at().atZone(zone)) + ".";
        }
        String by = parcel instanceof Parcel.Trial trial ? trial.by() : "Somebody";
        return by + " asked on " + TIME.format(parcel.at().atZone(zone))
                + " whether this channel works. It does: nothing else is to be done.";
    }

    private static String confirm(URI link) {
        return "Seen it? Open this page and press its button, so that nobody else is called:\n" + link + "\n\n";
    }
}
