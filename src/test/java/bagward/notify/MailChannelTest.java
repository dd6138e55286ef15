package bagward.notify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.collector.Credentials;
import bagward.store.TestAuthority;
import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.time.Duration;
import java.util.Date;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Mail to real servers. */
class MailChannelTest {
    private static final Duration PATIENCE = Duration.ofMillis(700);

    private final Outgoing letter = Letters.outgoing(Letters.about("T1", "m1"));

    private static MailChannel channel(
            int port, MailSettings.Security security, Optional<Credentials> credentials, Optional<Path> caFile) {
        return new MailChannel(
                Letters.CHANNEL,
                "ruth@example.org",
                new MailSettings("127.0.0.1", port, security, credentials, "bagward@example.org", caFile, PATIENCE));
    }

    private static MailChannel plain(int port) {
        return channel(port, MailSettings.Security.NONE, Optional.empty(), Optional.empty());
    }

    @Test
    void a_message_arrives_as_plain_text_with_its_time_its_link_and_a_lasting_id() throws Exception {
        GreenMail server = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
        server.setUser("ruth@example.org", "ruth", "s3cret");
        server.start();
        try (MailChannel channel = channel(
                server.getSmtp().getPort(),
                MailSettings.Security.NONE,
                Optional.of(new Credentials("ruth", "s3cret")),
                Optional.empty())) {
            Outgoing linked = new Outgoing(
                    letter.parcel(),
                    letter.station(),
                    letter.zone(),
                    Optional.of(URI.create("https://b.example/answer/7")));
            channel.hand(linked);
            channel.hand(linked);
            MimeMessage[] received = server.getReceivedMessages();
            assertEquals(2, received.length);
            MimeMessage mail = received[0];
            assertEquals("Bag T1 damp: 93 %RH – Alder Bank", mail.getSubject());
            assertEquals("ruth@example.org", mail.getAllRecipients()[0].toString());
            assertEquals(Date.from(Letters.NOON), mail.getSentDate());
            String text = ((String) mail.getContent()).replace("\r\n", "\n");
            assertTrue(
                    text.startsWith(
                            "Bag T1 in Häuschen 2.\n.A line that begins with a point.\nOpen it before noon.\n\n"),
                    text);
            assertTrue(text.contains("\nhttps://b.example/answer/7\n"), text);
            assertEquals("auto-generated", mail.getHeader("Auto-Submitted")[0]);
            assertEquals(mail.getMessageID(), received[1].getMessageID(), "mail programs know it as the same");
        } finally {
            server.stop();
        }
    }

    @Test
    void a_server_that_refuses_is_busy_hangs_drops_or_is_away_leaves_the_message_with_us_and_says_why()
            throws Exception {
        try (SmtpServer server = new SmtpServer(null);
                MailChannel channel = plain(server.port())) {
            server.script(number -> SmtpServer.Mood.REFUSES);
            DeliveryException refused = assertThrows(DeliveryException.class, () -> channel.hand(letter));
            assertTrue(refused.refused(), refused.getMessage());
            assertTrue(refused.getMessage().contains("550 5.1.1 unknown here"), refused.getMessage());
            for (SmtpServer.Mood mood :
                    new SmtpServer.Mood[] {SmtpServer.Mood.BUSY, SmtpServer.Mood.HANGS, SmtpServer.Mood.DROPS}) {
                server.script(number -> mood);
                DeliveryException away = assertThrows(DeliveryException.class, () -> channel.hand(letter), mood.name());
                assertFalse(away.refused(), mood + ": " + away.getMessage());
            }
            server.script(number -> SmtpServer.Mood.TAKES);
            int before = server.taken().size();
            channel.hand(letter);
            assertEquals(before + 1, server.taken().size());
            server.stop();
            DeliveryException gone = assertThrows(DeliveryException.class, () -> channel.hand(letter));
            assertTrue(gone.getMessage().contains("127.0.0.1:" + server.port()), gone.getMessage());
        }
    }

    @Test
    void with_starttls_mail_crosses_only_to_a_server_whose_authority_is_trusted(@TempDir Path folder)
            throws IOException, GeneralSecurityException, MessagingException {
        TestAuthority authority = TestAuthority.make(folder);
        try (SmtpServer server = new SmtpServer(authority.server());
                SmtpServer bare = new SmtpServer(null)) {
            Optional<Path> trusted = Optional.of(authority.authorityFile());
            channel(server.port(), MailSettings.Security.STARTTLS, Optional.empty(), trusted)
                    .hand(letter);
            assertEquals(1, server.taken().size());
            MailChannel distrusting =
                    channel(server.port(), MailSettings.Security.STARTTLS, Optional.empty(), Optional.empty());
            assertThrows(DeliveryException.class, () -> distrusting.hand(letter));
            MailChannel unprotected = channel(bare.port(), MailSettings.Security.STARTTLS, Optional.empty(), trusted);
            assertThrows(DeliveryException.class, () -> unprotected.hand(letter));
            assertEquals(1, server.taken().size());
            assertEquals(0, bare.taken().size(), "never in clear");
        }
    }
}
