package bagward.notify;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.store.SqliteStores;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A process that is killed while it delivers, to servers that fail, hang and come back: every message arrives by every
 * channel at least once, in order for each bag. BAGWARD_KILLS says how often it is killed; 10 if it is not set.
 */
class KilledDelivererIT {
    private static final int KILLS = Integer.parseInt(System.getenv().getOrDefault("BAGWARD_KILLS", "10"));
    private static final Pattern MAIL_ID = Pattern.compile("(?m)^Message-ID: (<.*>)$");

    private final Path file;
    private final List<String> posted = Collections.synchronizedList(new ArrayList<>());
    private final AtomicInteger posts = new AtomicInteger();

    KilledDelivererIT(@TempDir Path folder) {
        file = folder.resolve("bagward.db");
    }

    @Test
    void no_message_is_lost_over_the_kills_and_the_order_for_each_bag_is_kept() throws Exception {
        Random random = new Random(7);
        HttpServer web = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        web.setExecutor(Executors.newCachedThreadPool());
        web.createContext("/hook", this::answer);
        web.start();
        try (SmtpServer mail = new SmtpServer(null)) {
            mail.script(KilledDelivererIT::mood);
            int next = 0;
            for (int kill = 0; kill < KILLS; kill++) {
                next = deliverUntilKilled(mail.port(), web.getAddress().getPort(), next, 3 + random.nextInt(12));
            }
            mail.script(number -> SmtpServer.Mood.TAKES);
            deliverTheRest(mail.port(), web.getAddress().getPort());
            assertTrue(next > 3 * KILLS / 2, "too little was put to mean anything: " + next);
            check("hook", posted, next);
            check("mail", mailIds(mail.taken()), next);
        } finally {
            web.stop(0);
        }
    }

    /** Every seventh connection is refused at the mail, every eleventh hangs, every thirteenth drops after the mail. */
    private static SmtpServer.Mood mood(int number) {
        if (number % 13 == 0) {
            return SmtpServer.Mood.DROPS;
        }
        if (number % 11 == 0) {
            return SmtpServer.Mood.HANGS;
        }
        return number % 7 == 0 ? SmtpServer.Mood.BUSY : SmtpServer.Mood.TAKES;
    }

    private void answer(HttpExchange exchange) throws IOException {
        int number = posts.incrementAndGet();
        exchange.getRequestBody().readAllBytes();
        String id = exchange.getRequestHeaders().getFirst("webhook-id");
        boolean takes = number % 5 != 0;
        if (takes) {
            posted.add(id);
        }
        // Every seventeenth is taken, but the answer does not arrive.
        if (number % 17 != 0) {
            exchange.sendResponseHeaders(takes ? 204 : 503, -1);
        }
        exchange.close();
    }

    /** Returns the number of the message after the last that was said to be in the outbox. */
    private int deliverUntilKilled(int mailPort, int webPort, int first, int messages) throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        KilledDeliverer.class.getName(),
                        file.toString(),
                        Integer.toString(mailPort),
                        Integer.toString(webPort),
                        Integer.toString(first))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        int next = first;
        try (BufferedReader says = process.inputReader(StandardCharsets.UTF_8)) {
            int heard = 0;
            for (String line = says.readLine(); line != null; line = says.readLine()) {
                if (line.startsWith("put ")) {
                    next = Integer.parseInt(line.substring("put ".length())) + 1;
                    heard++;
                }
                if (heard == messages) {
                    process.toHandle().destroyForcibly();
                }
            }
            assertEquals(137, process.waitFor(), "it ended by itself");
        } finally {
            process.destroyForcibly().waitFor();
        }
        return next;
    }

    private void deliverTheRest(int mailPort, int webPort) {
        try (SqliteStores stores = SqliteStores.open(file, Clock.systemUTC());
                Deliveries deliveries = KilledDeliverer.deliveries(file, stores.outbox(), mailPort, webPort)) {
            deliveries.start();
            await().atMost(Duration.ofSeconds(60))
                    .until(() -> stores.outbox().waitingCount(KilledDeliverer.MAIL) == 0
                            && stores.outbox().waitingCount(KilledDeliverer.HOOK) == 0);
            assertEquals("ok", stores.checkIntegrity());
        }
    }

    private static List<String> mailIds(List<String> mails) {
        Map<String, String> known = new HashMap<>();
        MailChannel channel = new MailChannel(
                KilledDeliverer.MAIL,
                "ruth@example.org",
                new MailSettings(
                        "127.0.0.1",
                        1,
                        MailSettings.Security.NONE,
                        java.util.Optional.empty(),
                        "bagward@example.org",
                        java.util.Optional.empty(),
                        Duration.ofSeconds(1)));
        for (int number = 0; number < 10_000; number++) {
            String id = KilledDeliverer.MAIL + "-" + number;
            known.put(channel.messageId(new bagward.message.Parcel.Letter(Letters.about("T1", id))), id);
        }
        List<String> ids = new ArrayList<>();
        for (String mail : mails) {
            Matcher header = MAIL_ID.matcher(mail);
            assertTrue(header.find(), mail);
            ids.add(known.getOrDefault(header.group(1), "unknown"));
        }
        return ids;
    }

    /** Each of the numbers 0 to next - 1 is among what came, and the first arrivals of each bag are in order. */
    private static void check(String channel, List<String> came, int next) {
        Set<String> firstArrivals = new LinkedHashSet<>(came);
        for (int bag = 0; bag < KilledDeliverer.BAGS; bag++) {
            List<String> expected = new ArrayList<>();
            for (int number = bag; number < next; number += KilledDeliverer.BAGS) {
                expected.add(channel + "-" + number);
            }
            List<String> arrived =
                    firstArrivals.stream().filter(expected::contains).toList();
            assertEquals(expected, arrived, channel + ", bag " + bag);
        }
        System.out.println(channel + ": " + next + " put, " + came.size() + " arrivals, "
                + (came.size() - firstArrivals.size()) + " twice");
    }
}
