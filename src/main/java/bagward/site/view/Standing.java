package bagward.site.view;

import bagward.alarm.AlarmPhase;
import bagward.alarm.Priority;
import bagward.board.AlarmView;

/** How a thing stands, calmest first; each has a shape of its own, so that colour is never needed to tell them apart. */
public enum Standing {
    /** Well: a plain bag. */
    QUIET("well", "quiet"),
    /** Something to know or to do when you come by: a blue square. */
    NOTE("when you come by", "note"),
    /** Abnormal, today: a yellow diamond. */
    ABNORMAL("today", "abnormal"),
    /** Act now: a red triangle. */
    ACT("act now", "act");

    private final String words;
    private final String cssClass;

    Standing(String words, String cssClass) {
        this.words = words;
        this.cssClass = cssClass;
    }

    /** How soon, as people read it. */
    public String words() {
        return words;
    }

    /** Name of the style. */
    public String cssClass() {
        return cssClass;
    }

    /** The standing that an alarm gives: what is over by now only needs to be seen. */
    public static Standing of(AlarmView view) {
        boolean over = view.alarm().phase() == AlarmPhase.RETURNED_UNACKNOWLEDGED;
        return over ? NOTE : of(view.rule().priority());
    }

    /** The standing that a priority gives. */
    private static Standing of(Priority priority) {
        return switch (priority) {
            case LOW -> NOTE;
            case MEDIUM -> ABNORMAL;
            case HIGH -> ACT;
        };
    }
}
