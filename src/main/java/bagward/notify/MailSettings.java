package bagward.notify;

import bagward.collector.Credentials;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;

/**
 * The mail server that takes our mail.
 *
 * @param host name of the server
 * @param port TCP port
 * @param security how the connection is protected
 * @param credentials user and password, if it wants them
 * @param from address that mail comes from
 * @param caFile certificates (PEM) that are trusted in place of those of Java
 * @param patience how long each step may take
 */
public record MailSettings(
        String host,
        int port,
        Security security,
        Optional<Credentials> credentials,
        String from,
        Optional<Path> caFile,
        Duration patience) {
    /** How a connection is protected. */
    public enum Security {
        /** TLS is asked for after connecting (STARTTLS), and mail is not sent without it. */
        STARTTLS,
        /** TLS from the first byte on. */
        TLS,
        /** Not at all: for a server on this machine only. */
        NONE
    }
}
