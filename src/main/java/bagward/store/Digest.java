package bagward.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** Short name of a message's content, by which equal ones are found. */
final class Digest {
    private Digest() {}

    /** SHA-256 of topic, reason and payload. */
    static byte[] of(Quarantined message) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            add(digest, message.topic().getBytes(StandardCharsets.UTF_8));
            add(digest, message.reason().getBytes(StandardCharsets.UTF_8));
            add(digest, message.payload().toBytes());
            return digest.digest();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static void add(MessageDigest digest, byte[] part) {
        // The length first, so that no two different messages run together to the same bytes.
        digest.update(Integer.toString(part.length).getBytes(StandardCharsets.US_ASCII));
        digest.update((byte) ':');
        digest.update(part);
    }
}
