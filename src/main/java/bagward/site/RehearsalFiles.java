package bagward.site;

import bagward.alarm.Rule;
import bagward.board.RehearsedAlarm;
import bagward.board.RehearsedPair;
import bagward.site.api.RehearsalAnswer;
import bagward.site.page.RehearsalLine;
import bagward.site.view.AlarmWords;
import bagward.watch.rehearsal.RehearsalState;
import bagward.watch.rehearsal.Rehearsals;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The newest rehearsal, to take away. */
final class RehearsalFiles {
    private static final List<String> COLUMNS = List.of(
            "rule",
            "rule_name",
            "subject",
            "in",
            "raised_utc",
            "over_utc",
            "message",
            "running_raised_utc",
            "running_over_utc",
            "running_message");

    private final Pages pages;
    private final Rehearsals rehearsals;
    private final JsonAnswers json = new JsonAnswers();

    RehearsalFiles(Pages pages, Rehearsals rehearsals) {
        this.pages = pages;
        this.rehearsals = rehearsals;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/rehearsal.csv", this::csv);
        routes.get("/api/rehearsal", this::json);
    }

    private void json(Context ctx) {
        json.answer(ctx, RehearsalAnswer.of(rehearsals.state(), pages.now()));
    }

    private void csv(Context ctx) {
        if (!(rehearsals.state() instanceof RehearsalState.Done done)) {
            throw new NotFoundResponse();
        }
        List<Rule> rules = done.result().sets().stream()
                .flatMap(set -> set.rules().stream())
                .toList();
        boolean two = done.result().sets().size() > 1;
        List<List<String>> rows = done.result().pairs().stream()
                .map(pair -> row(rules, pair, two))
                .toList();
        CsvDownload.answer(ctx, "rehearsal.csv", COLUMNS, rows);
    }

    private static List<String> row(List<Rule> rules, RehearsedPair pair, boolean two) {
        return List.of(
                pair.any().key().rule().value(),
                AlarmWords.rule(rules, pair.any().key().rule()),
                pair.any().key().subject().key(),
                two ? RehearsalLine.in(pair) : "",
                raised(pair.first()),
                over(pair.first()),
                pair.first().map(RehearsedAlarm::message).orElse(""),
                raised(pair.second()),
                over(pair.second()),
                pair.second().map(RehearsedAlarm::message).orElse(""));
    }

    private static String raised(Optional<RehearsedAlarm> alarm) {
        return alarm.map(RehearsedAlarm::raised).map(Instant::toString).orElse("");
    }

    private static String over(Optional<RehearsedAlarm> alarm) {
        return alarm.flatMap(RehearsedAlarm::over).map(Instant::toString).orElse("");
    }
}
