package bagward.site;

import bagward.alarm.AlarmAct;
import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmKey;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.alarm.Subject;
import bagward.board.Board;
import bagward.fault.ImpossibleValueException;
import bagward.fault.RefusedInputException;
import bagward.site.form.AlarmActEntry;
import bagward.site.form.Entered;
import bagward.site.form.Fields;
import bagward.site.page.AlarmPage;
import bagward.site.view.AlarmWords;
import bagward.site.view.JournalLine;
import bagward.store.AlarmStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The page of one alarm, on which people put it aside and bring it back. */
final class OneAlarmPages {
    private static final Duration LOOK_BACK = Duration.ofDays(90);
    private static final int MOST_LINES = 60;

    private final Pages pages;
    private final AlarmStore journal;

    OneAlarmPages(Pages pages, AlarmStore journal) {
        this.pages = pages;
        this.journal = journal;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/alarms/{rule}/{subject}", ctx -> show(ctx, key(ctx), Entered.fresh(Map.of())));
        routes.post("/alarms/{rule}/{subject}/{act}", this::enter);
    }

    private void enter(Context ctx) {
        AlarmKey key = key(ctx);
        String act = ctx.pathParam("act");
        Fields fields = new Fields(ctx.formParamMap(), pages.watch().board().zone(), pages.now());
        try {
            String by = Worker.name(ctx, fields);
            AlarmAct read =
                    AlarmActEntry.read(act, key, by, fields, pages.now()).orElseThrow(NotFoundResponse::new);
            pages.watch().act(read);
            ctx.redirect(AlarmWords.address(key) + "?done=" + notice(read).key(), HttpStatus.SEE_OTHER);
        } catch (RefusedInputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, key, Refusals.entered(act, fields, refused));
        }
    }

    private static Notice notice(AlarmAct act) {
        if (act instanceof AlarmAct.Shelve) {
            return Notice.SHELVE;
        }
        return act instanceof AlarmAct.BringBack ? Notice.BRING_BACK : Notice.TAKE_OFF_ALARM;
    }

    private void show(Context ctx, AlarmKey key, Entered entered) {
        Board board = pages.watch().board();
        Rule rule = rule(key.rule());
        AlarmPage page = AlarmPage.of(board, key, rule, there(board, key.subject()), entered, lines(board, key));
        pages.show(ctx, "alarm", rule.name() + ", " + page.subject(), page);
    }

    private AlarmKey key(Context ctx) {
        try {
            AlarmKey key = new AlarmKey(new RuleId(ctx.pathParam("rule")), Subject.parse(ctx.pathParam("subject")));
            rule(key.rule());
            return key;
        } catch (ImpossibleValueException noAlarm) {
            throw new NotFoundResponse();
        }
    }

    private Rule rule(RuleId id) {
        return pages.watch().rules().stream()
                .filter(rule -> rule.id().equals(id))
                .findFirst()
                .orElseThrow(NotFoundResponse::new);
    }

    /** Whether something of this kind and name is watched now. */
    private static boolean there(Board board, Subject subject) {
        Stream<String> watched = Stream.of(
                        board.bags().stream()
                                .map(bag -> new Subject.Bag(bag.head().tag())),
                        board.sensors().stream()
                                .map(view -> new Subject.OfSensor(view.sensor().id())),
                        board.places().stream().map(house -> new Subject.InHouse(house.id())),
                        board.alarms().stream().map(view -> view.alarm().key().subject()))
                .flatMap(subjects -> subjects.map(Subject::key));
        return watched.anyMatch(subject.key()::equals);
    }

    private List<JournalLine> lines(Board board, AlarmKey key) {
        List<AlarmEvent> events = new ArrayList<>(
                journal.events(pages.now().minus(LOOK_BACK), pages.now().plusMillis(1)).stream()
                        .filter(event -> event.key().equals(key))
                        .toList());
        Collections.reverse(events);
        return events.stream()
                .limit(MOST_LINES)
                .map(event -> JournalLine.of(board, pages.watch().rules(), event))
                .toList();
    }
}
