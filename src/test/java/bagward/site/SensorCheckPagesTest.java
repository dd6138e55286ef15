package bagward.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Spare sensor 2 hung over common salt until 00:40 and over potassium nitrate until 08:40, in the station's zone. */
class SensorCheckPagesTest {
    private static final Map<String, String> NIGHT = Map.of(
            "salt_low", "sodium-chloride",
            "at_low", "2027-05-11T00:40",
            "celsius_low", "",
            "salt_high", "potassium-nitrate",
            "at_high", "2027-05-11T08:40",
            "celsius_high", "");

    private final OpenSite site = new OpenSite();

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void the_page_of_a_sensor_shows_its_week_and_is_found_from_the_list() {
        assertTrue(site.visitor.get("/sensors").body().contains("href=\"/sensor/spare-2\""));
        String page = site.visitor.get("/sensor/spare-2").body();
        assertTrue(page.contains("The last seven days"));
        assertTrue(page.contains("None yet."));
    }

    @Test
    void a_sensor_that_does_not_exist_is_not_found() {
        assertEquals(404, site.visitor.get("/sensor/nobody").statusCode());
    }

    @Test
    void a_light_sensor_offers_no_check_over_salts() {
        assertFalse(site.visitor.get("/sensor/alder-light").body().contains("two salts"));
    }

    @Test
    void a_check_is_looked_at_first_and_nothing_is_kept_by_looking() {
        HttpResponse<String> looked = site.visitor.post("/sensor/spare-2/check", NIGHT);
        assertEquals(200, looked.statusCode());
        assertTrue(looked.body().contains("the sensor read 78.3 %RH: 2.8 %RH too high."), looked.body());
        assertTrue(looked.body().contains("the sensor read 96.6 %RH: 2.0 %RH too high."), looked.body());
        assertTrue(looked.body().contains("Keep this check"));
        assertTrue(site.visitor.get("/sensor/spare-2").body().contains("None yet."));
    }

    @Test
    void a_kept_check_is_listed_with_what_it_changes() {
        HttpResponse<String> kept = keep(Map.of());
        assertEquals(
                "/sensor/spare-2?done=checked",
                kept.headers().firstValue("Location").orElse(""),
                kept.body());
        String page = site.visitor.get("/sensor/spare-2").body();
        assertTrue(page.contains("Tue 11 May 08:40, by Ada"), page);
        assertTrue(page.contains("From Tue 11 May 08:40 on a reading of 90 %RH counts as 87.7 %RH."), page);
    }

    @Test
    void a_check_is_withdrawn_with_a_reason_and_stays_on_the_page() {
        keep(Map.of());
        HttpResponse<String> nameless = site.visitor.post("/sensor/spare-2/withdraw", Map.of("number", "1"));
        assertEquals(422, nameless.statusCode());
        assertEquals(
                303,
                site.visitor
                        .post("/sensor/spare-2/withdraw", Map.of("number", "1", "by", "Bo", "why", "box leaked"))
                        .statusCode());
        assertTrue(site.visitor.get("/sensor/spare-2").body().contains("withdrawn by Bo"));
        HttpResponse<String> again = site.visitor.post(
                "/sensor/spare-1/withdraw", Map.of("number", "1", "by", "Bo", "why", "of another sensor"));
        assertEquals(
                "/sensor/spare-1?done=no-check",
                again.headers().firstValue("Location").orElse(""));
    }

    @Test
    void a_sensor_that_was_not_heard_over_the_salt_is_refused_at_that_time() {
        HttpResponse<String> refused = keep(Map.of("at_low", "2027-05-11T04:40"));
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("the sensor sent 0 readings of humidity"), refused.body());
    }

    @Test
    void salts_in_the_wrong_order_and_wrong_numbers_are_refused_with_what_was_typed() {
        HttpResponse<String> swapped =
                keep(Map.of("salt_low", "potassium-nitrate", "salt_high", "potassium-sulphate", "celsius_low", "warm"));
        assertEquals(422, swapped.statusCode());
        assertTrue(swapped.body().contains("‘warm’ is no temperature"), swapped.body());
        HttpResponse<String> close = keep(Map.of("salt_low", "potassium-chloride"));
        assertEquals(422, close.statusCode());
        assertTrue(close.body().contains("%RH apart"), close.body());
    }

    private HttpResponse<String> keep(Map<String, String> changes) {
        Map<String, String> form = new HashMap<>(NIGHT);
        form.put("by", "Ada");
        form.putAll(changes);
        return site.visitor.post("/sensor/spare-2/keep", form);
    }
}
