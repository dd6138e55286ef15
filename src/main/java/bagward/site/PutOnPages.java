package bagward.site;

import bagward.bag.Head;
import bagward.bag.Line;
import bagward.bag.RegisterChange;
import bagward.fault.RefusedInputException;
import bagward.site.form.Entered;
import bagward.site.form.Fields;
import bagward.site.form.PutOnEntry;
import bagward.site.page.BagPage.Choice;
import bagward.site.page.PutOnPage;
import bagward.site.view.Words;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The form for a bag that was put on. */
final class PutOnPages {
    private final Pages pages;
    private final SiteSettings settings;

    PutOnPages(Pages pages, SiteSettings settings) {
        this.pages = pages;
        this.settings = settings;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/put-on", ctx -> show(ctx, fresh(ctx)));
        routes.post("/put-on", this::enter);
    }

    private Entered fresh(Context ctx) {
        String at = Words.field(pages.now(), pages.watch().board().zone());
        String tag = Optional.ofNullable(ctx.queryParam("tag")).orElse("");
        return Entered.fresh(Map.of("at", at, "tag", tag, "kind", "self", "buds", "10"));
    }

    private void enter(Context ctx) {
        Fields fields = new Fields(ctx.formParamMap(), pages.watch().board().zone(), pages.now());
        try {
            String by = Worker.name(ctx, fields);
            RegisterChange change = PutOnEntry.read(fields, by);
            pages.watch().change(List.of(change), by);
            ctx.redirect("/bag/" + change.tag() + "?done=" + Notice.PUT_ON.key(), HttpStatus.SEE_OTHER);
        } catch (RefusedInputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, Refusals.entered("put-on", fields, refused));
        }
    }

    private void show(Context ctx, Entered entered) {
        PutOnPage page = PutOnPage.of(
                pages.watch().board(),
                HeadPages.materials(settings.materials()),
                settings.crops().stream().map(Choice::of).toList(),
                lines(),
                entered);
        pages.show(ctx, "put-on", "Put a bag on", page);
    }

    private List<String> lines() {
        return pages.watch().register().heads().stream()
                .flatMap((Head h) -> Stream.of(h.seedParent(), h.pollenParent()))
                .map(Line::name)
                .distinct()
                .sorted()
                .toList();
    }
}
