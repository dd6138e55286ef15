package bagward.site;

import bagward.alarm.AlarmEvent;
import bagward.alarm.Rule;
import bagward.board.Board;
import bagward.site.api.EventAnswer;
import bagward.site.form.JournalFilter;
import bagward.site.page.JournalPage;
import bagward.site.view.AlarmWords;
import bagward.site.view.JournalLine;
import bagward.site.view.Words;
import bagward.store.AlarmStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The journal of the alarms, by day, house or head, to read and to take away. */
final class JournalPages {
    private static final int MOST_LINES = 200;
    private static final List<String> COLUMNS = List.of(
            "time_utc",
            "time_station",
            "rule",
            "rule_name",
            "subject",
            "subject_name",
            "from",
            "to",
            "by",
            "why",
            "message");

    private final Pages pages;
    private final AlarmStore journal;
    private final JsonAnswers json = new JsonAnswers();

    JournalPages(Pages pages, AlarmStore journal) {
        this.pages = pages;
        this.journal = journal;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/alarms/journal", this::journal);
        routes.get("/alarms/journal.csv", this::csv);
        routes.get("/alarms/journal.json", this::json);
    }

    private void journal(Context ctx) {
        Board board = pages.watch().board();
        JournalFilter filter = filter(ctx);
        List<AlarmEvent> events = new ArrayList<>(events(filter));
        Collections.reverse(events);
        List<JournalLine> lines = events.stream()
                .limit(MOST_LINES)
                .map(event -> JournalLine.of(board, pages.watch().rules(), event))
                .toList();
        pages.show(ctx, "journal", "Alarm journal", JournalPage.of(board, filter, lines, events.size()));
    }

    private void csv(Context ctx) {
        Board board = pages.watch().board();
        List<Rule> rules = pages.watch().rules();
        List<List<String>> rows = events(filter(ctx)).stream()
                .map(event -> List.of(
                        event.at().toString(),
                        Words.field(event.at(), board.zone()),
                        event.key().rule().value(),
                        AlarmWords.rule(rules, event.key().rule()),
                        event.key().subject().key(),
                        AlarmWords.subject(board, event.key().subject()),
                        EventAnswer.word(event.from()),
                        EventAnswer.word(event.to()),
                        event.by(),
                        event.why(),
                        event.message()))
                .toList();
        CsvDownload.answer(ctx, "alarm-journal.csv", COLUMNS, rows);
    }

    private void json(Context ctx) {
        ctx.header("Content-Disposition", "attachment; filename=\"alarm-journal.json\"");
        json.answer(ctx, events(filter(ctx)).stream().map(EventAnswer::of).toList());
    }

    /** Oldest first. */
    private List<AlarmEvent> events(JournalFilter filter) {
        Board board = pages.watch().board();
        var register = pages.watch().register();
        return journal.events(filter.from(board.zone()), filter.to(board.zone())).stream()
                .filter(event -> filter.matches(event, register, board))
                .toList();
    }

    private static JournalFilter filter(Context ctx) {
        return JournalFilter.of(asked(ctx, "day"), asked(ctx, "house"), asked(ctx, "tag"));
    }

    private static String asked(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name)).orElse("");
    }
}
