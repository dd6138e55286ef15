package bagward.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import bagward.units.Celsius;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SectionTest {
    private final Inspection inspection = new Inspection();

    private Section parse(String text) {
        return Section.parse("test.yaml", text, inspection);
    }

    private List<String> sentences() {
        return inspection.faults().stream().map(Fault::sentence).toList();
    }

    @Test
    void values_of_every_kind_are_read() {
        Section top =
                parse("name: Glass\nlatitude: -12.5\nspots: 24\nspare: true\nevery: 90 s\nkind: json\nwords: [a, b]\n");
        assertEquals("Glass", top.text("name"));
        assertEquals(-12.5, top.number("latitude", -90, 90, "°"));
        assertEquals(24, top.whole("spots", 1, 999, ""));
        assertTrue(top.flag("spare", false));
        assertEquals(Duration.ofSeconds(90), top.duration("every", Duration.ofSeconds(1), Duration.ofDays(1)));
        assertEquals(2, top.choice("kind", Map.of("number", 1, "json", 2)).orElseThrow());
        assertEquals(List.of("a", "b"), top.texts("words", 1));
        assertEquals("done", top.make(() -> "done").orElseThrow());
    }

    @Test
    void all_faults_come_in_one_report_with_line_path_value_and_rule() {
        Section top = parse("name: Glass\nplace:\n  latitude: 95\n  longtude: 4\n");
        top.text("name");
        Section place = top.section("place");
        place.number("latitude", -90, 90, "°");
        place.number("longitude", -180, 180, "°");
        assertTrue(place.make(() -> "place").isEmpty());
        assertTrue(top.make(() -> "top").isEmpty());
        assertEquals(
                List.of(
                        "test.yaml line 3, place.latitude: found '95'; must be a number from -90 to 90 °.",
                        "test.yaml line 3, place.longitude: this is required and missing.",
                        "test.yaml line 4, place.longtude: found 'longtude'; this key is not known here."
                                + " Did you mean 'longitude'?"),
                sentences());
        assertEquals(
                3,
                assertThrows(RefusedInputException.class, inspection::throwIfRefused)
                        .faults()
                        .size());
    }

    @Test
    void a_value_that_its_type_refuses_is_a_fault_at_its_line() {
        Section top = parse("a: 1\nt: 500\n");
        top.text("a");
        assertTrue(top.value("t", text -> new Celsius(Double.parseDouble(text))).isEmpty());
        assertEquals(
                List.of(
                        "test.yaml line 2, t: found '500'; temperature of 500.0 °C is impossible: allowed is -90.0 to 100.0 °C."),
                sentences());
    }

    @Test
    void nan_is_not_a_number() {
        assertEquals(0, parse("x: NaN\n").number("x", 0, 5, "m"));
        assertEquals(List.of("test.yaml line 1, x: found 'NaN'; must be a number from 0 to 5 m."), sentences());
    }

    @Test
    void a_word_that_is_nearly_right_gets_a_hint() {
        parse("kind: jsn\n").choice("kind", Map.of("json", 1, "number", 2));
        assertEquals(
                List.of("test.yaml line 1, kind: found 'jsn'; must be one of json, number. Did you mean 'json'?"),
                sentences());
    }

    @Test
    void a_key_that_stands_twice_is_a_fault() {
        parse("a: 1\nb: 2\na: 3\n");
        assertEquals(
                List.of("test.yaml line 3: found 'a'; this key stands twice here: keep one of them."), sentences());
    }

    @Test
    void text_that_is_no_yaml_names_the_line() {
        parse("a: 1\nb: [1, 2\nc: 3\n");
        assertEquals(1, sentences().size());
        assertTrue(
                sentences().get(0).startsWith("test.yaml line 3: this is not YAML"),
                sentences().get(0));
    }

    @Test
    void an_empty_file_and_a_bare_list_are_faults() {
        parse("");
        parse("- 1\n- 2\n");
        assertEquals(
                List.of(
                        "test.yaml: the file is empty.",
                        "test.yaml line 1: the top must be a mapping of keys, not a list."),
                sentences());
    }

    @Test
    void readers_leave_a_trace_of_the_keys_they_know() {
        Section top = parse("houses:\n- id: a\n- id: b\n");
        top.sections("houses", 1).forEach(h -> h.text("id"));
        assertEquals("{=[houses], houses[]=[id]}", inspection.asked().toString());
    }

    @Test
    void no_text_makes_the_reader_fail_otherwise_than_with_faults() {
        String letters = "ab: -[]{}\n \t'\"#&*!|>%@`,?\u00e9";
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(40); n > 0; n--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            Section top = Section.parse("x", text.toString(), new Inspection());
            top.sections("a", 0).forEach(s -> s.text("b"));
            assertFalse(top.make(() -> "x").filter(String::isEmpty).isPresent());
        }
    }
}
