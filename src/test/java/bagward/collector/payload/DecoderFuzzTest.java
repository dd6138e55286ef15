package bagward.collector.payload;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.SensorId;
import bagward.units.Quantity;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Damaged and random payloads: whatever comes, it is a reading or a reason, and soon. */
class DecoderFuzzTest {
    private static final Instant NOW = Instant.parse("2026-04-03T06:15:00Z");
    private static final int INPUTS_PER_SEED = 25_000;

    private static final List<String> SOUND = List.of(
            "21.5",
            "-3.25e-1",
            "{\"t\":21.5,\"h\":83.25,\"l\":12000,\"at\":\"2026-04-03T06:00:00Z\"}",
            "{\"t\":\"21.5\",\"at\":\"2026-04-03T08:00:00.5+02:00\",\"x\":[1,{\"y\":null}]}",
            "[{\"bn\":\"urn:dev:\",\"bt\":1.775196e+09,\"bu\":\"Cel\",\"n\":\"t\",\"v\":21.5},{\"n\":\"h\",\"u\":\"%RH\",\"v\":80}]",
            "[{\"n\":\"t\",\"u\":\"Cel\",\"t\":-5,\"v\":1},{\"n\":\"s\",\"s\":1},{\"n\":\"l\",\"vs\":\"x\"},{\"n\":\"d\",\"vd\":\"aGkgCg\"}]");

    private static final MessageDecoder DECODER = new MessageDecoder(
            List.of(
                    source("number", new BareNumber(Place.of(Quantity.TEMPERATURE, "", MeasureUnit.CELSIUS))),
                    source(
                            "json",
                            new JsonAt(
                                    List.of(
                                            Place.of(Quantity.TEMPERATURE, "/t", MeasureUnit.CELSIUS),
                                            Place.of(Quantity.HUMIDITY, "/h", MeasureUnit.PERCENT_HUMIDITY),
                                            Place.of(Quantity.LIGHT, "/l", MeasureUnit.LUX)),
                                    Optional.of(new JsonAt.TimeAt("/at", TimeForm.ISO)))),
                    source(
                            "senml",
                            new SenMl(List.of(
                                    Place.of(Quantity.TEMPERATURE, "t", MeasureUnit.CELSIUS),
                                    Place.of(Quantity.HUMIDITY, "", MeasureUnit.PERCENT_HUMIDITY))))),
            Duration.ofMinutes(5));

    private static SensorSource source(String topic, PayloadFormat format) {
        return new SensorSource(new SensorId(topic), new TopicFilter(topic), format);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void whatever_comes_is_a_reading_or_a_reason(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            for (int i = 0; i < INPUTS_PER_SEED; i++) {
                check(random, "seed " + seed + ", input " + i);
            }
        });
    }

    private static void check(SplittableRandom random, String which) {
        String topic = List.of("number", "json", "senml").get(random.nextInt(3));
        byte[] payload = random.nextInt(4) == 0 ? noise(random) : damaged(random);
        Decoded decoded = DECODER.decode(new Message(topic, payload, NOW, random.nextBoolean()));
        assertTrue(decoded.known(), which);
        assertFalse(decoded.readings().isEmpty() && decoded.refusals().isEmpty(), which);
        for (String reason : decoded.refusals()) {
            assertTrue(
                    reason.length() < 1000 && reason.chars().noneMatch(Character::isISOControl), () -> which + reason);
        }
    }

    private static byte[] noise(SplittableRandom random) {
        byte[] bytes = new byte[random.nextInt(200)];
        random.nextBytes(bytes);
        return bytes;
    }

    private static byte[] damaged(SplittableRandom random) {
        byte[] bytes = SOUND.get(random.nextInt(SOUND.size())).getBytes(StandardCharsets.UTF_8);
        byte[] signs = "{}[]\",:0123456789eE.+-~/ntvu_ \\".getBytes(StandardCharsets.UTF_8);
        for (int hits = random.nextInt(4); hits > 0; hits--) {
            int at = random.nextInt(bytes.length);
            bytes[at] = random.nextInt(8) == 0 ? (byte) random.nextInt(256) : signs[random.nextInt(signs.length)];
        }
        if (random.nextInt(6) == 0) {
            return java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length + 1));
        }
        return bytes;
    }
}
