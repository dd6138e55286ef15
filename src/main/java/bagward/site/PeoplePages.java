package bagward.site;

import bagward.bag.Register;
import bagward.fault.RefusedInputException;
import bagward.site.form.Fields;
import bagward.site.page.AboutPage;
import bagward.site.page.HeadsPage;
import bagward.site.page.YouPage;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;

/** The list of heads, the name of who works here, and what everybody should know. */
final class PeoplePages {
    private final Pages pages;

    PeoplePages(Pages pages) {
        this.pages = pages;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/heads", this::heads);
        routes.get(
                "/about",
                ctx -> pages.show(
                        ctx,
                        "about",
                        "About",
                        new AboutPage(pages.watch().board().zone().getId())));
        routes.get(
                "/you",
                ctx -> pages.show(
                        ctx,
                        "you",
                        "Who you are",
                        new YouPage(NameCookie.read(ctx).orElse(""), "")));
        routes.post("/you", this::name);
    }

    private void heads(Context ctx) {
        Register register = pages.watch().register();
        pages.show(ctx, "heads", "Heads", HeadsPage.of(register, pages.watch().board()));
    }

    private void name(Context ctx) {
        Fields fields = new Fields(ctx.formParamMap(), pages.watch().board().zone(), pages.now());
        try {
            fields.neededText("by", NameCookie.LONGEST);
            fields.check();
            Worker.name(ctx, fields);
            fields.check();
            ctx.redirect("/?done=" + Notice.NAME.key(), HttpStatus.SEE_OTHER);
        } catch (RefusedInputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            pages.show(
                    ctx,
                    "you",
                    "Who you are",
                    new YouPage(fields.sent("by"), refused.faults().get(0).rule()));
        }
    }
}
