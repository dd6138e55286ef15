package bagward.site;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Who works at a screen: a name that the browser keeps. It is no login and opens no door. */
final class NameCookie {
    /** Longest name that is kept. */
    static final int LONGEST = 60;

    private static final String NAME = "bagward-name";
    private static final int YEAR_SECONDS = 365 * 24 * 3600;

    private NameCookie() {}

    static Optional<String> read(Context ctx) {
        return Optional.ofNullable(ctx.cookie(NAME)).flatMap(NameCookie::decode);
    }

    static void write(Context ctx, String name) {
        String encoded = URLEncoder.encode(name, StandardCharsets.UTF_8);
        ctx.cookie(new Cookie(NAME, encoded, "/", YEAR_SECONDS, false, true, null, SameSite.STRICT));
    }

    private static Optional<String> decode(String encoded) {
        try {
            return Optional.of(
                            URLDecoder.decode(encoded, StandardCharsets.UTF_8).strip())
                    .filter(n -> !n.isBlank() && n.length() <= LONGEST)
                    .filter(n -> n.chars().noneMatch(Character::isISOControl));
        } catch (IllegalArgumentException notEncoded) {
            return Optional.empty();
        }
    }
}
