package bagward.site;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import java.net.URI;
import java.util.Locale;
import java.util.Optional;

/** Lets only forms of our own pages change anything: other pages in the same browser cannot. */
final class OwnOrigin {
    private OwnOrigin() {}

    /**
     * Refuses a POST that does not come from a page of this site. Programs that are no browser send JSON without an
     * origin; a browser never sends JSON to another site without asking that site first, which ours refuses.
     */
    static void check(Context ctx) {
        if (ctx.method().equals(HandlerType.POST) && !ownPage(ctx) && !program(ctx)) {
            throw new ForbiddenResponse("not from a page of this site");
        }
    }

    private static boolean program(Context ctx) {
        String type = Optional.ofNullable(ctx.contentType()).orElse("");
        return ctx.path().startsWith("/api/")
                && type.toLowerCase(Locale.ROOT).startsWith("application/json")
                && ctx.header("Origin") == null
                && ctx.header("Sec-Fetch-Site") == null;
    }

    private static boolean ownPage(Context ctx) {
        Optional<String> site = Optional.ofNullable(ctx.header("Sec-Fetch-Site"));
        if (site.isPresent() && !site.get().equals("same-origin")) {
            return false;
        }
        Optional<String> origin = Optional.ofNullable(ctx.header("Origin"));
        return origin.isPresent() ? sameHost(origin.get(), ctx.header("Host")) : site.isPresent();
    }

    private static boolean sameHost(String origin, @org.jspecify.annotations.Nullable String host) {
        if (host == null) {
            return false;
        }
        try {
            String authority = URI.create(origin).getAuthority();
            return authority != null && authority.toLowerCase(Locale.ROOT).equals(host.toLowerCase(Locale.ROOT));
        } catch (IllegalArgumentException noAddress) {
            return false;
        }
    }
}
