package bagward.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Places in which seed dries. */
class DryingPagesTest {
    private final OpenSite site = new OpenSite();

    @AfterEach
    void close() {
        site.close();
    }

    private String page(String address) {
        site.watch.show(SampleDrying.on(site.watch.board()));
        return site.visitor.get(address).body();
    }

    @Test
    void the_front_page_says_what_the_air_does_to_seed_and_what_could_grow_since_when() {
        String front = page("/");
        assertTrue(front.contains("19.2 °C, measured"), front);
        // 9.6 % of the dry seed by the equation at 19.2 °C, 70 %RH and 0.45 oil.
        assertTrue(front.contains("more than 8.8 % of its moist mass, estimated; too damp to be stored"));
        assertTrue(front.contains("Could grow: Aspergillus halophilicus, Aspergillus restrictus, Aspergillus glaucus,"
                + " Wallemia since"));
        assertTrue(front.contains("No sensor was heard here so far"));
        assertTrue(front.contains("2 hang here"));
        assertTrue(front.contains("None is entered as hanging here, so damp air raises no alarm"));
    }

    @Test
    void a_station_without_a_drying_place_has_no_such_lines_and_a_page_that_says_how_to_get_one() {
        site.watch.show(SampleDrying.without(site.watch.board()));
        assertFalse(site.visitor.get("/").body().contains("Drying seed"));
        assertTrue(site.visitor.get("/wall").body().contains("class=\"wall-drying\" data-live></p>"));
        assertTrue(site.visitor.get("/drying").body().contains("use: drying"));
    }

    @Test
    void the_wall_has_one_short_line_for_each_place() {
        String wall = page("/wall");
        assertTrue(wall.contains("Seed loft 72 %RH, damp; Shed not known"));
    }

    @Test
    void the_page_draws_measured_solid_and_estimated_dashed_and_breaks_lines_at_gaps() {
        String page = page("/drying");
        Matcher measured =
                Pattern.compile("class=\"bag measured\" d=\"([^\"]*)\"").matcher(page);
        assertTrue(measured.find());
        assertEquals(2, measured.group(1).chars().filter(c -> c == 'M').count(), "a gap in the middle");
        Matcher estimated =
                Pattern.compile("class=\"bag estimated\" d=\"([^\"]*)\"").matcher(page);
        assertTrue(estimated.find());
        assertFalse(estimated.group(1).isEmpty());
    }

    @Test
    void it_counts_hours_by_fungus_and_class_and_says_what_is_not_known() {
        String page = page("/drying");
        assertTrue(page.contains("Not known: 12 h"));
        assertTrue(page.contains("Aspergillus halophilicus, from 65 %RH</dt><dd>11 h; not known for 12 h"));
        assertTrue(page.contains("Penicillium, from 80 %RH</dt><dd>at no known time; not known for 12 h"));
        assertTrue(page.contains("no number"), "a day beyond the range of the equation");
    }

    @Test
    void a_place_that_was_never_heard_has_no_empty_chart() {
        String page = page("/drying");
        String shed = page.substring(page.indexOf("id=\"place-shed\""));
        assertTrue(shed.contains("Nothing is known of these days."));
        assertFalse(shed.contains("<svg class=\"chart"));
    }

    @Test
    void what_is_known_of_keeping_seed_stands_there_with_its_source() {
        String page = page("/drying");
        assertTrue(
                page.contains("2.5 % a day did no harm, 4 % a day in heat did (cabbage seed crop, J Hort Sci 60:65"));
        assertTrue(page.contains("at 12.4 % and 25 °C after 30 d: Penicillium is frequent (Mills &amp; Sinha 1980"));
    }

    @Test
    void the_interface_gives_the_same_with_codes() {
        String board = page("/api/board");
        assertTrue(board.contains("\"drying\":[{\"id\":\"loft\""));
        assertTrue(board.contains("\"dryness\":\"too-damp\",\"growth\":\"none\""));
        assertTrue(board.contains("{\"name\":\"Wallemia\",\"since\":"));
        assertTrue(board.contains("\"lotsHanging\":2,"));
    }

    @Test
    void cautions_and_the_way_to_four_weeks_are_there() {
        String page = page("/drying");
        assertTrue(page.contains("Wear a mask that fits"));
        assertTrue(page.contains("href=\"/drying?days=28\""));
        assertTrue(page("/drying?days=28").contains("The last 28 days"));
    }
}
