package bagward.store.influx;

import java.nio.charset.StandardCharsets;
import okhttp3.Credentials;

/** Who Bagward is to InfluxDB. */
public sealed interface InfluxLogin {
    /** The value of the header {@code Authorization}. */
    String header();

    /**
     * A user with a password, sent as HTTP Basic authentication.
     *
     * @param name name
     * @param password password; never shown
     */
    record User(String name, String password) implements InfluxLogin {
        /** In UTF-8, as the server reads it; the client library would send ISO 8859-1. */
        @Override
        public String header() {
            return Credentials.basic(name, password, StandardCharsets.UTF_8);
        }

        @Override
        public String toString() {
            return "user '" + name + "'";
        }
    }

    /**
     * A token, sent as {@code Authorization: Token}.
     *
     * @param secret the token; never shown
     */
    record Token(String secret) implements InfluxLogin {
        @Override
        public String header() {
            return "Token " + secret;
        }

        @Override
        public String toString() {
            return "the token";
        }
    }
}
