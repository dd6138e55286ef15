package bagward.notify;

import bagward.fault.ImpossibleValueException;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.time.Instant;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * What messages to a webhook are signed with, after the open specification "Standard Webhooks"
 * (https://www.standardwebhooks.com): HMAC-SHA256 over {@code id.timestamp.body}, so that neither what is said nor when it
 * was sent can be changed, and what is sent again later is known by its old time.
 */
public final class WebhookSecret {
    private static final String PREFIX = "whsec_";
    private static final int FEWEST_BYTES = 24;
    private static final int MOST_BYTES = 64;

    private final byte[] key;

    private WebhookSecret(byte[] key) {
        this.key = key;
    }

    /**
     * Reads a secret: "whsec_" and 24 to 64 bytes as Base64.
     *
     * @throws ImpossibleValueException if it is something else; the message does not show it
     */
    public static WebhookSecret parse(String text) {
        try {
            byte[] key = Base64.getDecoder().decode(text.strip().replaceFirst("^" + PREFIX, ""));
            if (key.length >= FEWEST_BYTES && key.length <= MOST_BYTES) {
                return new WebhookSecret(key);
            }
        } catch (IllegalArgumentException e) {
            throw unfit();
        }
        throw unfit();
    }

    private static ImpossibleValueException unfit() {
        return new ImpossibleValueException("the secret must be " + PREFIX + " and " + FEWEST_BYTES + " to "
                + MOST_BYTES + " random bytes as Base64, such as openssl rand -base64 32 makes them");
    }

    /** The signature of a message, for its header {@code webhook-signature}. */
    String sign(String id, Instant at, byte[] body) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key, "HmacSHA256"));
            mac.update((id + "." + at.getEpochSecond() + ".").getBytes(StandardCharsets.UTF_8));
            return "v1," + Base64.getEncoder().encodeToString(mac.doFinal(body));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has HMAC-SHA256", e);
        }
    }

    @Override
    public String toString() {
        return "secret (not shown)";
    }
}
