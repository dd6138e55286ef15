package bagward.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The unit of systemd in {@code deploy} says what the program does. */
class ServiceFileTest {
    @Test
    void is_not_started_again_after_what_starting_again_does_not_mend() throws IOException {
        Set<String> codes =
                Stream.of(value("RestartPreventExitStatus").split(" ")).collect(Collectors.toSet());

        assertEquals(Set.of(Integer.toString(ExitCode.USAGE), Integer.toString(ExitCode.REFUSED)), codes);
    }

    @Test
    void starts_a_command_that_the_program_has() throws IOException {
        List<String> words = List.of(value("ExecStart").split(" "));
        int jar = words.indexOf("-jar");

        assertTrue(words.get(jar + 1).endsWith("/bagward.jar"), words.toString());
        assertEquals("run", words.get(jar + 2));
        assertEquals(jar + 4, words.size(), "run takes one file");
    }

    private static String value(String key) throws IOException {
        return Files.readAllLines(Path.of("deploy/bagward.service")).stream()
                .filter(line -> line.startsWith(key + "="))
                .map(line -> line.substring(key.length() + 1))
                .findFirst()
                .orElseThrow();
    }
}
