package bagward.site;

import bagward.site.page.FrontPage;
import bagward.site.page.WallPage;
import bagward.watch.PollenWatch;
import io.javalin.config.RoutesConfig;

/** The front page and the wall. */
final class StartPages {
    /** Share of the height of the wall that the list may take, per cent. */
    private static final double LIST_HEIGHT = 76;

    /** How much more of it the banner takes that says that a picture is old, per cent. */
    private static final double BANNER_HEIGHT = 9;

    /** Height of one line to do for each unit of its letters. */
    private static final double LINE_SHARE = 2.05;

    private final Pages pages;
    private final PollenWatch pollen;
    private final WallScreen wall;
    private final double dampLimit;

    StartPages(Pages pages, SiteSettings settings, PollenWatch pollen) {
        this.wall = settings.wall();
        this.dampLimit = settings.dampLimitPercent();
        this.pollen = pollen;
        this.pages = pages;
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
                                wallLines(),
                                PollenView.brief(pages.watch().board(), pollen.newest()))));
    }

    private int wallLines() {
        double height = pages.freshness().old() ? LIST_HEIGHT - BANNER_HEIGHT : LIST_HEIGHT;
        return (int) Math.max(3, height / (wall.farPercent() * LINE_SHARE));
    }
}
