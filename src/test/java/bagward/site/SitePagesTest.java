package bagward.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.board.Board;
import bagward.store.StoreException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SitePagesTest {
    private final OpenSite site = new OpenSite();

    @AfterEach
    void close() {
        site.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/wall",
                "/bag/L-104",
                "/bag/L-109?days=all",
                "/bag/L-099",
                "/heads",
                "/put-on",
                "/import",
                "/pollen",
                "/pollen?house=birch&against=morning-deficit",
                "/alarms",
                "/alarms/damp-long/bag%3AL-104",
                "/alarms/journal",
                "/alarms/load",
                "/rehearsal",
                "/season",
                "/season?days=730",
                "/sensors",
                "/quarantine",
                "/about",
                "/you"
            })
    void every_page_is_served_with_its_safety_headers_and_the_age_of_its_data(String path) {
        HttpResponse<String> page = site.visitor.get(path);
        assertEquals(200, page.statusCode());
        assertEquals(
                "text/html;charset=utf-8",
                header(page, "Content-Type").replace(" ", "").toLowerCase(java.util.Locale.ROOT));
        assertTrue(header(page, "Content-Security-Policy").startsWith("default-src 'none'; script-src 'self'"));
        assertEquals("nosniff", header(page, "X-Content-Type-Options"));
        assertEquals("same-origin", header(page, "Referrer-Policy"));
        assertTrue(page.body().contains("Newest reading 20 s ago"), page.body());
        assertFalse(page.body().contains("style=\""), "a strict policy refuses inline styles");
        assertTrue(page.body().contains("<html lang=\"en\""));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/assets/bagward.css",
                "/assets/wall.css",
                "/assets/wall-sizes.css",
                "/assets/live.js",
                "/assets/icon.svg",
                "/favicon.ico"
            })
    void assets_are_our_own_and_carry_a_charset(String path) {
        HttpResponse<String> asset = site.visitor.get(path);
        assertEquals(200, asset.statusCode());
        assertTrue(header(asset, "Content-Type").contains("charset=utf-8"));
        assertEquals(
                304,
                site.visitor.get(path, "If-None-Match", header(asset, "ETag")).statusCode());
    }

    @Test
    void the_bag_page_says_how_it_is_and_what_to_do() {
        String page = site.visitor.get("/bag/L-104").body();
        assertTrue(page.contains("damp 7 h 30 min: 96 %RH now, limit 90 %RH, estimated"));
        assertTrue(page.contains("Swap the bag for a dry one and spread its sticks"));
        assertTrue(page.contains("Caution:"));
        assertTrue(page.contains("96 %RH estimated, 92 to 100"));
    }

    @Test
    void tags_are_found_in_lower_case_and_unknown_ones_stay_unknown() {
        assertEquals("/bag/L-104", header(site.visitor.get("/find?tag=l-104"), "Location"));
        assertEquals("/heads?done=no-head", header(site.visitor.get("/find?tag=%3Cb%3E"), "Location"));
        assertEquals(404, site.visitor.get("/bag/NOBODY").statusCode());
    }

    @Test
    void a_page_that_is_not_there_stays_404_and_is_friendly() {
        HttpResponse<String> page = site.visitor.get("/no/such/page");
        assertEquals(404, page.statusCode());
        assertTrue(page.body().contains("There is no such page"));
    }

    @Test
    void old_data_is_called_old_on_every_page() {
        site.wait(Duration.ofMinutes(3));
        for (String path : List.of("/", "/wall", "/bag/L-104", "/sensors")) {
            String page = site.visitor.get(path).body();
            assertTrue(page.contains("Stale: this picture is 3 min old"), path);
        }
    }

    @Test
    void a_defect_shows_nothing_of_the_inside() {
        site.watch.fail(new IllegalStateException("secret detail at line 7"));
        HttpResponse<String> page = site.visitor.post("/bag/L-104/take-off", entry(Map.of()));
        assertEquals(500, page.statusCode());
        assertFalse(page.body().contains("secret"));
        assertFalse(page.body().contains("Exception"));
    }

    @Test
    void a_store_that_is_down_is_said_to_be_down() {
        site.watch.fail(new StoreException("disk full", new java.io.IOException("disk full")));
        HttpResponse<String> page = site.visitor.post("/bag/L-104/take-off", entry(Map.of()));
        assertEquals(503, page.statusCode());
        assertTrue(page.body().contains("Nothing was entered"));
    }

    @Test
    void what_came_from_outside_is_shown_as_text() {
        String page = site.visitor.get("/quarantine").body();
        assertTrue(page.contains("&lt;b&gt;warm&lt;/b&gt;"));
        assertFalse(page.contains("<b>warm"));
        assertTrue(site.visitor.get("/sensors").body().contains("lyngbakke/shed/scale"));
    }

    @Test
    void the_board_is_there_for_programs() throws Exception {
        JsonNode board =
                new ObjectMapper().readTree(site.visitor.get("/api/board").body());
        assertEquals("2027-05-11T07:40:00Z", board.get("at").asText());
        assertEquals(40, board.get("bags").size());
        JsonNode bag = find(board.get("bags"), "tag", "L-104");
        assertEquals("alder", bag.get("house").asText());
        assertEquals(96, bag.get("humidity").get("value").asDouble());
        assertEquals("%RH", bag.get("humidity").get("unit").asText());
        assertEquals("estimated", bag.get("origin").asText());
        assertEquals("high", bag.get("risk").get("band").asText());
        assertEquals(
                "measured",
                find(board.get("bags"), "tag", "L-109").get("origin").asText());
        assertTrue(find(board.get("bags"), "tag", "L-133").get("humidity").isNull());
        assertEquals("bag:L-104", board.get("alarms").get(0).get("subject").asText());
    }

    @Test
    void health_is_200_when_well_and_503_when_not() {
        assertEquals(200, site.visitor.get("/health").statusCode());
        site.watch.fallIll();
        HttpResponse<String> ill = site.visitor.get("/health");
        assertEquals(503, ill.statusCode());
        assertTrue(ill.body().contains("no connection for 3 min"));
    }

    @Test
    void health_is_a_page_for_people_with_the_parts_in_trouble_first() {
        HttpResponse<String> well = site.visitor.get("/health", "Accept", "text/html,application/xhtml+xml");
        assertEquals(200, well.statusCode());
        assertTrue(well.body().contains("Every part works."), well.body());
        site.watch.fallIll();
        HttpResponse<String> ill = site.visitor.get("/health", "Accept", "text/html,application/xhtml+xml");
        assertEquals(503, ill.statusCode());
        assertTrue(ill.body().indexOf("in trouble") < ill.body().indexOf(">works<"), ill.body());
        assertEquals("Accept", header(ill, "Vary"));
    }

    @Test
    void a_watch_that_stopped_making_boards_is_not_well() {
        site.wait(Duration.ofMinutes(3));
        assertEquals(503, site.visitor.get("/health").statusCode());
    }

    @Test
    void a_station_without_bags_has_a_calm_wall() {
        Board b = site.watch.board();
        site.watch.show(new Board(
                b.at(), b.station(), b.zone(), b.houses(), List.of(), b.sensors(), List.of(), b.newestReading()));
        assertTrue(site.visitor.get("/wall").body().contains("Nothing calls."));
    }

    @Test
    void a_port_that_is_taken_is_named() {
        SampleStores stores = new SampleStores(OpenSite.MORNING);
        try (Site second = new Site(
                SiteShow.settings(site.port()),
                SiteShow.parts(
                        site.watch,
                        stores,
                        site.pollen,
                        site.deliveries,
                        site.rehearsals,
                        java.time.Clock.systemUTC()))) {
            SiteException refused = assertThrows(SiteException.class, second::start);
            assertTrue(refused.getMessage().contains("127.0.0.1:" + site.port()));
        }
    }

    static Map<String, String> entry(Map<String, String> more) {
        Map<String, String> fields = new java.util.HashMap<>(Map.of("at", "2027-05-11T09:30", "by", "Ada"));
        fields.putAll(more);
        return fields;
    }

    private static String header(HttpResponse<?> answer, String name) {
        return answer.headers().firstValue(name).orElse("");
    }

    private static JsonNode find(JsonNode list, String field, String value) {
        for (JsonNode node : list) {
            if (node.get(field).asText().equals(value)) {
                return node;
            }
        }
        throw new AssertionError("no " + field + " " + value);
    }
}
