package bagward.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class CommandLineTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        CommandLine line = Bagward.commandLine();
        return line.setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(arguments);
    }

    @Test
    void the_version_is_printed() {
        assertEquals(0, run("version"));
        assertTrue(out.toString().startsWith("Bagward "), out::toString);
    }

    @Test
    void help_names_every_command_and_exit_code() {
        assertEquals(0, run("--help"));
        for (String word :
                List.of("run", "demo", "check", "replay", "rehearse", "backup", "restore", "inspect", "version")) {
            assertTrue(out.toString().contains(word), () -> word + " is missing in " + out);
        }
    }

    @Test
    void an_unknown_command_ends_with_the_code_for_a_wrong_command_line() {
        assertEquals(2, run("chekc"));
        assertTrue(err.toString().contains("chekc"), err::toString);
    }

    @Test
    void a_sound_configuration_is_called_sound_and_starts_nothing(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("house.yaml"), Packaged.text("config/bagward.yaml"));
        assertEquals(0, run("check", file.toString()));
        assertTrue(
                out.toString().contains("is sound: Alder Bank, 1 house, 2 bays, 1 drying place, 6 sensors"),
                out::toString);
        assertTrue(Files.notExists(folder.resolve("bagward-data")), "nothing was made");
    }

    @Test
    void a_check_tells_which_gateways_share_a_session_since_their_topics_overlap(@TempDir Path folder)
            throws IOException {
        String text = Packaged.text("config/bagward.yaml")
                .replace("topic: alder/north/air", "gateway: other\n    topic: alder/north/+");
        Path file = Files.writeString(folder.resolve("house.yaml"), text);
        assertEquals(0, run("check", file.toString()), err::toString);
        assertTrue(out.toString().contains("Note: "), out::toString);
        assertTrue(out.toString().contains("'alder/north/+' and 'alder/north/b' overlap: narrow one"), out::toString);
    }

    @Test
    void a_check_with_connect_tells_where_readings_are_kept_or_that_nobody_answers_there(@TempDir Path folder)
            throws IOException {
        String text = Packaged.text("config/bagward.yaml");
        Path file = Files.writeString(folder.resolve("house.yaml"), text);
        assertEquals(0, run("check", "--connect", file.toString()));
        assertTrue(out.toString().contains("Readings are kept in the embedded store."), out::toString);
        Files.writeString(
                file, text.replace("store:\n", "store:\n  influxdb: {url: 'http://127.0.0.1:1', database: bags}\n"));
        assertEquals(4, run("check", "--connect", file.toString()));
        assertTrue(err.toString().contains("nobody answers there: start InfluxDB"), err::toString);
    }

    @Test
    void a_wrong_configuration_is_refused_with_each_fault_on_a_line(@TempDir Path folder) throws IOException {
        String wrong = Packaged.text("config/bagward.yaml")
                .replace("latitude: 53.2 ", "latitude: 153.2 ")
                .replace("port: 8420", "port: eighty");
        Path file = Files.writeString(folder.resolve("house.yaml"), wrong);
        assertEquals(3, run("check", file.toString()));
        assertEquals(3, err.toString().lines().count(), err::toString);
        assertTrue(err.toString().contains("2 faults; nothing was started."), err::toString);
    }

    @Test
    void a_file_that_is_not_there_is_named(@TempDir Path folder) {
        assertEquals(3, run("run", folder.resolve("none.yaml").toString()));
        assertTrue(err.toString().contains("none.yaml"), err::toString);
    }
}
