package bagward.site;

import bagward.alarm.AlarmKey;
import bagward.board.Board;
import bagward.fault.RefusedInputException;
import bagward.site.form.Fields;
import bagward.site.page.AlarmsPage;
import bagward.store.AlarmStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The list of alarms, and their confirmation. */
final class AlarmPages {
    private static final int JOURNAL_LINES = 12;
    private static final Pattern BACK = Pattern.compile("/bag/[A-Z0-9-]{1,24}|/alarms/[a-z0-9-]+/[A-Za-z0-9%+._-]+");

    private final Pages pages;
    private final AlarmStore journal;

    AlarmPages(Pages pages, AlarmStore journal) {
        this.pages = pages;
        this.journal = journal;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/alarms", this::list);
        routes.post("/alarms/seen", this::seen);
        new OneAlarmPages(pages, journal).addTo(routes);
        new JournalPages(pages, journal).addTo(routes);
        new LoadPages(pages, journal).addTo(routes);
    }

    private void list(Context ctx) {
        Board board = pages.watch().board();
        pages.show(
                ctx,
                "alarms",
                "Alarms",
                AlarmsPage.of(board, pages.watch().rules(), journal.newestEvents(JOURNAL_LINES)));
    }

    private void seen(Context ctx) {
        Fields fields = new Fields(ctx.formParamMap(), pages.watch().board().zone(), pages.now());
        String back = BACK.matcher(fields.sent("back")).matches() ? fields.sent("back") : "/alarms";
        try {
            String by = Worker.name(ctx, fields);
            fields.check();
            Set<AlarmKey> done = pages.watch().acknowledge(key(fields), by);
            Notice notice = done.isEmpty() ? Notice.GONE : Notice.ACKNOWLEDGED;
            ctx.redirect(back + "?done=" + notice.key(), HttpStatus.SEE_OTHER);
        } catch (RefusedInputException nameless) {
            ctx.redirect("/you", HttpStatus.SEE_OTHER);
        }
    }

    private Set<AlarmKey> key(Fields fields) {
        return pages.watch().board().alarms().stream()
                .map(a -> a.alarm().key())
                .filter(k -> k.rule().value().equals(fields.sent("rule")))
                .filter(k -> k.subject().key().equals(fields.sent("subject")))
                .collect(Collectors.toSet());
    }
}
