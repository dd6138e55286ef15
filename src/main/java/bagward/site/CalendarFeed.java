package bagward.site;

import bagward.board.BagView;
import bagward.board.Board;
import bagward.site.view.Places;
import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.property.Method;
import biweekly.property.Status;
import biweekly.util.Duration;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.Date;
import java.util.Locale;

/**
 * Due dates as a calendar that programs subscribe to (iCalendar, RFC 5545): for each bag that is on, the look after one day
 * and the day on which it comes off. Both times are of the trade: common practice, no source.
 */
final class CalendarFeed {
    private static final java.time.Duration FIRST_LOOK = java.time.Duration.ofDays(1);

    private final Pages pages;

    CalendarFeed(Pages pages) {
        this.pages = pages;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/calendar.ics", this::answer);
    }

    private void answer(Context ctx) {
        String text = Biweekly.write(calendar(pages.watch().board())).go();
        ctx.contentType("text/calendar; charset=utf-8")
                .header("Cache-Control", "no-store")
                .result(text);
    }

    /** The calendar of a board. */
    static ICalendar calendar(Board board) {
        ICalendar calendar = new ICalendar();
        calendar.setVersion(ICalVersion.V2_0);
        calendar.setProductId("-//Bagward//Due dates//EN");
        calendar.setMethod(Method.publish());
        // RFC 7986: how often a program asks again
        calendar.setRefreshInterval(Duration.builder().hours(1).build());
        calendar.setName(board.station() + ": bags");
        for (BagView bag : board.bags()) {
            Instant look = bag.putOn().plus(FIRST_LOOK);
            if (look.isBefore(bag.due())) {
                calendar.addEvent(event(
                        board,
                        bag,
                        "look",
                        look,
                        "Look into the bag of ",
                        "A bud that hangs was squeezed:"
                                + " mark it, and see that the bag is dry and stands off the buds."));
            }
            calendar.addEvent(event(
                    board,
                    bag,
                    "off",
                    bag.due(),
                    "Take the bag off ",
                    "Take it off before noon, dry. Open a"
                            + " mouldy bag outside and with a mask; pollen and spores can cause allergy."));
        }
        return calendar;
    }

    private static VEvent event(Board board, BagView bag, String kind, Instant at, String act, String note) {
        String tag = bag.head().tag().value();
        VEvent event = new VEvent();
        event.setUid((tag + "-" + bag.putOn().toEpochMilli() + "-" + kind + "@bagward").toLowerCase(Locale.ROOT));
        event.setDateTimeStamp(Date.from(board.at()));
        event.setDateStart(Date.from(at));
        event.setDuration(Duration.builder().minutes(30).build());
        event.setSummary(act + tag + ", " + Places.spot(board, bag.head().spot()));
        event.setDescription(note);
        event.setStatus(Status.confirmed());
        return event;
    }
}
