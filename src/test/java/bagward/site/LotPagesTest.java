package bagward.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.BagCsv;
import bagward.bag.BagUse;
import bagward.bag.Drying;
import bagward.bag.TagCode;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Ripening pods, seed lots and used bags on pages and in the interface. */
class LotPagesTest {
    private static final TagCode LOT = SampleRegister.HARVESTED;

    private final OpenSite site = new OpenSite();

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void the_page_of_a_bare_head_tells_how_its_pods_fare_and_that_of_a_bagged_one_does_not() {
        String bare = page(SampleRegister.BARE.value());
        assertTrue(bare.contains("Ripening pods"), bare);
        assertTrue(bare.contains("Mould index of the pods"), bare);
        assertFalse(bare.contains("Hang to dry"), "not before the harvest");
        assertFalse(page("L-104").contains("Mould index of the pods"));
    }

    @Test
    void a_head_that_was_given_up_has_no_pods_and_no_lot() {
        site.visitor.post("/bag/" + SampleRegister.BARE + "/lose", SitePagesTest.entry(Map.of("note", "broken")));
        String lost = page(SampleRegister.BARE.value());
        assertFalse(lost.contains("Mould index of the pods"), lost);
        assertFalse(lost.contains("hangs to dry"), lost);
        assertFalse(lost.contains("Hang to dry"), lost);
    }

    @Test
    void a_lot_is_hung_listed_packed_and_its_page_tells_what_the_air_did() {
        assertTrue(page(LOT.value()).contains("Enter where it hangs to dry"));
        HttpResponse<String> hung = enter("hang-to-dry", Map.of("place", "loft", "at", "2027-05-10T12:00"));
        assertEquals("/bag/L-098?done=hang-to-dry", location(hung), hung.body());
        String list = site.visitor.get("/heads").body();
        assertTrue(list.contains("/bag/L-098#lot"), list);
        assertTrue(list.contains("harvested, hangs to dry"), list);
        String page = page(LOT.value());
        assertTrue(page.contains("Hung to dry: Seed loft"), page);
        assertTrue(page.contains("Aspergillus halophilicus 6 h"), page);
        assertTrue(page.contains("wear a mask") || page.contains("Wear a mask"), page);

        Map<String, String> packing = Map.of("note", "clean", "moisture", "7,5", "method", "meter <A>");
        assertEquals("/bag/L-098?done=pack", location(enter("pack", packing)));
        String packed = page(LOT.value());
        assertTrue(packed.contains("clean; seed of 7.5 % moisture"), packed);
        assertTrue(packed.contains("meter &lt;A>") || packed.contains("meter &lt;A&gt;"), packed);
        String after = site.visitor.get("/heads").body();
        assertTrue(after.contains("No lot hangs to dry."), after);
        assertTrue(after.contains("harvested, packed"), after);
    }

    @Test
    void what_is_wrong_about_a_lot_is_said_beside_what_was_typed() {
        assertRefused("the lot does not hang to dry at that time", enter("pack", Map.of("note", "early")));
        assertRefused("it is no drying place of the station", enter("hang-to-dry", Map.of("place", "alder")));
        assertRefused(
                "the head was not harvested by then",
                enter("hang-to-dry", Map.of("place", "elsewhere", "at", "2027-05-01T12:00")));
        assertEquals(303, enter("hang-to-dry", Map.of("place", "elsewhere")).statusCode());
        site.wait(Duration.ofHours(1));
        HttpResponse<String> noMethod = enter("pack", Map.of("moisture", "7.5", "note", "kept <words>"));
        assertRefused("needs the method in words", noMethod);
        assertTrue(noMethod.body().contains("kept &lt;words"), noMethod.body());
        assertRefused("is impossible", enter("pack", Map.of("moisture", "75", "method", "meter")));
        assertRefused("a number is needed", enter("pack", Map.of("moisture", "dry", "method", "meter")));
        assertRefused("needs the moisture", enter("pack", Map.of("method", "meter")));
    }

    @Test
    void entries_are_withdrawn_from_the_newest_on() {
        enter("hang-to-dry", Map.of("place", "loft", "at", "2027-05-10T12:00"));
        enter("pack", Map.of("note", "", "at", "2027-05-11T09:00"));
        Drying drying = drying();
        Instant hungAt = drying.stays().get(0).from();
        Instant packedAt = drying.packings().get(0).at();
        HttpResponse<String> refused = withdraw("HUNG", hungAt);
        assertRefused("the lot does not hang to dry at that time", refused);
        assertEquals("/bag/L-098?done=withdraw-drying", location(withdraw("PACKED", packedAt)));
        assertEquals(303, withdraw("HUNG", hungAt).statusCode());
        assertEquals(Drying.NONE, drying());
        assertRefused("nothing of the kind was entered", withdraw("HUNG", hungAt));
        assertRefused("there is no such step", withdraw("THRESHED", hungAt));
    }

    @Test
    void a_bag_that_was_used_before_is_followed_back_and_a_wrong_one_is_refused_at_its_field() {
        HttpResponse<String> wrong = site.visitor.post("/put-on", putOn("pricked-film", "L-098"));
        assertRefused("that bag was of crisp-paper", wrong);
        assertTrue(wrong.body().contains("id=\"put-on-bag_before-fault\""), wrong.body());
        assertTrue(wrong.body().contains("value=\"L-098\""), wrong.body());

        assertEquals(
                303, site.visitor.post("/put-on", putOn("crisp-paper", "l-098")).statusCode());
        Instant before =
                site.watch.register().find(LOT).orElseThrow().baggings().get(0).putOn();
        assertEquals(
                new BagUse(LOT, before),
                site.watch
                        .register()
                        .find(new TagCode("N-1"))
                        .orElseThrow()
                        .baggings()
                        .get(0)
                        .before()
                        .orElseThrow());
        String page = page("N-1");
        assertTrue(page.contains("This bag was used before"), page);
        assertTrue(page.contains("On head L-098"), page);
        assertFalse(page("L-104").contains("id=\"used\""), "a new bag has no such section");
    }

    @Test
    void a_swap_can_name_a_used_bag_too() {
        Map<String, String> swap = Map.of("material", "crisp-paper", "bag_before", "L-099");
        HttpResponse<String> done = site.visitor.post("/bag/L-105/swap", SitePagesTest.entry(swap));
        assertEquals(303, done.statusCode(), done.body());
        assertTrue(page("L-105").contains("On head L-099"));
        Map<String, String> unknown = Map.of("material", "crisp-paper", "bag_before", "L-001");
        HttpResponse<String> refused = site.visitor.post("/bag/L-106/swap", SitePagesTest.entry(unknown));
        assertRefused("no bag had come off this head by then", refused);
        assertTrue(refused.body().contains("id=\"swap-bag_before-fault\""), refused.body());
    }

    @Test
    void programs_get_the_lots_and_how_one_fared() throws IOException {
        enter("hang-to-dry", Map.of("place", "loft", "at", "2027-05-10T12:00"));
        JsonNode lot = json("/api/lots").path(0);
        assertEquals("L-098", lot.path("tag").asText());
        assertTrue(lot.path("hangs").asBoolean());
        assertEquals("loft", lot.path("stays").path(0).path("place").asText());
        assertTrue(lot.path("stays").path(0).path("to").isNull(), lot.toString());
        JsonNode course = json("/api/lots/L-098");
        assertEquals("loft", course.path("places").path(0).path("place").asText());
        assertTrue(course.path("index").isNumber(), course.toString());
        assertTrue(course.path("places").path(0).path("dryEnoughHours").asDouble() > 0, course.toString());
        assertEquals(404, site.visitor.get("/api/lots/L-104").statusCode(), "its bag is on");
        assertEquals(404, site.visitor.get("/api/lots/NOBODY").statusCode());
    }

    @Test
    void the_lots_can_be_taken_away_as_a_table_with_the_columns_of_the_import() {
        enter("hang-to-dry", Map.of("place", "loft", "at", "2027-05-10T12:00"));
        enter("pack", Map.of("note", "=1+1", "moisture", "7.5", "method", "meter", "at", "2027-05-11T09:00"));
        List<String> lines = site.visitor.get("/lots.csv").body().lines().toList();
        assertEquals(2, lines.size(), lines::toString);
        assertTrue(
                BagCsv.columns()
                        .containsAll(List.of(lines.get(0).replace("\uFEFF", "").split(","))),
                lines.get(0));
        assertTrue(lines.get(1).endsWith("2027-05-10T12:00,loft,2027-05-11T09:00,'=1+1,7.5,meter"), lines.get(1));
    }

    private JsonNode json(String path) throws IOException {
        return new ObjectMapper().readTree(site.visitor.get(path).body());
    }

    private String page(String tag) {
        HttpResponse<String> page = site.visitor.get("/bag/" + tag);
        assertEquals(200, page.statusCode(), page.body());
        return page.body();
    }

    private Drying drying() {
        return site.watch.register().find(LOT).orElseThrow().drying();
    }

    private HttpResponse<String> enter(String action, Map<String, String> more) {
        return site.visitor.post("/bag/" + LOT + "/" + action, SitePagesTest.entry(more));
    }

    private HttpResponse<String> withdraw(String step, Instant entered) {
        return enter("withdraw-drying", Map.of("step", step, "entered", entered.toString()));
    }

    private static void assertRefused(String rule, HttpResponse<String> answer) {
        assertEquals(422, answer.statusCode(), answer.body());
        assertTrue(answer.body().contains(rule), answer.body());
    }

    private static String location(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }

    private static Map<String, String> putOn(String material, String before) {
        return new HashMap<>(Map.of(
                "tag", "n-1",
                "bay", "alder/long",
                "spot", "20",
                "kind", "self",
                "seed_parent", "Rook 3",
                "material", material,
                "bag_before", before,
                "buds", "9",
                "at", "2027-05-11T09:30",
                "by", "Ada"));
    }
}
