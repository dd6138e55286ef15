package bagward.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.document.Secrets.User;
import bagward.fault.Fault;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SecretsTest {
    private static final Map<String, String> FILES =
            Map.of("secret.txt", " alder 7 \nnot this line\n", "empty.txt", "", "bell.txt", "al\u0007der\n");

    private final Secrets secrets =
            new Secrets(Map.of("SECRET", "birch-8"), path -> Optional.ofNullable(FILES.get(path)));
    private final Inspection inspection = new Inspection();

    private Section section(String text) {
        return Section.parse("test.yaml", "broker: " + text, inspection).section("broker");
    }

    @Test
    void a_secret_is_taken_from_the_environment_or_from_the_first_line_of_a_file_as_it_stands_there() {
        assertEquals(Optional.of("birch-8"), secrets.find(section("{token-from: SECRET}"), "token"));
        assertEquals(Optional.of(" alder 7 "), secrets.find(section("{token-file: secret.txt}"), "token"));
        assertEquals(Optional.empty(), secrets.find(section("{url: x}"), "token"));
        assertTrue(inspection.faults().isEmpty());
    }

    @Test
    void a_user_and_a_password_go_together() {
        assertEquals(
                Optional.of(new User("house", "birch-8")),
                secrets.user(section("{user: house, password-from: SECRET}")));
        assertEquals(Optional.empty(), secrets.user(section("{url: x}")));
        assertTrue(inspection.faults().isEmpty());
        assertFalse(new User("house", "birch-8").toString().contains("birch-8"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{user: house} | password-from: user and password-from (or password-file) go together",
                "{password-file: secret.txt} | user: user and password-from (or password-file) go together",
                "{user: a, password-from: UNSET} | must name an environment variable that is set",
                "{user: a, password-file: gone.txt} | must name a file with the secret in its first line",
                "{user: a, password-file: empty.txt} | must name a file with the secret in its first line",
                "{user: a, password-file: bell.txt} | must hold a secret without control characters",
                "{user: a, password-from: SECRET, password-file: secret.txt} | is one way too many"
            })
    void what_names_no_secret_is_refused_without_showing_one(String text, String rule) {
        assertEquals(Optional.empty(), secrets.user(section(text)));
        Fault fault = inspection.faults().get(0);
        assertTrue(fault.sentence().contains(rule), fault.sentence());
        assertEquals(1, inspection.faults().size());
        assertFalse(fault.sentence().contains("birch-8"), fault.sentence());
    }
}
