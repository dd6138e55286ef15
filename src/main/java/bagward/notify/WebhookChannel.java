package bagward.notify;

import bagward.message.ChannelName;
import bagward.store.TrustedCertificates;
import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.Set;

/** Posts JSON to a program; taken over is what it answers with 200 to 299. Redirections are not followed. */
final class WebhookChannel implements Channel {
    /** Answers that say "not now": too early, timeout, too many. All from 500 on say so too. */
    private static final Set<Integer> NOT_NOW = Set.of(408, 425, 429);

    private static final int FIRST_SUCCESS = 200;
    private static final int FIRST_REDIRECTION = 300;
    private static final int FIRST_SERVER_ERROR = 500;

    private final ChannelName name;
    private final WebhookSettings settings;
    private final Clock clock;
    private final HttpClient client;

    /** @param clock the real time, by which the receiver knows what is sent again later */
    WebhookChannel(ChannelName name, WebhookSettings settings, Clock clock) {
        this.name = name;
        this.settings = settings;
        this.clock = clock;
        HttpClient.Builder builder =
                HttpClient.newBuilder().connectTimeout(settings.patience()).followRedirects(HttpClient.Redirect.NEVER);
        settings.caFile()
                .ifPresent(file ->
                        builder.sslContext(TrustedCertificates.read(file).context()));
        this.client = builder.build();
    }

    @Override
    public ChannelName name() {
        return name;
    }

    @Override
    public String kind() {
        return "webhook";
    }

    @Override
    public String address() {
        // path and query may hold a secret
        return settings.url().getScheme() + "://" + settings.url().getAuthority();
    }

    @Override
    public void hand(Outgoing outgoing) {
        int status;
        try {
            status = client.send(request(outgoing), BodyHandlers.discarding()).statusCode();
        } catch (IOException e) {
            throw DeliveryException.outOfReach(address() + " cannot be reached: " + e, e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw DeliveryException.outOfReach("stopped while " + address() + " was asked", e);
        }
        judge(status);
    }

    private HttpRequest request(Outgoing outgoing) {
        byte[] body = OutgoingJson.bytes(outgoing);
        String id = headerSafe(outgoing.parcel().id());
        Instant now = clock.instant();
        return HttpRequest.newBuilder(settings.url())
                .timeout(settings.patience())
                .header("Content-Type", "application/json; charset=utf-8")
                .header("webhook-id", id)
                .header("webhook-timestamp", Long.toString(now.getEpochSecond()))
                .header("webhook-signature", settings.secret().sign(id, now, body))
                .POST(BodyPublishers.ofByteArray(body))
                .build();
    }

    /** Names of people may hold what a header cannot. */
    private static String headerSafe(String id) {
        return URLEncoder.encode(id, StandardCharsets.UTF_8);
    }

    private void judge(int status) {
        if (status >= FIRST_SUCCESS && status < FIRST_REDIRECTION) {
            return;
        }
        String says = address() + " answers " + status;
        if (NOT_NOW.contains(status) || status >= FIRST_SERVER_ERROR) {
            throw DeliveryException.outOfReach(says + ": not now", null);
        }
        throw DeliveryException.refused(says + ": it refuses the message", null);
    }
}
