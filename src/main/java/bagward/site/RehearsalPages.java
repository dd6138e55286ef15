package bagward.site;

import bagward.alarm.Rule;
import bagward.fault.RefusedInputException;
import bagward.site.form.Entered;
import bagward.site.form.Fields;
import bagward.site.form.RehearsalEntry;
import bagward.site.page.RehearsalPage;
import bagward.watch.rehearsal.RehearsalState;
import bagward.watch.rehearsal.Rehearsals;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Rules tried on the stored past, before they are switched on. */
final class RehearsalPages {
    private final Pages pages;
    private final Rehearsals rehearsals;

    RehearsalPages(Pages pages, Rehearsals rehearsals) {
        this.pages = pages;
        this.rehearsals = rehearsals;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/rehearsal", ctx -> show(ctx, form()));
        routes.post("/rehearsal", this::start);
        routes.post("/rehearsal/stop", this::stop);
        new RehearsalFiles(pages, rehearsals).addTo(routes);
    }

    /** The form as it was sent last, so that a number is changed without typing all anew. */
    private Entered form() {
        Entered fresh = RehearsalEntry.fresh(newest(), zone());
        return RehearsalState.order(rehearsals.state())
                .map(order -> {
                    Map<String, String> values = new HashMap<>(fresh.values());
                    values.put("first", order.first().toString());
                    values.put("last", order.last().toString());
                    values.put("every", String.valueOf(order.days().every().toMinutes()));
                    values.put("text", order.text());
                    values.put("beside", order.besideRunning() || order.text().isBlank() ? "yes" : "");
                    return Entered.fresh(values);
                })
                .orElse(fresh);
    }

    private void start(Context ctx) {
        Map<String, List<String>> sent = new HashMap<>(ctx.formParamMap());
        UploadedText.of(ctx, "file").ifPresent(text -> sent.put("text", List.of(text)));
        // Fields are stripped, which would move the first line of a text out of line with the others.
        String text = String.join("", sent.getOrDefault("text", List.of()));
        Fields fields = new Fields(sent, zone(), pages.now());
        try {
            List<Rule> rules = rehearsals.changed(text);
            rehearsals.start(RehearsalEntry.read(fields, rules, newest(), zone()));
            ctx.redirect("/rehearsal", HttpStatus.SEE_OTHER);
        } catch (RefusedInputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            Map<String, String> values = new HashMap<>(fields.values());
            values.put("text", text);
            show(ctx, new Entered("rehearsal", values, refused.faults()));
        }
    }

    private void stop(Context ctx) {
        rehearsals.stop();
        ctx.redirect("/rehearsal", HttpStatus.SEE_OTHER);
    }

    private void show(Context ctx, Entered entered) {
        pages.show(ctx, "rehearsal", "Rehearsal", RehearsalPage.of(pages.watch().board(), rehearsals.state(), entered));
    }

    private Instant newest() {
        return pages.watch().board().newestReading().orElseGet(pages::now);
    }

    private ZoneId zone() {
        return pages.watch().board().zone();
    }
}
