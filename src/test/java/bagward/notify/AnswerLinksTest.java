package bagward.notify;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AnswerLinksTest {
    private static final Instant NOON = Instant.parse("2026-05-01T12:00:00Z");

    private final Path folder;
    private final AnswerLinks links;

    AnswerLinksTest(@TempDir Path folder) {
        this.folder = folder;
        this.links = AnswerLinks.withKeyOf(folder.resolve("link.key"));
    }

    @Test
    void a_link_leads_to_its_parcel_for_a_week_also_after_a_restart() {
        String token = links.token(42, NOON);
        assertEquals(Optional.of(42L), links.parcel(token, NOON.plus(AnswerLinks.LIFE)));
        assertEquals(
                Optional.empty(),
                links.parcel(token, NOON.plus(AnswerLinks.LIFE).plusSeconds(1)));
        assertEquals(
                Optional.of(42L),
                AnswerLinks.withKeyOf(folder.resolve("link.key")).parcel(token, NOON));
        assertEquals(
                "https://bagward.example:8420/answer/" + token,
                links.address(URI.create("https://bagward.example:8420"), 42, NOON)
                        .toString());
    }

    @Test
    void no_part_of_a_link_can_be_changed() {
        String token = links.token(42, NOON);
        for (int i = 0; i < token.length(); i++) {
            char other = token.charAt(i) == '1' ? '2' : '1';
            String changed = token.substring(0, i) + other + token.substring(i + 1);
            assertEquals(Optional.empty(), links.parcel(changed, NOON), changed);
        }
        assertEquals(Optional.empty(), links.parcel("", NOON));
        assertEquals(
                Optional.empty(),
                AnswerLinks.withKeyOf(folder.resolve("other.key")).parcel(token, NOON));
    }

    @Test
    void the_key_can_be_read_by_its_user_only() throws IOException {
        assertEquals(
                PosixFilePermissions.fromString("rw-------"),
                Files.getPosixFilePermissions(folder.resolve("link.key")));
    }
}
