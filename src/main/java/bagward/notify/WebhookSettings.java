package bagward.notify;

import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;

/**
 * A program that takes messages over HTTP.
 *
 * @param url where they are posted to
 * @param secret what they are signed with
 * @param caFile certificates (PEM) that are trusted in place of those of Java
 * @param patience how long an answer may take
 */
public record WebhookSettings(URI url, WebhookSecret secret, Optional<Path> caFile, Duration patience) {}
