package bagward.site;

import bagward.site.page.ErrorPage;
import bagward.store.StoreException;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Pages for what went wrong. They say what to do and nothing about the inside; the log says the rest. */
final class ErrorPages {
    private static final Logger LOG = LoggerFactory.getLogger(ErrorPages.class);

    private final Pages pages;

    ErrorPages(Pages pages) {
        this.pages = pages;
    }

    void addTo(RoutesConfig routes) {
        routes.exception(HttpResponseException.class, (refused, ctx) -> show(ctx, refused.getStatus()));
        routes.exception(StoreException.class, (down, ctx) -> {
            LOG.error("an entry could not be stored", down);
            show(ctx, 503);
        });
        routes.exception(Exception.class, (defect, ctx) -> {
            LOG.error("page {} {} failed", ctx.method(), ctx.path(), defect);
            show(ctx, 500);
        });
        routes.error(404, ctx -> show(ctx, 404));
    }

    private void show(Context ctx, int status) {
        ctx.status(status);
        try {
            pages.show(ctx, "error", ErrorPage.of(status).what(), ErrorPage.of(status));
        } catch (RuntimeException noBoard) {
            LOG.error("not even the error page could be made", noBoard);
            ctx.contentType("text/plain; charset=utf-8")
                    .result(ErrorPage.of(status).what());
        }
    }
}
