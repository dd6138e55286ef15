package bagward.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.AlarmPhase;
import bagward.board.AlarmView;
import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Deliveries, the page behind the link in a message, and the calendar. */
class DeliveryPagesTest {
    private static final String ANSWER = "/answer/" + SampleDeliveries.TOKEN;

    private final OpenSite site = new OpenSite();

    @AfterEach
    void close() {
        site.close();
    }

    private List<AlarmPhase> firstTwo() {
        return site.watch.board().alarms().stream()
                .limit(2)
                .map(AlarmView::alarm)
                .map(bagward.alarm.Alarm::phase)
                .toList();
    }

    @Test
    void the_page_of_deliveries_says_what_works_what_fails_since_when_and_why() {
        String page = site.visitor.get("/deliveries").body();
        assertTrue(page.contains("ruth@example.org by mail.example.org"), page);
        assertTrue(
                page.contains(
                        "Fails since Tue 11 May 09:10: https://gateway.example.org answers 503: &lt;not&gt; now. 3 wait."),
                page);
        assertTrue(page.contains("tried 4 times"), page);
        assertTrue(page.contains("Sign of life on bagward/alive every 30 s: connected."), page);
    }

    @Test
    void a_trial_goes_by_the_channel_that_was_asked_for_in_the_name_of_who_asked() {
        HttpResponse<String> done = site.visitor.post("/deliveries/trial", Map.of("channel", "gateway", "by", "Ada"));
        assertEquals(303, done.statusCode());
        assertEquals(List.of("gateway by Ada"), site.deliveries.trials());
        assertEquals(
                404,
                site.visitor
                        .post("/deliveries/trial", Map.of("channel", "../other", "by", "Ada"))
                        .statusCode());
        assertEquals(
                403,
                site.visitor
                        .post("/deliveries/trial", Map.of("channel", "gateway"), "Origin", "https://evil.example")
                        .statusCode());
        assertEquals(1, site.deliveries.trials().size());
    }

    @Test
    void opening_the_link_of_a_message_changes_nothing_and_its_button_confirms_in_the_name_of_its_person() {
        assertEquals(List.of(AlarmPhase.UNACKNOWLEDGED, AlarmPhase.UNACKNOWLEDGED), firstTwo());
        String page = site.visitor.get(ANSWER).body();
        assertTrue(page.contains("Seen it, Ruth Öst?"), page);
        assertTrue(page.contains("nobody has confirmed it yet"), page);
        assertEquals(List.of(AlarmPhase.UNACKNOWLEDGED, AlarmPhase.UNACKNOWLEDGED), firstTwo());
        HttpResponse<String> done = site.visitor.post(ANSWER, Map.of());
        assertEquals(
                ANSWER + "?done=acknowledged",
                done.headers().firstValue("Location").orElse(""));
        assertEquals(List.of(AlarmPhase.ACKNOWLEDGED, AlarmPhase.ACKNOWLEDGED), firstTwo());
        String after = site.visitor.get(ANSWER).body();
        assertTrue(after.contains("Nothing here waits for you any more"), after);
        assertFalse(after.contains("<button>I have seen it"), after);
        assertEquals(
                ANSWER + "?done=gone",
                site.visitor
                        .post(ANSWER, Map.of())
                        .headers()
                        .firstValue("Location")
                        .orElse(""));
    }

    @Test
    void a_link_that_is_not_ours_leads_nowhere() {
        assertEquals(
                404, site.visitor.get("/answer/7-1800000000-" + "x".repeat(22)).statusCode());
        assertEquals(404, site.visitor.post("/answer/nonsense", Map.of()).statusCode());
    }

    @Test
    void the_calendar_holds_for_each_bag_when_it_comes_off_and_keeps_the_lines_of_rfc_5545() {
        HttpResponse<String> answer = site.visitor.get("/calendar.ics");
        assertTrue(answer.headers().firstValue("Content-Type").orElse("").startsWith("text/calendar"));
        assertFalse(answer.body().replace("\r\n", "").contains("\n"), "every line ends with CR LF (RFC 5545, 3.1)");
        assertEquals(
                List.of(),
                answer.body()
                        .lines()
                        .filter(line -> line.getBytes(StandardCharsets.UTF_8).length > 75)
                        .toList(),
                "at most 75 octets a line (RFC 5545, 3.1)");
        ICalendar read = Biweekly.parse(answer.body()).first();
        assertEquals(
                site.watch.board().bags().stream()
                        .map(bag -> bag.head().tag() + " " + bag.due())
                        .collect(Collectors.toSet()),
                read.getEvents().stream()
                        .filter(event -> event.getUid().getValue().endsWith("-off@bagward"))
                        .map(DeliveryPagesTest::tagAndTime)
                        .collect(Collectors.toSet()));
        assertEquals(
                read.getEvents().size(),
                read.getEvents().stream()
                        .map(e -> e.getUid().getValue())
                        .distinct()
                        .count());
    }

    private static String tagAndTime(VEvent event) {
        String summary = event.getSummary().getValue();
        String tag = summary.replaceFirst("Take the bag off ", "").replaceFirst(",.*", "");
        return tag + " " + event.getDateStart().getValue().toInstant();
    }
}
