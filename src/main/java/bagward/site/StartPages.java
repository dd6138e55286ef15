package bagward.site;

import bagward.site.page.FrontPage;
import bagward.site.page.WallPage;
import bagward.watch.PollenWatch;
import io.javalin.config.RoutesConfig;

/** The front page and the wall. */
final class StartPages {
    /** Share of the height of the wall that the list may take, per cent. */
    private static final double LIST_HEIGHT = 76;

    /** Height of one line to do for each unit of its letters. */
    private static final double LINE_SHARE = 2.05;

    private final Pages pages;
    private final PollenWatch pollen;
    private final int wallLines;
    private final double dampLimit;

    StartPages(Pages pages, SiteSettings settings, PollenWatch pollen) {
        WallScreen wall = settings.wall();
        this.dampLimit = settings.dampLimitPercent();
        this.pollen = pollen;
        this.pages = pages;
        this.wallLines = (int) Math.max(3, LIST_HEIGHT / (wall.farPercent() * LINE_SHARE));
    }

    void addTo(RoutesConfig routes) {
        routes.get(
                "/",
                ctx -> pages.show(
                        ctx,
                        "front",
                        "What to do now",
                        FrontPage.of(
                                pages.watch().board(),
                                dampLimit,
                                PollenView.brief(pages.watch().board(), pollen.newest()))));
        routes.get(
                "/wall",
                ctx -> pages.show(
                        ctx,
                        "wall",
                        "Wall",
                        WallPage.of(
                                pages.watch().board(),
                                wallLines,
                                PollenView.brief(pages.watch().board(), pollen.newest()))));
    }
}
