package bagward.message;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;

/** Ids of messages, made of what they tell and of nothing else. */
final class MessageId {
    private static final int BYTES = 16;

    private MessageId() {}

    /** The id of a message that tells these states to a person, in whatever order. */
    static String of(String kind, Person person, List<Told> tells) {
        String states = tells.stream()
                .map(told -> told.alarm().rule() + " " + told.alarm().subject().key() + " " + told.raisedAt() + " "
                        + told.news() + " " + told.number())
                .sorted()
                .collect(Collectors.joining("\n"));
        return kind + "-" + digest(person.name() + "\n" + states);
    }

    /** The id of a list that goes to a person once. */
    static String once(String kind, Person person) {
        return kind + "-" + digest(person.name());
    }

    private static String digest(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, BYTES);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
