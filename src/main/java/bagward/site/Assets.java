package bagward.site;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Style sheets, script and icon, all our own, from the program file. */
final class Assets {
    private final Asset style = packaged("bagward.css", "text/css; charset=utf-8");
    private final Asset wallStyle = packaged("wall.css", "text/css; charset=utf-8");
    private final Asset script = packaged("live.js", "text/javascript; charset=utf-8");
    private final Asset icon = packaged("icon.svg", "image/svg+xml; charset=utf-8");
    private final Asset wallSizes;

    Assets(WallScreen wall) {
        wallSizes = asset(wall.styleSheet().getBytes(StandardCharsets.UTF_8), "text/css; charset=utf-8");
    }

    void addTo(RoutesConfig routes) {
        routes.get("/assets/bagward.css", style::answer);
        routes.get("/assets/wall.css", wallStyle::answer);
        routes.get("/assets/wall-sizes.css", wallSizes::answer);
        routes.get("/assets/live.js", script::answer);
        routes.get("/assets/icon.svg", icon::answer);
        routes.get("/favicon.ico", icon::answer);
    }

    private static Asset packaged(String name, String type) {
        try (InputStream stream = Assets.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException("the program file lacks " + name + ": build it again");
            }
            return asset(stream.readAllBytes(), type);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Asset asset(byte[] bytes, String type) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            return new Asset(bytes, type, '"' + HexFormat.of().formatHex(digest, 0, 8) + '"');
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    private static final class Asset {
        private final byte[] bytes;
        private final String type;
        private final String tag;

        Asset(byte[] bytes, String type, String tag) {
            this.bytes = bytes;
            this.type = type;
            this.tag = tag;
        }

        void answer(Context ctx) {
            ctx.header("Cache-Control", "no-cache").header("ETag", tag).contentType(type);
            if (tag.equals(ctx.header("If-None-Match"))) {
                ctx.status(304);
            } else {
                ctx.result(bytes);
            }
        }
    }
}
