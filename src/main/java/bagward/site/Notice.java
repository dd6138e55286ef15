package bagward.site;

import io.javalin.http.Context;
import java.util.Arrays;

/** What was just done; travels as a word in the address after a form was sent. */
enum Notice {
    /** Nothing. */
    NONE(""),
    /** A bag was put on. */
    PUT_ON("Put on: the bag is in the register."),
    /** A bag was swapped. */
    SWAP("Swapped: the dry bag is in the register."),
    /** A bag came off. */
    TAKE_OFF("Taken off: it is in the register."),
    /** A sensor was lent. */
    LEND("Lent: the sensor counts for this bag from now on."),
    /** A sensor was given back. */
    GIVE_BACK("Given back: the sensor is spare again."),
    /** The last flower of a head has opened. */
    LAST_FLOWER("Noted: the earliest day for taking the bag off follows from it."),
    /** The petals of a head have dropped. */
    PETALS_DROPPED("Noted: the earliest day for taking the bag off follows from it."),
    /** A note of flowers was withdrawn. */
    WITHDRAW_FLOWERS("Withdrawn: the note no longer counts."),
    /** A head was harvested. */
    HARVEST("Harvested: it is in the register."),
    /** A seed lot was hung to dry. */
    HANG_TO_DRY("Hung to dry: it is in the register."),
    /** A seed lot was packed. */
    PACK("Packed: it is in the register."),
    /** An entry about a seed lot was withdrawn. */
    WITHDRAW_DRYING("Withdrawn: the entry no longer counts."),
    /** A head was lost. */
    LOSE("Given up: it is in the register."),
    /** A file was imported. */
    IMPORT("Imported: every line is in the register."),
    /** An alarm was confirmed. */
    ACKNOWLEDGED("Seen: the alarm is marked as yours."),
    /** An alarm was gone before it was confirmed. */
    GONE("This alarm is over or was confirmed by somebody else."),
    /** An alarm was shelved. */
    SHELVE("Shelved: it comes back by itself."),
    /** An alarm was taken out of service. */
    TAKE_OFF_ALARM("Out of service: bring it back when the work is done."),
    /** An alarm was brought back. */
    BRING_BACK("Brought back: the rule decides anew."),
    /** A check of a sensor was kept. */
    CHECKED("Kept: readings of this sensor are corrected from the check on. What was stored stays as it came."),
    /** A check of a sensor was withdrawn. */
    WITHDRAWN("Withdrawn: the check no longer counts."),
    /** A check of a sensor was gone. */
    NO_CHECK("There is no such check that still counts."),
    /** A channel is tried. */
    TRIAL("On its way: a trial waits for this channel. Its state is below."),
    /** A name was set. */
    NAME("Your name is kept on this device."),
    /** A pollen score was entered. */
    POLLEN_SCORE("Scored: it is in the list of newest scores, where it can be withdrawn."),
    /** A pollen score was withdrawn. */
    POLLEN_WITHDRAWN("Withdrawn: the score no longer counts."),
    /** A tag was looked for in vain. */
    NO_HEAD("No head has this tag. These are all heads.");

    private final String words;

    Notice(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** The word in addresses. */
    String key() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    static Notice of(Context ctx) {
        String key = ctx.queryParam("done");
        return Arrays.stream(values())
                .filter(n -> n.key().equals(key))
                .findFirst()
                .orElse(NONE);
    }
}
