package bagward.site;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.util.JavalinBindException;

/** The pages, the JSON interface and the live updates, on one TCP port. */
public final class Site implements AutoCloseable {
    private static final int LARGEST_HEADER = 8192;

    private final SiteSettings settings;
    private final Pages pages;
    private final LiveFeed live;
    private final SiteParts parts;
    private final Javalin server;

    /**
     * A site that is not started yet.
     *
     * @param settings what the configuration says
     * @param parts the running parts that pages show and change
     */
    public Site(SiteSettings settings, SiteParts parts) {
        this.settings = settings;
        this.parts = parts;
        this.pages = new Pages(parts.watch(), parts.clock(), parts.pace());
        this.live = new LiveFeed(parts.watch(), () -> pages.freshness().sentence());
        this.server = Javalin.create(this::configure);
    }

    private void configure(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.http.maxRequestSize = SafeAnswers.LARGEST_IMPORT;
        config.jetty.host = settings.host();
        config.jetty.port = settings.port();
        config.jetty.modifyHttpConfiguration(http -> {
            http.setRequestHeaderSize(LARGEST_HEADER);
            http.setSendServerVersion(false);
        });
        addRoutes(config.routes);
    }

    private void addRoutes(RoutesConfig routes) {
        routes.before(SafeAnswers::addHeaders);
        routes.before(OwnOrigin::check);
        routes.before(SafeAnswers::checkSize);
        new Assets(settings.wall()).addTo(routes);
        new StartPages(pages, settings, parts.pollen()).addTo(routes);
        HeadPages heads = new HeadPages(pages, settings, parts.seasons(), parts.lots());
        heads.addTo(routes);
        new EstimatePages(pages, heads, settings).addTo(routes);
        new HeadEntries(pages, heads).addTo(routes);
        new PutOnPages(pages, settings).addTo(routes);
        new ImportPages(pages).addTo(routes);
        new AlarmPages(pages, parts.journal()).addTo(routes);
        new PollenPages(pages, parts.pollen()).addTo(routes);
        new SensorPages(pages, parts.quarantine()).addTo(routes);
        new SensorCheckPages(pages, parts.checks(), parts.rawReadings()).addTo(routes);
        new DeliveryPages(pages, parts.deliveries()).addTo(routes);
        new CalendarFeed(pages).addTo(routes);
        new SeasonPages(pages, parts.seasons()).addTo(routes);
        new DryingPages(pages).addTo(routes);
        new RehearsalPages(pages, parts.rehearsals()).addTo(routes);
        new PeoplePages(pages).addTo(routes);
        new JsonInterface(pages).addTo(routes);
        new LotInterface(pages, heads, parts.lots()).addTo(routes);
        routes.sse("/live", live::join);
        new ErrorPages(pages).addTo(routes);
    }

    /**
     * Starts to answer.
     *
     * @throws SiteException if the address is taken or does not exist
     */
    public void start() {
        try {
            server.start();
        } catch (JavalinBindException taken) {
            throw new SiteException(
                    "page address " + settings.host() + ":" + settings.port()
                            + " cannot be used: it is taken, not allowed or not of this machine."
                            + " Choose another one in the configuration",
                    taken);
        }
    }

    /** The TCP port that is listened on. */
    public int port() {
        return server.port();
    }

    @Override
    public void close() {
        live.close();
        server.stop();
    }
}
