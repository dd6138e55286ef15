package bagward.site;

import bagward.fault.RefusedInputException;
import bagward.message.ChannelName;
import bagward.notify.ChannelState;
import bagward.notify.DeliveryDesk;
import bagward.site.form.Fields;
import bagward.site.page.DeliveriesPage;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;

/** How messages reach people: every channel with its state and a trial, and the newest deliveries. */
final class DeliveryPages {
    private static final int NEWEST = 60;

    private final Pages pages;
    private final DeliveryDesk deliveries;

    DeliveryPages(Pages pages, DeliveryDesk deliveries) {
        this.pages = pages;
        this.deliveries = deliveries;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/deliveries", this::show);
        routes.post("/deliveries/trial", this::tryOut);
        new AnswerPages(pages, deliveries).addTo(routes);
    }

    private void show(Context ctx) {
        DeliveriesPage page = DeliveriesPage.of(
                deliveries.channels(),
                deliveries.newest(NEWEST),
                deliveries.signsOfLife(),
                pages.watch().board().zone());
        pages.show(ctx, "deliveries", "Deliveries", page);
    }

    private void tryOut(Context ctx) {
        Fields fields = new Fields(ctx.formParamMap(), pages.watch().board().zone(), pages.now());
        try {
            String by = Worker.name(ctx, fields);
            fields.check();
            if (!deliveries.tryOut(channel(fields.sent("channel")), by)) {
                throw new NotFoundResponse();
            }
            ctx.redirect("/deliveries?done=" + Notice.TRIAL.key(), HttpStatus.SEE_OTHER);
        } catch (RefusedInputException nameless) {
            ctx.redirect("/you", HttpStatus.SEE_OTHER);
        }
    }

    private ChannelName channel(String name) {
        return deliveries.channels().stream()
                .map(ChannelState::name)
                .filter(known -> known.value().equals(name))
                .findFirst()
                .orElseThrow(NotFoundResponse::new);
    }
}
