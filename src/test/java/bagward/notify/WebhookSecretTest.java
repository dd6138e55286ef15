package bagward.notify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import bagward.fault.ImpossibleValueException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WebhookSecretTest {
    /** The example that the test suites of the Standard Webhooks libraries share (github.com/standard-webhooks). */
    private static final String SECRET = "whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw";

    @Test
    void the_published_example_is_signed_as_published() {
        assertEquals(
                "v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=",
                WebhookSecret.parse(SECRET)
                        .sign(
                                "msg_p5jXN8AQM9LWM0D4loKWxJek",
                                Instant.ofEpochSecond(1614265330),
                                "{\"test\": 2432232314}".getBytes(StandardCharsets.UTF_8)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "whsec_", "whsec_c2hvcnQ=", "whsec_not base64 at all!", "hunter2"})
    void a_secret_that_is_too_short_or_no_base64_is_refused_without_being_shown(String text) {
        String message = assertThrows(ImpossibleValueException.class, () -> WebhookSecret.parse(text))
                .getMessage();
        assertFalse(!text.isEmpty() && !text.equals("whsec_") && message.contains(text), message);
    }
}
