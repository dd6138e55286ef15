package bagward.document;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Passwords and tokens. They never stand in a document: a key with the ending {@code -from} names an environment variable,
 * one with the ending {@code -file} a file whose first line is the secret.
 */
public final class Secrets {
    private static final String FROM = "-from";
    private static final String FILE = "-file";

    private final Map<String, String> environment;
    private final Function<String, Optional<String>> files;

    /**
     * Where secrets come from.
     *
     * @param environment variables by name
     * @param files the text of a file by its path; empty if it cannot be read
     */
    public Secrets(Map<String, String> environment, Function<String, Optional<String>> files) {
        this.environment = Map.copyOf(environment);
        this.files = files;
    }

    /** Secrets of the environment only. */
    public static Secrets of(Map<String, String> environment) {
        return new Secrets(environment, path -> Optional.empty());
    }

    /**
     * A name and what proves it.
     *
     * @param user name
     * @param password password; never shown
     */
    public record User(String user, String password) {
        @Override
        public String toString() {
            return user + " (password not shown)";
        }
    }

    /** Whether a secret is named. */
    public boolean names(Section section, String key) {
        boolean from = section.has(key + FROM);
        return section.has(key + FILE) || from;
    }

    /** A secret; empty if none is named or, with a fault, none is found. */
    public Optional<String> find(Section section, String key) {
        Optional<String> variable = section.findText(key + FROM);
        Optional<String> file = section.findText(key + FILE);
        if (variable.isPresent() && file.isPresent()) {
            section.refuse(key + FILE, "is one way too many: give " + key + FROM + " or " + key + FILE);
            return Optional.empty();
        }
        if (variable.isPresent()) {
            return sound(
                    section,
                    key + FROM,
                    variable.map(environment::get),
                    "must name an environment variable that is set",
                    "Set it before starting Bagward.");
        }
        return file.isEmpty()
                ? file
                : sound(
                        section,
                        key + FILE,
                        file.flatMap(files).flatMap(text -> text.lines().findFirst()),
                        "must name a file with the secret in its first line",
                        "Make it readable for the user of Bagward and for nobody else.");
    }

    /** The keys {@code user} and {@code password-...}, which go together; empty if they are missing or refused. */
    public Optional<User> user(Section section) {
        Optional<String> user = section.findText("user");
        boolean password = names(section, "password");
        if (user.isEmpty() == password) {
            section.refuse(
                    password ? "user" : "password" + FROM,
                    "user and password-from (or password-file) go together: give both");
            return Optional.empty();
        }
        return find(section, "password").map(secret -> new User(user.orElseThrow(), secret));
    }

    private static Optional<String> sound(
            Section section, String key, Optional<String> found, String rule, String remedy) {
        Optional<String> secret = found.filter(text -> !text.isEmpty());
        if (secret.isEmpty()) {
            section.refuse(key, rule, remedy);
        } else if (secret.get().chars().anyMatch(Character::isISOControl)) {
            section.refuse(key, "must hold a secret without control characters");
            return Optional.empty();
        }
        return secret;
    }
}
