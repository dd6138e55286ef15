package bagward.notify;

import bagward.fault.BagwardException;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Addresses under which a message is confirmed: the number of its parcel, the end of its time and a signature that nobody
 * can make without the key. Whoever holds one can confirm the alarms of that message, and nothing else.
 */
public final class AnswerLinks {
    /** How long an address can be used; ours. */
    public static final Duration LIFE = Duration.ofDays(7);

    private static final int KEY_BYTES = 32;
    private static final int SIGNATURE_BYTES = 16;
    private static final Pattern FORM = Pattern.compile("(\\d{1,18})-(\\d{1,12})-([A-Za-z0-9_-]{22})");

    private final byte[] key;

    private AnswerLinks(byte[] key) {
        this.key = key;
    }

    /**
     * Links with the key of a file, which is made if it is missing.
     *
     * @param file readable by this user only
     * @throws BagwardException if it can be neither read nor made
     */
    public static AnswerLinks withKeyOf(Path file) {
        try {
            if (Files.notExists(file)) {
                makeKey(file);
            }
            byte[] key = Files.readAllBytes(file);
            if (key.length != KEY_BYTES) {
                throw new LinkKeyException("the key file " + file + " is damaged: delete it, a new one is made", null);
            }
            return new AnswerLinks(key);
        } catch (IOException e) {
            throw new LinkKeyException("the key file " + file + " can be neither read nor made", e);
        }
    }

    private static void makeKey(Path file) throws IOException {
        byte[] key = new byte[KEY_BYTES];
        new SecureRandom().nextBytes(key);
        Path beside = file.resolveSibling(file.getFileName() + ".new");
        Files.deleteIfExists(beside);
        Files.createFile(beside, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        Files.write(beside, key);
        Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
    }

    /** The last part of the address for a parcel. */
    public String token(long parcel, Instant now) {
        String plain = parcel + "-" + now.plus(LIFE).getEpochSecond();
        return plain + "-" + signature(plain);
    }

    /** The address for a parcel under the address of the pages. */
    URI address(URI pages, long parcel, Instant now) {
        return pages.resolve("/answer/" + token(parcel, now));
    }

    /** The parcel of a token; empty if it was not made by us or its time is over. */
    public Optional<Long> parcel(String token, Instant now) {
        Matcher parts = FORM.matcher(token);
        if (!parts.matches()) {
            return Optional.empty();
        }
        byte[] expected = signature(parts.group(1) + "-" + parts.group(2)).getBytes(StandardCharsets.US_ASCII);
        boolean ours = MessageDigest.isEqual(expected, parts.group(3).getBytes(StandardCharsets.US_ASCII));
        boolean inTime = now.getEpochSecond() <= Long.parseLong(parts.group(2));
        return ours && inTime ? Optional.of(Long.parseLong(parts.group(1))) : Optional.empty();
    }

    private String signature(String plain) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key, "HmacSHA256"));
            byte[] whole = mac.doFinal(plain.getBytes(StandardCharsets.US_ASCII));
            return Base64.getUrlEncoder().withoutPadding().encodeToString(Arrays.copyOf(whole, SIGNATURE_BYTES));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has HMAC-SHA256", e);
        }
    }

    /** The key cannot be used. */
    private static final class LinkKeyException extends BagwardException {
        private static final long serialVersionUID = 1L;

        LinkKeyException(String message, @org.jspecify.annotations.Nullable Throwable cause) {
            super(message, cause);
        }
    }
}
