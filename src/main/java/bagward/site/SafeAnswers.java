package bagward.site;

import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.Set;

/** Headers that every answer carries, and limits that every request keeps. */
final class SafeAnswers {
    /** Largest request of all, an import file included, bytes. */
    static final long LARGEST_IMPORT = 1024 * 1024;

    /** Largest request elsewhere, bytes. */
    static final int LARGEST_FORM = 32 * 1024;

    /** What is larger than this is cut off while it is being sent, bytes. */
    private static final long LARGEST_TAKEN = 16L * 1024 * 1024;

    private static final Set<String> TAKE_FILES = Set.of("/import", "/rehearsal");

    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; "
            + "img-src 'self' data:; connect-src 'self'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'";

    private SafeAnswers() {}

    static void addHeaders(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY)
                .header("X-Content-Type-Options", "nosniff")
                .header("X-Frame-Options", "DENY")
                .header("Referrer-Policy", "same-origin")
                .header("Cross-Origin-Opener-Policy", "same-origin")
                .header("Cross-Origin-Resource-Policy", "same-origin")
                .header("Permissions-Policy", "camera=(), geolocation=(), microphone=()");
        ctx.contentType("text/plain; charset=utf-8");
    }

    static void checkSize(Context ctx) {
        boolean form = !TAKE_FILES.contains(ctx.path());
        if (form
                && (ctx.contentLength() > LARGEST_FORM
                        || (carriesBody(ctx) && ctx.bodyAsBytes().length > LARGEST_FORM))) {
            refuse(ctx);
        }
        if (ctx.contentLength() > LARGEST_IMPORT) {
            refuse(ctx);
        }
    }

    /** Takes in what is still on its way: a browser that is cut off while it sends shows no answer, but a broken line. */
    private static void refuse(Context ctx) {
        try {
            byte[] rest = new byte[LARGEST_FORM];
            long taken = 0;
            for (int n = ctx.bodyInputStream().read(rest);
                    n >= 0 && taken < LARGEST_TAKEN;
                    n = ctx.bodyInputStream().read(rest)) {
                taken += n;
            }
        } catch (IOException gone) {
            // The sender has left; nobody is there to be answered.
        }
        throw new ContentTooLargeResponse();
    }

    private static boolean carriesBody(Context ctx) {
        return ctx.contentLength() > 0 || ctx.header("Transfer-Encoding") != null;
    }
}
