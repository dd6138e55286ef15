package bagward.site;

import bagward.alarm.AlarmKey;
import bagward.message.Message;
import bagward.notify.DeliveryDesk;
import bagward.site.page.AnswerPage;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The page behind the link in a message: it shows the alarms of that message and confirms them with one button. Opening it
 * changes nothing, for mail programs open links by themselves.
 */
final class AnswerPages {
    private final Pages pages;
    private final DeliveryDesk deliveries;

    AnswerPages(Pages pages, DeliveryDesk deliveries) {
        this.pages = pages;
        this.deliveries = deliveries;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/answer/{token}", this::show);
        routes.post("/answer/{token}", this::confirm);
    }

    private void show(Context ctx) {
        pages.show(ctx, "answer", "Seen it?", page(ctx));
    }

    private void confirm(Context ctx) {
        AnswerPage page = page(ctx);
        Set<AlarmKey> open = page.lines().stream()
                .filter(AnswerPage.Line::open)
                .map(line -> line.told().alarm())
                .collect(Collectors.toSet());
        Notice notice = pages.watch().acknowledge(open, page.person()).isEmpty() ? Notice.GONE : Notice.ACKNOWLEDGED;
        ctx.redirect(page.address() + "?done=" + notice.key(), HttpStatus.SEE_OTHER);
    }

    private AnswerPage page(Context ctx) {
        String token = ctx.pathParam("token");
        Message message = deliveries.answered(token).orElseThrow(NotFoundResponse::new);
        return AnswerPage.of(pages.watch().board(), pages.watch().rules(), message, "/answer/" + token);
    }
}
