package bagward.site;

import bagward.bag.Head;
import bagward.bag.RegisterChange;
import bagward.fault.RefusedInputException;
import bagward.site.form.Fields;
import bagward.site.form.HeadEntry;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Locale;

/** Takes what people enter on the page of a head. */
final class HeadEntries {
    private final Pages pages;
    private final HeadPages heads;

    HeadEntries(Pages pages, HeadPages heads) {
        this.pages = pages;
        this.heads = heads;
    }

    void addTo(RoutesConfig routes) {
        routes.post("/bag/{tag}/{action}", this::enter);
    }

    private void enter(Context ctx) {
        Head head = heads.head(ctx);
        String action = ctx.pathParam("action");
        Fields fields = new Fields(ctx.formParamMap(), pages.watch().board().zone(), pages.now());
        try {
            String by = Worker.name(ctx, fields);
            RegisterChange change = HeadEntry.read(action, head.tag(), fields).orElseThrow(NotFoundResponse::new);
            pages.watch().change(List.of(change), by);
            Notice notice = Notice.valueOf(action.toUpperCase(Locale.ROOT).replace('-', '_'));
            ctx.redirect("/bag/" + head.tag() + "?done=" + notice.key(), HttpStatus.SEE_OTHER);
        } catch (RefusedInputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            heads.show(ctx, head, Refusals.entered(action, fields, refused));
        }
    }
}
