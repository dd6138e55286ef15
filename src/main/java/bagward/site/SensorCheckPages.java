package bagward.site;

import bagward.board.Board;
import bagward.board.SensorView;
import bagward.climate.ReadingSource;
import bagward.climate.SaltCheck;
import bagward.fault.RefusedInputException;
import bagward.site.form.Entered;
import bagward.site.form.Fields;
import bagward.site.form.SaltCheckEntry;
import bagward.site.page.SensorPage;
import bagward.site.view.Words;
import bagward.station.Sensor;
import bagward.station.SensorDay;
import bagward.store.KeptCheck.Withdrawal;
import bagward.units.Quantity;
import bagward.watch.SensorChecks;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The page of one sensor, and its check over salts. */
final class SensorCheckPages {
    private static final int DAYS = 7;
    private static final int LONGEST_REASON = 200;

    private final Pages pages;
    private final SensorChecks checks;
    private final ReadingSource raw;

    SensorCheckPages(Pages pages, SensorChecks checks, ReadingSource raw) {
        this.pages = pages;
        this.checks = checks;
        this.raw = raw;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/sensor/{id}", ctx -> show(ctx, Optional.empty(), fresh()));
        routes.post("/sensor/{id}/check", this::look);
        routes.post("/sensor/{id}/keep", this::keep);
        routes.post("/sensor/{id}/withdraw", this::withdraw);
    }

    private Entered fresh() {
        String now = Words.field(pages.now(), board().zone());
        return Entered.fresh(
                Map.of("salt_low", "sodium-chloride", "salt_high", "potassium-nitrate", "at_low", now, "at_high", now));
    }

    private void look(Context ctx) {
        Fields fields = fields(ctx);
        try {
            SaltCheck found = SaltCheckEntry.read(fields, sensor(ctx), raw);
            show(ctx, Optional.of(found), Entered.fresh(fields.values()));
        } catch (RefusedInputException refused) {
            refuse(ctx, "check", fields, refused);
        }
    }

    private void keep(Context ctx) {
        Fields fields = fields(ctx);
        try {
            String by = Worker.name(ctx, fields);
            checks.keep(SaltCheckEntry.read(fields, sensor(ctx), raw), by, pages.now());
            done(ctx, Notice.CHECKED);
        } catch (RefusedInputException refused) {
            refuse(ctx, "check", fields, refused);
        }
    }

    private void withdraw(Context ctx) {
        Fields fields = fields(ctx);
        try {
            String by = Worker.name(ctx, fields);
            String why = fields.neededText("why", LONGEST_REASON);
            Optional<Long> number = fields.needed("number", Long::valueOf);
            fields.check();
            Withdrawal withdrawal = new Withdrawal(pages.now(), by, why);
            boolean there = number.filter(n -> isOf(sensor(ctx), n))
                    .map(n -> checks.withdraw(n, withdrawal))
                    .orElse(false);
            done(ctx, there ? Notice.WITHDRAWN : Notice.NO_CHECK);
        } catch (RefusedInputException refused) {
            refuse(ctx, "withdraw", fields, refused);
        }
    }

    private boolean isOf(Sensor sensor, long number) {
        return checks.of(sensor.id()).stream().anyMatch(kept -> kept.id() == number);
    }

    private void done(Context ctx, Notice notice) {
        ctx.redirect("/sensor/" + sensor(ctx).id() + "?done=" + notice.key(), HttpStatus.SEE_OTHER);
    }

    private void refuse(Context ctx, String form, Fields fields, RefusedInputException refused) {
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, Optional.empty(), new Entered(form, fields.values(), refused.faults()));
    }

    private void show(Context ctx, Optional<SaltCheck> found, Entered entered) {
        SensorView view = view(ctx);
        Sensor sensor = view.sensor();
        SensorPage page = SensorPage.of(
                board(),
                view,
                pages.now(),
                SensorDay.last(sensor, raw, pages.now(), board().zone(), DAYS),
                sensor.quantities().contains(Quantity.HUMIDITY) ? checks.of(sensor.id()) : List.of(),
                found,
                entered);
        pages.show(ctx, "sensor", "Sensor " + sensor.name(), page);
    }

    private Fields fields(Context ctx) {
        return new Fields(ctx.formParamMap(), board().zone(), pages.now());
    }

    private Sensor sensor(Context ctx) {
        return view(ctx).sensor();
    }

    private SensorView view(Context ctx) {
        return board().sensors().stream()
                .filter(v -> v.sensor().id().value().equals(ctx.pathParam("id")))
                .findFirst()
                .orElseThrow(NotFoundResponse::new);
    }

    private Board board() {
        return pages.watch().board();
    }
}
