package bagward.collector.payload;

import bagward.collector.sparkplug.Tahu;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.eclipse.tahu.message.model.MetricDataType;

/** Payloads from a seed: sound ones, damaged ones, noise, and such as are made to hurt a reader. */
final class FuzzInputs {
    static final Instant NOW = Instant.parse("2026-04-03T06:15:00Z");
    static final String EDGE = "spBv1.0/alder/%s/gateway";

    private static final List<String> TEXTS = List.of(
            "21.5",
            "-3.25e-1",
            "{\"t\":21.5,\"h\":83.25,\"l\":12000,\"at\":\"2026-04-03T06:00:00Z\"}",
            "{\"t\":\"21.5\",\"at\":\"2026-04-03T08:00:00.5+02:00\",\"x\":[1,{\"y\":null}]}",
            "[{\"bn\":\"urn:dev:\",\"bt\":1.775196e+09,\"bu\":\"Cel\",\"n\":\"t\",\"v\":21.5},{\"n\":\"h\",\"u\":\"%RH\",\"v\":80}]",
            "[{\"n\":\"t\",\"u\":\"Cel\",\"t\":-5,\"v\":1},{\"n\":\"s\",\"s\":1},{\"n\":\"l\",\"vs\":\"x\"},{\"n\":\"d\",\"vd\":\"aGkgCg\"}]");

    private static final List<String> EDGE_TYPES =
            List.of("NBIRTH", "NDATA", "NDEATH", "DBIRTH", "DDATA", "DDEATH", "NCMD", "DCMD");

    private final SplittableRandom random;
    private final List<byte[]> packed = packed();

    FuzzInputs(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** The next message. */
    Message next() {
        return random.nextInt(3) == 0 ? ofEdgeNode() : ofSensor();
    }

    private Message ofSensor() {
        String topic = List.of("number", "json", "senml").get(random.nextInt(3));
        byte[] payload = switch (random.nextInt(16)) {
            case 0 -> cruel();
            case 1, 2, 3 -> noise();
            default -> damagedText();
        };
        return new Message(topic, payload, NOW, random.nextInt(8) == 0);
    }

    private Message ofEdgeNode() {
        String type = EDGE_TYPES.get(random.nextInt(EDGE_TYPES.size()));
        String topic = EDGE.formatted(type) + (type.startsWith("D") ? "/air" : "");
        byte[] payload = switch (random.nextInt(16)) {
            case 0 -> cruelPacked();
            case 1, 2 -> noise();
            default -> damaged(packed.get(random.nextInt(packed.size())));
        };
        return new Message(topic, payload, NOW, random.nextInt(20) == 0);
    }

    private static List<byte[]> packed() {
        long millis = NOW.toEpochMilli();
        return List.of(
                Tahu.payload(0, millis, true, Tahu.named("bdSeq", MetricDataType.Int64, 3L, millis)),
                Tahu.death(3, millis),
                Tahu.payload(
                        1,
                        millis,
                        true,
                        Tahu.birth("t", 1, MetricDataType.Float, 21.5f, millis),
                        Tahu.birth("h", 2, MetricDataType.UInt8, (short) 80, millis),
                        Tahu.birth("name", 3, MetricDataType.String, "21.5", millis)),
                Tahu.payload(2, millis, false, Tahu.data(1, MetricDataType.Float, 22f, millis)),
                Tahu.payload(3, millis, false, Tahu.data(2, MetricDataType.UInt8, (short) 81, millis)),
                Tahu.payload(4, millis, true, Tahu.historical(1, 19f, millis - 1000)));
    }

    private byte[] noise() {
        byte[] bytes = new byte[random.nextInt(200)];
        random.nextBytes(bytes);
        return bytes;
    }

    private byte[] damagedText() {
        byte[] bytes = TEXTS.get(random.nextInt(TEXTS.size())).getBytes(StandardCharsets.UTF_8);
        byte[] signs = "{}[]\",:0123456789eE.+-~/ntvu_ \\".getBytes(StandardCharsets.UTF_8);
        for (int hits = random.nextInt(4); hits > 0; hits--) {
            bytes[random.nextInt(bytes.length)] = signs[random.nextInt(signs.length)];
        }
        return random.nextInt(3) == 0 ? damaged(bytes) : bytes;
    }

    /** Bits turned, pieces cut out, doubled, or cut off at the end. */
    private byte[] damaged(byte[] sound) {
        byte[] bytes = sound.clone();
        for (int hits = random.nextInt(4); hits > 0 && bytes.length > 0; hits--) {
            int at = random.nextInt(bytes.length);
            switch (random.nextInt(5)) {
                case 0 -> bytes[at] ^= (byte) (1 << random.nextInt(8));
                case 1 -> bytes[at] = (byte) random.nextInt(256);
                case 2 -> bytes = Arrays.copyOf(bytes, at);
                case 3 -> bytes = joined(bytes, Arrays.copyOfRange(bytes, at, bytes.length));
                default -> bytes[at] = (byte) 0xFF;
            }
        }
        return bytes;
    }

    /** Deep nesting, numbers without end, names without end, very many members, bytes that are no text. */
    private byte[] cruel() {
        int size = 1 + random.nextInt(random.nextInt(50) == 0 ? 80_000 : 3000);
        String text = switch (random.nextInt(9)) {
            case 0 -> "[".repeat(size);
            case 1 -> "{\"t\":".repeat(size);
            case 2 -> "{\"t\":" + "9".repeat(size) + "}";
            case 3 -> "{\"t\":1e" + "9".repeat(1 + size % 12) + "}";
            case 4 -> "9".repeat(size) + "." + "9".repeat(size);
            case 5 -> "{\"" + "t".repeat(size) + "\":1}";
            case 6 -> "[" + "{\"n\":\"t\",\"u\":\"Cel\",\"v\":1},".repeat(size / 10) + "{\"n\":\"t\",\"v\":2}]";
            case 7 -> "{\"at\":\"+" + "9".repeat(size) + "-01-01T00:00:00Z\",\"t\":1}";
            default -> " ".repeat(size) + "21.5" + "\u0000".repeat(size % 3);
        };
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Lengths that are not there, very many metrics, very many aliases, groups in groups, numbers too long. */
    private byte[] cruelPacked() {
        int many = 1 + random.nextInt(random.nextInt(50) == 0 ? 40_000 : 2000);
        return switch (random.nextInt(6)) {
            case 0 -> new byte[] {0x12, (byte) 0xFF, (byte) 0xFF, (byte) 0xFF, (byte) 0xFF, (byte) random.nextInt(16)};
            case 1 -> repeated(new byte[] {0x12, 0}, many);
            case 2 -> aliases(many);
            case 3 -> repeated(new byte[] {0x33}, many);
            case 4 -> repeated(new byte[] {(byte) 0xFF}, many);
            default -> repeated(new byte[] {0x12, 6, 0x4A, 4, 0x0A, 2, 'Q', 'u'}, many);
        };
    }

    private byte[] aliases(int many) {
        byte[] bytes = repeated(new byte[] {0x12, 4, 0x10, 0, 0, 0}, many);
        for (int i = 0; i < many; i++) {
            bytes[6 * i + 3] = (byte) (0x80 | random.nextInt(128));
            bytes[6 * i + 4] = (byte) (0x80 | random.nextInt(128));
            bytes[6 * i + 5] = (byte) random.nextInt(128);
        }
        return bytes;
    }

    private static byte[] repeated(byte[] one, int times) {
        byte[] all = new byte[one.length * times];
        for (int i = 0; i < times; i++) {
            System.arraycopy(one, 0, all, i * one.length, one.length);
        }
        return all;
    }

    private static byte[] joined(byte[] one, byte[] other) {
        byte[] all = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, all, one.length, other.length);
        return all;
    }
}
