package bagward.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.AlarmBook;
import bagward.bag.Head;
import bagward.bag.TagCode;
import bagward.board.Board;
import bagward.board.Scenario;
import bagward.site.form.Entered;
import bagward.site.page.BagPage;
import bagward.site.page.LotActions;
import bagward.site.page.NightHours;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The outlook of an evening on pages and for programs. */
class TonightPagesTest {
    private static final int HOURS_TO_SIX = 11;

    private final Board evening =
            Scenario.tick(Scenario.knowing(Scenario.dampWeek().at(24 * 4 + 18)), AlarmBook.EMPTY);
    private final OpenSite site = new OpenSite();

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void the_start_page_shows_a_house_with_an_outlook_hour_by_hour_and_says_why_another_has_none() {
        site.watch.show(evening);
        String page = site.visitor.get("/").body();
        assertTrue(page.contains("<summary>Hour by hour in South</summary>"), page);
        assertFalse(page.contains("Hour by hour in North"));
        assertTrue(page.contains("Only 0 of the last 7 nights have data"));
        String chart = page.substring(page.indexOf("tonight-south"));
        assertTrue(chart.contains("class=\"bag estimated\"") && !chart.contains("class=\"bag measured\""));
        assertTrue(chart.contains("house, expected, with its 80 % interval"));
        assertEquals(HOURS_TO_SIX, chart.split("<tr><th scope=\"row\">", -1).length - 1);
    }

    @Test
    void the_page_of_a_head_has_the_hours_of_its_bag_with_the_band_of_the_house_in_it() {
        Head head = evening.find(new TagCode("S-1")).orElseThrow().head();
        NightHours hours = page(head).tonight().orElseThrow().hours().orElseThrow();
        assertEquals(HOURS_TO_SIX, hours.rows().size());
        assertEquals(80, hours.percent());
        assertTrue(hours.wide().panels().stream()
                .allMatch(panel -> !panel.band().isEmpty()
                        && !panel.estimated().isEmpty()
                        && panel.measured().isEmpty()));
        assertEquals("likely", hours.rows().get(5).film());
    }

    private BagPage page(Head head) {
        var nothing = new BagPage.Actions(
                true,
                true,
                Optional.empty(),
                List.of(),
                List.of(),
                "film",
                List.of(),
                new LotActions(false, false, List.of(), List.of()),
                Entered.fresh(Map.of()));
        return BagPage.of(evening, head, Optional.empty(), Optional.empty(), 90, false, nothing);
    }

    @Test
    void programs_get_each_hour_with_its_interval_and_how_past_outlooks_did() throws IOException {
        site.watch.show(evening);
        JsonNode all =
                new ObjectMapper().readTree(site.visitor.get("/api/tonight").body());
        JsonNode south = all.path("houses").path(0);
        assertEquals("south", south.path("house").asText());
        assertEquals(HOURS_TO_SIX, south.path("hours").size());
        JsonNode hour = south.path("hours").path(3);
        assertEquals(80, hour.path("intervalPercent").asInt());
        assertEquals("estimated", hour.path("humidity").path("origin").asText());
        assertEquals(93, hour.path("humidity").path("value").asDouble(), 0.5);
        assertTrue(south.path("humiditySkill").path("nights").asInt() >= 2);
        assertTrue(all.path("houses").path(1).path("why").asText().startsWith("Only 0 of"));
        JsonNode bag = all.path("bags").path(0);
        assertEquals("S-1", bag.path("tag").asText());
        JsonNode inBag = bag.path("hours").path(3).path("humidity");
        assertTrue(inBag.path("low").asDouble() < inBag.path("high").asDouble(), inBag.toString());
    }

    @Test
    void programs_may_ask_for_one_house_or_one_head() throws IOException {
        site.watch.show(evening);
        ObjectMapper json = new ObjectMapper();
        JsonNode north =
                json.readTree(site.visitor.get("/api/tonight?house=north").body());
        assertEquals(1, north.path("houses").size());
        assertEquals(0, north.path("bags").size());
        assertEquals(
                1,
                json.readTree(site.visitor.get("/api/tonight?tag=s-1").body())
                        .path("bags")
                        .size());
        assertEquals(
                0,
                json.readTree(site.visitor.get("/api/tonight?tag=S-9").body())
                        .path("bags")
                        .size());
    }
}
