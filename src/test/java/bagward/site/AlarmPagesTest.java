package bagward.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.AlarmPhase;
import bagward.board.AlarmView;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people and programs do with alarms, and what is told of them. */
class AlarmPagesTest {
    private static final String DAMP = "/alarms/damp-long/bag%3AL-104";
    private static final String JSON = "application/json";

    private final OpenSite site = new OpenSite();

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void an_alarm_is_shelved_for_a_time_with_a_reason_and_the_list_says_by_whom() {
        HttpResponse<String> done =
                site.visitor.post(DAMP + "/shelve", Map.of("for", "4", "why", "trial with <wet> bag", "by", "Ada"));
        assertEquals(DAMP + "?done=shelve", location(done), done.body());
        assertEquals(List.of(AlarmPhase.SHELVED), phasesAside());
        String list = site.visitor.get("/alarms").body();
        assertTrue(list.contains("Put aside"), list);
        assertTrue(list.contains("trial with &lt;wet&gt; bag"), list);
        assertTrue(list.contains("Tue 11 May 13:40"), "until when, in the zone of the station");
        assertTrue(site.visitor.get(DAMP).body().contains("Bring it back"));
        assertEquals(DAMP + "?done=bring-back", location(site.visitor.post(DAMP + "/bring-back", Map.of("by", "Bo"))));
        assertEquals(List.of(), phasesAside());
    }

    @Test
    void an_alarm_is_taken_out_of_service_from_its_page_also_while_it_is_not_raised() {
        assertTrue(site.visitor.get("/alarms/hot/bag%3AL-128").body().contains("Take it out of service"));
        HttpResponse<String> done =
                site.visitor.post(DAMP + "/take-off", Map.of("why", "sensor is calibrated", "by", "Ada"));
        assertEquals(303, done.statusCode(), done.body());
        assertEquals(List.of(AlarmPhase.OUT_OF_SERVICE), phasesAside());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            73  | trial | at most 3 days later
            0   | trial | must be after
            x   | trial | a whole number is needed
            4   | ''    | this is needed
            """)
    void what_is_not_allowed_is_said_beside_the_form_and_nothing_is_done(String hours, String why, String said) {
        HttpResponse<String> refused =
                site.visitor.post(DAMP + "/shelve", Map.of("for", hours, "why", why, "by", "Ada"));
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains(said), refused.body());
        assertEquals(List.of(), site.watch.entries());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/alarms/no-such-rule/bag%3AL-104",
                "/alarms/damp-long/bag%3A",
                "/alarms/damp-long/nothing",
                "/alarms/DAMP/bag%3AL-104"
            })
    void an_alarm_that_cannot_be_is_not_found(String path) {
        assertEquals(404, site.visitor.get(path).statusCode());
    }

    @Test
    void the_page_of_an_alarm_that_is_not_raised_promises_nothing() {
        String page = site.visitor.get("/alarms/hot/bag%3AL-128").body();
        assertTrue(page.contains("Not raised. That is no promise"), page);
        assertFalse(site.visitor.get("/alarms/hot/bag%3AGONE-1").body().contains("Take it out of service"));
    }

    @Test
    void the_journal_is_read_by_day_house_and_head() {
        String all = site.visitor.get("/alarms/journal").body();
        assertTrue(all.contains("Damp for too long, bag L-104"), all);
        assertTrue(all.contains("Sensor silent, sensor Birch air"), all);
        assertTrue(all.contains("its bench is washed"), all);
        String birch = site.visitor.get("/alarms/journal?house=birch").body();
        assertFalse(birch.contains("bag L-104"), birch);
        assertTrue(birch.contains("sensor Birch air"));
        String head = site.visitor.get("/alarms/journal?tag=l-104").body();
        assertFalse(head.contains("sensor Birch air"));
        String yesterday = site.visitor.get("/alarms/journal?day=2027-05-10").body();
        assertTrue(yesterday.contains("Mon 10 May"));
        assertFalse(yesterday.contains(">Tue 11 May"), yesterday);
        assertTrue(site.visitor.get("/alarms/journal?day=2027-01-01").body().contains("No alarm has changed"));
    }

    @Test
    void the_journal_is_taken_away_as_csv_that_a_spreadsheet_does_not_run() {
        HttpResponse<String> file = site.visitor.get("/alarms/journal.csv?house=birch");
        assertTrue(file.headers().firstValue("Content-Disposition").orElse("").contains("alarm-journal.csv"));
        List<String> lines = file.body().lines().toList();
        assertEquals(3, lines.size());
        assertEquals(
                "2027-05-11T02:55:00Z,2027-05-11T04:55,silent,Sensor silent,sensor:birch-air,sensor Birch air,"
                        + "unacknowledged,shelved,Bo,\"its bench is washed, \"\"back\"\" by noon\","
                        + "as it stood at 2027-05-11T02:55:00Z",
                lines.get(2));
        assertTrue(site.visitor.get("/alarms/journal.csv").body().contains(",'=Ada,"));
    }

    @Test
    void the_journal_is_taken_away_as_json() throws Exception {
        JsonNode events = new ObjectMapper()
                .readTree(site.visitor.get("/alarms/journal.json?tag=L-104").body());
        assertEquals(10, events.size());
        assertEquals("=Ada", events.get(1).get("by").asText());
        assertEquals("acknowledged", events.get(1).get("to").asText());
    }

    @Test
    void the_load_is_told_in_numbers_and_in_words() {
        String page = site.visitor.get("/alarms/load").body();
        assertTrue(page.contains("5 alarms in 14 days"), page);
        assertTrue(page.contains("“Damp for too long” chattered, at least 3 times within 6 h: bag L-104."), page);
        assertTrue(page.contains("Widen its deadband (now 0 %RH)"), page);
        assertTrue(page.contains("4 times"), page);
        assertTrue(site.visitor.get("/alarms/load?days=7").body().contains("5 alarms in 7 days"));
    }

    @Test
    void a_program_confirms_shelves_and_brings_back() throws Exception {
        assertEquals(
                "{\"done\":true}",
                json("{\"do\":\"seen\",\"rule\":\"hot\",\"subject\":\"bag:L-123\",\"by\":\"climate computer\"}")
                        .body());
        assertEquals(
                "{\"done\":true}",
                json("{\"do\":\"shelve\",\"rule\":\"damp-long\",\"subject\":\"bag:L-104\",\"for\":12,"
                                + "\"why\":\"trial\",\"by\":\"climate computer\"}")
                        .body());
        JsonNode aside = new ObjectMapper()
                .readTree(site.visitor.get("/api/board").body())
                .get("setAside")
                .get(0);
        assertEquals("shelved", aside.get("phase").asText());
        assertEquals("climate computer", aside.get("aside").get("by").asText());
        assertEquals("2027-05-11T19:40:00Z", aside.get("aside").get("until").asText());
        assertEquals(
                200,
                json("{\"do\":\"bring-back\",\"rule\":\"damp-long\",\"subject\":\"bag:L-104\",\"by\":\"Bo\"}")
                        .statusCode());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\u0001', textBlock = """
            {"do":"seen"}                                                            | "place":"rule"
            {"do":"burn","rule":"hot","subject":"bag:L-123","by":"Bo"}               | must be seen, shelve, take-off or bring-back
            {"do":"shelve","rule":"hot","subject":"bag:L-999","for":1,"why":"x","by":"B"} | must be one that is listed now
            {"do":"seen","rule":"hot","subject":"tree:L-123","by":"Bo"}              | is not allowed
            [1]                                                                      | must be a JSON object
            {                                                                        | is no JSON
            """)
    void a_program_is_told_every_fault(String body, String said) {
        HttpResponse<String> refused = json(body);
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains(said), refused.body());
    }

    @Test
    void a_page_of_another_site_cannot_act_as_a_program() {
        String body = "{\"do\":\"seen\",\"rule\":\"hot\",\"subject\":\"bag:L-123\",\"by\":\"Bo\"}";
        assertEquals(
                403,
                send(body, "Content-Type", JSON, "Origin", "http://evil.example")
                        .statusCode());
        assertEquals(
                403,
                send(body, "Content-Type", JSON, "Sec-Fetch-Site", "cross-site").statusCode());
        assertEquals(403, send(body, "Content-Type", "text/plain").statusCode());
        assertEquals(200, send(body, "Content-Type", JSON).statusCode());
    }

    private HttpResponse<String> json(String body) {
        return send(body, "Content-Type", JSON);
    }

    private HttpResponse<String> send(String body, String... headers) {
        return site.visitor.postText("/api/alarms", body, headers);
    }

    private List<AlarmPhase> phasesAside() {
        return site.watch.board().setAside().stream()
                .map(AlarmView::alarm)
                .map(alarm -> alarm.phase())
                .toList();
    }

    private static String location(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }
}
