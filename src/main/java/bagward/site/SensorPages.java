package bagward.site;

import bagward.board.Board;
import bagward.site.page.QuarantinePage;
import bagward.site.page.SensorsPage;
import bagward.store.QuarantineStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;

/** Sensors, topics that nobody configured, and messages that could not be used. */
final class SensorPages {
    private static final Duration HEARD_WITHIN = Duration.ofDays(1);
    private static final int NEWEST = 100;

    private final Pages pages;
    private final QuarantineStore quarantine;

    SensorPages(Pages pages, QuarantineStore quarantine) {
        this.pages = pages;
        this.quarantine = quarantine;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/sensors", this::sensors);
        routes.get("/quarantine", this::quarantine);
    }

    private void sensors(Context ctx) {
        Board board = pages.watch().board();
        SensorsPage page = SensorsPage.of(
                board,
                quarantine.heardSince(pages.now().minus(HEARD_WITHIN)),
                quarantine.quarantinedCount(),
                pages.now());
        pages.show(ctx, "sensors", "Sensors", page);
    }

    private void quarantine(Context ctx) {
        QuarantinePage page = QuarantinePage.of(
                quarantine.quarantinedCount(),
                quarantine.newestQuarantined(NEWEST),
                pages.watch().board().zone());
        pages.show(ctx, "quarantine", "Quarantine", page);
    }
}
