package bagward.demo;

import java.util.Optional;

/**
 * The broker to publish to.
 *
 * @param url such as {@code tcp://127.0.0.1:1883}
 * @param user user name, if the broker wants one
 * @param password password, if the broker wants one
 */
public record DemoBroker(String url, Optional<String> user, Optional<String> password) {
    /** A broker that lets everybody in. */
    public static DemoBroker open(String url) {
        return new DemoBroker(url, Optional.empty(), Optional.empty());
    }

    @Override
    public String toString() {
        return url;
    }
}
