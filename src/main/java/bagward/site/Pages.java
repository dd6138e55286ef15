package bagward.site;

import bagward.board.Board;
import bagward.site.plan.Plan;
import bagward.site.view.Freshness;
import bagward.site.view.PageFrame;
import bagward.site.view.Standing;
import bagward.site.view.Words;
import bagward.watch.Watch;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;

/** Renders pages around the newest board. Safe for use by several threads. */
final class Pages {
    private static final String HTML = "text/html; charset=utf-8";

    private final TemplateEngine templates =
            TemplateEngine.createPrecompiled(null, gg.jte.ContentType.Html, null, "bagward.site.templates");
    private final Watch watch;
    private final Clock clock;
    private final double pace;

    Pages(Watch watch, Clock clock, double pace) {
        this.watch = watch;
        this.clock = clock;
        this.pace = pace;
    }

    Watch watch() {
        return watch;
    }

    Instant now() {
        return clock.instant();
    }

    /** How old the newest board is. */
    Freshness freshness() {
        return freshness(watch.board());
    }

    /** How old a board is. */
    Freshness freshness(Board board) {
        return Freshness.of(board, now(), pace);
    }

    /** From which age on a board counts as old. */
    Duration boardLimit() {
        return Freshness.boardLimit(pace);
    }

    /** Answers with a page. */
    void show(Context ctx, String section, String title, Object page) {
        PageFrame frame = frame(ctx, section, title, watch.board());
        StringOutput output = new StringOutput();
        templates.render(section + ".jte", Map.of("frame", frame, "page", page), output);
        ctx.contentType(HTML).header("Cache-Control", "no-store").result(output.toString());
    }

    private PageFrame frame(Context ctx, String section, String title, Board board) {
        return new PageFrame(
                title,
                section,
                board.station(),
                Words.dayAndClock(now(), board.zone()),
                freshness(board),
                summary(board),
                NameCookie.read(ctx),
                Notice.of(ctx).words());
    }

    private static String summary(Board board) {
        return Plan.count(board, Standing.ACT) + " bags need you now, " + Plan.count(board, Standing.ABNORMAL)
                + " today.";
    }
}
