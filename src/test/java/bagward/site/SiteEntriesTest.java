package bagward.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.AlarmPhase;
import bagward.bag.FlowerSigns;
import bagward.bag.HeadState;
import bagward.bag.TagCode;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class SiteEntriesTest {
    private static final String HEADER = "tag,put_on,house,bay,spot,material,seed_parent,pollen_parent,kind,buds,by\n";

    private final OpenSite site = new OpenSite();

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void a_bag_is_put_on_and_its_page_is_shown() {
        HttpResponse<String> done = site.visitor.post("/put-on", putOn(Map.of()));
        assertEquals(303, done.statusCode(), done.body());
        assertEquals(
                "/bag/N-1?done=put-on", done.headers().firstValue("Location").orElse(""));
        assertTrue(site.watch.board().find(new TagCode("N-1")).isPresent());
        assertTrue(site.watch.entries().get(0).startsWith("Ada: "));
        String cookie = done.headers().firstValue("Set-Cookie").orElse("");
        assertTrue(cookie.contains("HttpOnly") && cookie.contains("SameSite=Strict"), cookie);
    }

    @Test
    void the_crop_named_with_a_head_is_that_of_later_heads_of_its_line() {
        site.visitor.post("/put-on", putOn(Map.of("crop", "napus")));
        site.visitor.post("/put-on", putOn(Map.of("tag", "N-2", "spot", "19", "at", "2027-05-11T09:40")));
        assertTrue(site.visitor.get("/bag/N-2").body().contains("Brassica napus"));
        assertTrue(site.visitor.get("/api/board").body().contains("\"crop\":\"napus\""));
        HttpResponse<String> refused = site.visitor.post("/put-on", putOn(Map.of("tag", "N-3", "crop", "nap")));
        assertTrue(refused.body().contains("id=\"crop-fault\""), refused.body());
        assertEquals(422, refused.statusCode());
    }

    @Test
    void a_wrong_form_says_what_is_wrong_beside_each_field_and_loses_nothing() {
        Map<String, String> form =
                putOn(Map.of("tag", "no good", "spot", "eleven", "buds", "99", "seed_parent", "Rook <3"));
        HttpResponse<String> refused = site.visitor.post("/put-on", form);
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("id=\"tag-fault\""));
        assertTrue(refused.body().contains("id=\"spot-fault\""));
        assertTrue(refused.body().contains("id=\"buds-fault\""));
        assertTrue(refused.body().contains("value=\"Rook &lt;3\""));
        assertTrue(site.watch.entries().isEmpty());
    }

    @Test
    void a_taken_spot_is_refused_at_the_spot() {
        HttpResponse<String> refused = site.visitor.post("/put-on", putOn(Map.of("spot", "1")));
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("id=\"spot-fault\""), refused.body());
        assertTrue(refused.body().contains("hangs there at that time"));
    }

    @Test
    void the_future_cannot_be_entered() {
        HttpResponse<String> refused = site.visitor.post("/put-on", putOn(Map.of("at", "2027-05-11T12:00")));
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("this lies in the future"));
    }

    @Test
    void a_bag_is_taken_off_swapped_and_given_a_sensor() {
        assertEquals(303, head("L-104", "take-off", Map.of()).statusCode());
        assertEquals(
                HeadState.BARE,
                site.watch.register().find(new TagCode("L-104")).orElseThrow().stateAt(OpenSite.MORNING));
        assertEquals(
                303, head("L-105", "swap", Map.of("material", "crisp-paper")).statusCode());
        assertEquals(303, head("L-106", "lend", Map.of("sensor", "spare-2")).statusCode());
        assertEquals(
                303, head("L-109", "give-back", Map.of("sensor", "spare-1")).statusCode());
        assertEquals(303, head("L-099", "harvest", Map.of("note", "brown pods")).statusCode());
        assertEquals(303, head("L-110", "lose", Map.of("note", "stem broken")).statusCode());
        assertEquals(6, site.watch.entries().size());
    }

    @Test
    void what_was_seen_of_the_flowers_makes_an_earlier_day_and_can_be_withdrawn() {
        assertEquals(303, head("L-104", "petals-dropped", Map.of()).statusCode());
        assertEquals(303, head("L-105", "last-flower", Map.of()).statusCode());
        TagCode tag = new TagCode("L-104");
        Instant noted = site.watch
                .register()
                .find(tag)
                .orElseThrow()
                .flowers()
                .petalsDropped()
                .orElseThrow();
        String page = site.visitor.get("/bag/L-104").body();
        assertTrue(page.contains("Not so: petals had dropped"), page);

        Map<String, String> withdrawal = Map.of("sign", "PETALS_DROPPED", "noted", noted.toString());
        assertEquals(303, head("L-104", "withdraw-flowers", withdrawal).statusCode());
        assertEquals(
                FlowerSigns.NOT_NOTED,
                site.watch.register().find(tag).orElseThrow().flowers());
        assertEquals(422, head("L-104", "withdraw-flowers", withdrawal).statusCode());
        assertEquals(
                422,
                head("L-104", "withdraw-flowers", Map.of("sign", "WILTED", "noted", "noon"))
                        .statusCode());
    }

    @Test
    void what_the_register_refuses_is_said_on_the_page_of_the_head() {
        HttpResponse<String> refused = head("L-106", "lend", Map.of("sensor", "spare-1"));
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("it hangs in the bag of head L-109 at that time"), refused.body());
        assertEquals(404, head("L-106", "no-such-form", Map.of()).statusCode());
    }

    @Test
    void an_alarm_is_confirmed_once() {
        Map<String, String> form =
                Map.of("rule", "damp-long", "subject", "bag:L-104", "by", "Ada", "back", "/bag/L-104");
        assertEquals("/bag/L-104?done=acknowledged", location(site.visitor.post("/alarms/seen", form)));
        assertEquals(
                AlarmPhase.ACKNOWLEDGED,
                site.watch.board().alarms().get(0).alarm().phase());
        assertEquals("/bag/L-104?done=gone", location(site.visitor.post("/alarms/seen", form)));
    }

    @Test
    void nobody_is_sent_to_another_site() {
        Map<String, String> form = Map.of("rule", "x", "subject", "y", "by", "Ada", "back", "//evil.example/");
        assertEquals("/alarms?done=gone", location(site.visitor.post("/alarms/seen", form)));
    }

    @Test
    void other_sites_cannot_enter_anything() {
        Map<String, String> form = SitePagesTest.entry(Map.of());
        String path = "/bag/L-104/take-off";
        assertEquals(
                403,
                site.visitor.post(path, form, "Origin", "http://evil.example").statusCode());
        assertEquals(403, site.visitor.post(path, form, "Origin", "null").statusCode());
        assertEquals(403, site.visitor.post(path, form, new String[0]).statusCode());
        assertEquals(
                403,
                site.visitor
                        .post(path, form, "Sec-Fetch-Site", "cross-site", "Origin", site.visitor.origin())
                        .statusCode());
        assertTrue(site.watch.entries().isEmpty());
        assertEquals(
                303,
                site.visitor.post(path, form, "Sec-Fetch-Site", "same-origin").statusCode());
    }

    @Test
    void looking_changes_nothing() {
        for (String path : List.of("/bag/L-104/take-off", "/alarms/seen")) {
            assertEquals(
                    404, site.visitor.get(path + "?at=2027-05-11T09:30&by=Ada").statusCode());
        }
        assertTrue(site.watch.entries().isEmpty());
    }

    @Test
    void too_much_is_refused() {
        Map<String, String> form = SitePagesTest.entry(Map.of("note", "x".repeat(40_000)));
        assertEquals(413, site.visitor.post("/bag/L-104/lose", form).statusCode());
        assertEquals(
                413,
                site.visitor
                        .post("/import", Map.of("text", "x".repeat(1_100_000)))
                        .statusCode());
    }

    @Test
    void a_file_is_imported_whole() {
        String text = HEADER + "N-1,2027-05-10T09:00,alder,long,20,pricked-film,Rook 3,Rook 3,self,9,Bo\n"
                + "N-2,2027-05-10T09:05,alder,long,19,pricked-film,Rook 3,Vetch 19,cross,9,Bo\n";
        HttpResponse<String> done = site.visitor.post("/import", Map.of("text", text, "by", "Ada"));
        assertEquals("/heads?done=import", location(done), done.body());
        assertEquals(2, site.watch.entries().size());
    }

    @Test
    void a_wrong_file_names_every_fault_and_imports_nothing() {
        String text = HEADER + "N-1,2027-05-10T09:00,alder,long,20,pricked-film,Rook 3,Rook 3,self,9,Bo\n"
                + "n 2,yesterday,alder,long,19,pricked-film,Rook 3,Vetch 19,cross,9,Bo\n";
        HttpResponse<String> refused = site.visitor.post("/import", Map.of("text", text, "by", "Ada"));
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("line 3"), refused.body());
        assertTrue(refused.body().contains("yesterday"));
        assertTrue(site.watch.entries().isEmpty());
        String taken = HEADER + "N-1,2027-05-10T09:00,alder,long,1,pricked-film,Rook 3,Rook 3,self,9,Bo\n";
        HttpResponse<String> spot = site.visitor.post("/import", Map.of("text", taken, "by", "Ada"));
        assertEquals(422, spot.statusCode());
        assertTrue(spot.body().contains("head N-1, spot"), spot.body());
    }

    @Test
    void a_name_is_kept_on_the_device() {
        HttpResponse<String> done = site.visitor.post("/you", Map.of("by", "Åse Øby"));
        String cookie = done.headers().firstValue("Set-Cookie").orElse("").split(";", 2)[0];
        assertTrue(site.visitor.get("/", "Cookie", cookie).body().contains("Åse Øby"));
        HttpResponse<String> nameless = site.visitor.post("/you", Map.of("by", ""));
        assertEquals(422, nameless.statusCode());
        assertFalse(
                site.visitor.get("/", "Cookie", "bagward-name=%00%zz").body().contains("You are"));
    }

    private HttpResponse<String> head(String tag, String action, Map<String, String> more) {
        return site.visitor.post("/bag/" + tag + "/" + action, SitePagesTest.entry(more));
    }

    private static String location(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }

    private static Map<String, String> putOn(Map<String, String> other) {
        Map<String, String> form = new HashMap<>(Map.of(
                "tag", "n-1",
                "bay", "alder/long",
                "spot", "20",
                "kind", "self",
                "seed_parent", "Rook 3",
                "material", "pricked-film",
                "buds", "9",
                "score", "2",
                "at", "2027-05-11T09:30",
                "by", "Ada"));
        form.putAll(other);
        return form;
    }
}
