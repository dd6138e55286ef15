package bagward.store;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;

/** The bytes of a message as they came, immutable, cut at {@link #LONGEST}. */
public final class Payload {
    /** Bytes that are kept. */
    public static final int LONGEST = 4096;

    private final byte[] bytes;

    private Payload(byte[] bytes) {
        this.bytes = bytes;
    }

    /** A payload of these bytes; copied, and cut if they are too many. */
    public static Payload of(byte[] bytes) {
        return new Payload(Arrays.copyOf(bytes, Math.min(bytes.length, LONGEST)));
    }

    /** The bytes; a copy. */
    public byte[] toBytes() {
        return bytes.clone();
    }

    /** As text where it is UTF-8 without control characters, else as hexadecimal digits. */
    public String readable() {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            if (text.chars().noneMatch(c -> Character.isISOControl(c) && c != '\n' && c != '\t' && c != '\r')) {
                return text;
            }
        } catch (CharacterCodingException notText) {
            return HexFormat.ofDelimiter(" ").formatHex(bytes);
        }
        return HexFormat.ofDelimiter(" ").formatHex(bytes);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Payload p && Arrays.equals(bytes, p.bytes);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(bytes);
    }

    @Override
    public String toString() {
        return readable();
    }
}
