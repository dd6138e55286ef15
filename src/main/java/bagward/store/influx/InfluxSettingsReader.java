package bagward.store.influx;

import bagward.document.Secrets;
import bagward.document.Section;
import bagward.fault.ImpossibleValueException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Reads from the configuration where InfluxDB is. Keys of the mapping {@code influxdb}:
 *
 * <ul>
 *   <li>{@code url}: http://host:8086, or https://host:8086 with TLS
 *   <li>{@code database}: name of the database, which must be Bagward's own
 *   <li>{@code retention-policy}: the default one of the database if left out
 *   <li>{@code user} with {@code password-from} or {@code password-file}: for a server that asks for a user
 *   <li>{@code token-from} or {@code token-file}: for one that asks for a token instead
 *   <li>{@code ca-file}: certificates (PEM) to trust in place of those of Java
 * </ul>
 */
public final class InfluxSettingsReader {
    private InfluxSettingsReader() {}

    /**
     * Reads it.
     *
     * @param section the mapping {@code influxdb}
     * @param folder what relative paths start from
     * @param secrets passwords and tokens
     * @return empty if anything was refused
     */
    public static Optional<InfluxSettings> read(Section section, Path folder, Secrets secrets) {
        Optional<String> url = section.value("url", InfluxSettingsReader::url);
        String database = section.value("database", InfluxSettingsReader::name).orElse("");
        Optional<String> retentionPolicy = section.findValue("retention-policy", InfluxSettingsReader::name);
        Optional<InfluxLogin> login = login(section, secrets);
        Optional<Path> caFile = section.findText("ca-file").map(folder::resolve);
        if (caFile.isPresent() && url.filter(u -> u.startsWith("https:")).isEmpty()) {
            section.refuse("ca-file", "is of use with TLS only: write the url with https://");
        }
        return section.make(() -> new InfluxSettings(url.orElseThrow(), database, retentionPolicy, login, caFile));
    }

    private static Optional<InfluxLogin> login(Section section, Secrets secrets) {
        Optional<InfluxLogin> user = secrets.user(section).map(u -> new InfluxLogin.User(u.user(), u.password()));
        Optional<InfluxLogin> token = secrets.find(section, "token").map(InfluxSettingsReader::token);
        if (secrets.names(section, "token") && section.has("user")) {
            section.refuse("user", "is one way too many: give a user with a password, or a token");
        }
        return user.or(() -> token);
    }

    private static InfluxLogin token(String secret) {
        return new InfluxLogin.Token(secret);
    }

    private static String name(String text) {
        if (text.chars().anyMatch(Character::isISOControl)) {
            throw new ImpossibleValueException("must be a name without control characters");
        }
        return text;
    }

    private static String url(String text) {
        try {
            URI uri = new URI(text);
            boolean plain = uri.getHost() != null
                    && uri.getUserInfo() == null
                    && uri.getQuery() == null
                    && uri.getFragment() == null
                    && (uri.getPath().isEmpty() || uri.getPath().equals("/"));
            if (plain && ("http".equals(uri.getScheme()) || "https".equals(uri.getScheme()))) {
                return uri.getScheme() + "://" + uri.getAuthority();
            }
        } catch (URISyntaxException e) {
            throw new ImpossibleValueException("is no address: " + e.getReason());
        }
        throw new ImpossibleValueException("must be http://host:port, or https://host:port with TLS; user, password and"
                + " database have keys of their own");
    }
}
