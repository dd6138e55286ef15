package bagward.site;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Rules tried on ten days of the invented station, by a real desk behind real pages. */
class RehearsalPagesTest {
    private static final String LATER = "rules:\n  - id: overdue\n    limit: 20\n";

    private final OpenSite site = new OpenSite();

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void the_form_offers_the_last_fourteen_days_that_are_stored() {
        String page = site.visitor.get("/rehearsal").body();
        assertTrue(page.contains("type=\"date\" required value=\"2027-04-28\""), page);
        assertTrue(page.contains("type=\"date\" required value=\"2027-05-11\""), page);
    }

    @Test
    void the_running_rules_are_tried_as_they_are_and_stay_as_they_are() {
        assertEquals(303, order("").statusCode());
        String page = done();
        assertTrue(page.contains("The running rules from 28 Apr 2027 to 11 May 2027"), page);
        assertTrue(page.contains("<a href=\"/bag/L-112\">bag L-112</a>"), page);
        assertEquals(SampleStation.RULES, site.watch.rules());
    }

    @Test
    void changed_rules_stand_beside_the_running_ones_with_what_only_one_of_them_raises() {
        assertEquals(303, order(LATER).statusCode());
        String page = done();
        assertTrue(page.contains("Changed rules beside the running ones"), page);
        assertTrue(page.contains("data-label=\"Raised by\">running only</td>"), page);
        assertTrue(page.contains("data-label=\"Raised by\">both</td>"), page);
        assertFalse(page.contains("changed only"), page);

        List<String> lines = site.visitor.get("/rehearsal.csv").body().lines().toList();
        assertTrue(lines.get(0).startsWith("rule,rule_name,subject,in,raised_utc"));
        assertTrue(lines.stream().anyMatch(line -> line.matches("overdue,[^,]*,bag:L-112,running only,,,,20.*")));
    }

    @Test
    void other_programs_get_the_same_as_json() throws Exception {
        order(LATER);
        done();
        JsonNode answer =
                new ObjectMapper().readTree(site.visitor.get("/api/rehearsal").body());
        assertEquals("done", answer.get("state").asText());
        assertEquals(0, answer.at("/sets/0/perRule/overdue").asInt(-1));
        assertTrue(answer.at("/sets/1/perRule/overdue").asInt() > 0);
    }

    @Test
    void a_wrong_rule_is_refused_with_its_line_and_what_was_typed_stays() {
        HttpResponse<String> refused = order("rules:\n  - id: due\n    limit: much\n");
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("rules line 3"), refused.body());
        assertTrue(refused.body().contains("limit: much\n</textarea>"), refused.body());
        assertFalse(refused.body().contains("data-busy"));
    }

    @Test
    void a_rule_that_is_new_needs_its_card() {
        HttpResponse<String> refused =
                order("rules:\n  - id: new\n    name: New\n    watches: bag-due\n    limit: 1\n");
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("card"), refused.body());
    }

    @Test
    void a_list_without_its_name_is_told_how_to_begin() {
        HttpResponse<String> refused = order("- id: due\n  limit: 1\n");
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("Put a line “rules:” before it"), refused.body());
    }

    @Test
    void more_than_a_season_is_refused_with_the_limit() {
        Map<String, String> fields = fields("");
        fields.put("first", "2026-11-01");
        HttpResponse<String> refused = site.visitor.post("/rehearsal", fields);
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("at most 92 days"), refused.body());
    }

    @Test
    void days_of_which_nothing_is_stored_are_refused() {
        Map<String, String> fields = fields("");
        fields.put("first", "2027-05-12");
        assertEquals(422, site.visitor.post("/rehearsal", fields).statusCode());
    }

    @Test
    void one_runs_at_a_time_and_may_be_stopped() {
        site.rehearsals.hold();
        assertEquals(303, order("").statusCode());
        String page = site.visitor.get("/rehearsal").body();
        assertTrue(page.contains("data-busy") && page.contains("Stop it"), page);
        assertEquals(422, order("").statusCode());
        assertEquals(303, site.visitor.post("/rehearsal/stop", Map.of()).statusCode());
        site.rehearsals.letGo();
        await().atMost(Duration.ofMinutes(4)).until(() -> !busy());
        assertTrue(site.visitor.get("/rehearsal").body().contains("It was stopped."));
        assertEquals(404, site.visitor.get("/rehearsal.csv").statusCode());
    }

    private String done() {
        await().atMost(Duration.ofMinutes(4)).until(() -> !busy());
        return site.visitor.get("/rehearsal").body();
    }

    private boolean busy() {
        return site.visitor.get("/rehearsal").body().contains("data-busy");
    }

    private HttpResponse<String> order(String text) {
        return site.visitor.post("/rehearsal", fields(text));
    }

    private static Map<String, String> fields(String text) {
        return new HashMap<>(
                Map.of("first", "2027-04-28", "last", "2027-05-11", "every", "30", "text", text, "beside", "yes"));
    }
}
