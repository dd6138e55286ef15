package bagward.notify;

import bagward.message.ChannelName;
import bagward.store.OutboxStore;
import bagward.store.SqliteStores;
import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;

/**
 * A program that puts messages about five bags and delivers them by mail and webhook until it is killed. Arguments: database
 * file, port of the mail server, port of the web server, number of the first message. It prints the number of each message
 * once it is in the outbox.
 */
final class KilledDeliverer {
    static final ChannelName MAIL = new ChannelName("mail");
    static final ChannelName HOOK = new ChannelName("hook");
    static final int BAGS = 5;

    private KilledDeliverer() {}

    public static void main(String[] arguments) throws InterruptedException {
        try (SqliteStores stores = SqliteStores.open(Path.of(arguments[0]), Clock.systemUTC())) {
            OutboxStore outbox = stores.outbox();
            int mailPort = Integer.parseInt(arguments[1]);
            int webPort = Integer.parseInt(arguments[2]);
            try (Deliveries deliveries = deliveries(Path.of(arguments[0]), outbox, mailPort, webPort)) {
                deliveries.start();
                for (int number = Integer.parseInt(arguments[3]); ; number++) {
                    put(deliveries, number);
                    System.out.println("put " + number);
                    System.out.flush();
                    TimeUnit.MILLISECONDS.sleep(5);
                }
            }
        }
    }

    /** Puts a message twice over, as a watch does that does not know whether it has. */
    static void put(Deliveries deliveries, int number) {
        for (ChannelName channel : List.of(MAIL, HOOK)) {
            for (int again = 0; again < 2; again++) {
                deliveries.put(List.of(Letters.about("T" + number % BAGS, channel + "-" + number, channel)));
            }
        }
    }

    static Deliveries deliveries(Path file, OutboxStore outbox, int mailPort, int webPort) {
        Duration patience = Duration.ofMillis(500);
        MailSettings server = new MailSettings(
                "127.0.0.1",
                mailPort,
                MailSettings.Security.NONE,
                Optional.empty(),
                "bagward@example.org",
                Optional.empty(),
                patience);
        WebhookSettings hook = new WebhookSettings(
                URI.create("http://127.0.0.1:" + webPort + "/hook"),
                WebhookSecret.parse("whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw"),
                Optional.empty(),
                patience);
        List<Channel> channels = List.of(
                new MailChannel(MAIL, "ruth@example.org", server), new WebhookChannel(HOOK, hook, Clock.systemUTC()));
        return new Deliveries(new Deliveries.Parts(
                Clock.systemUTC(),
                outbox,
                "Alder Bank",
                ZoneOffset.UTC,
                channels,
                Set.of(),
                Optional.empty(),
                AnswerLinks.withKeyOf(file.resolveSibling("link.key")),
                Signs.none(),
                quick(),
                new SplittableRandom(1)));
    }

    private static RetryPlan quick() {
        bagward.collector.Backoff soon = new bagward.collector.Backoff(Duration.ofMillis(20), Duration.ofMillis(200));
        return new RetryPlan(soon, soon, soon, Duration.ofDays(30_000), 0.25);
    }
}
