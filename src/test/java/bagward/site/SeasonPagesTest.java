package bagward.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Houses over months and years. */
class SeasonPagesTest {
    private final OpenSite site = new OpenSite();

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void days_that_are_not_known_break_the_line_and_are_named_in_the_table() {
        String page = site.visitor.get("/season?days=365").body();
        Matcher line = Pattern.compile("class=\"house\" d=\"([^\"]*)\"").matcher(page);
        assertTrue(line.find());
        long pieces = line.group(1).chars().filter(c -> c == 'M').count();
        assertTrue(pieces >= 4 && pieces <= 5, "pieces of the line of a year with a hole each 100 days: " + pieces);
        assertTrue(page.contains("<td>no data</td>"));
        assertTrue(page.contains("<td>31 %</td>"));
    }

    @Test
    void it_says_how_far_back_single_readings_are_kept() {
        assertTrue(site.visitor.get("/season").body().contains("Single readings are kept since Sun 1 Mar 2026"));
    }

    @Test
    void a_house_without_any_day_says_so_and_has_no_empty_chart() {
        String page = site.visitor.get("/season").body();
        String birch = page.substring(page.indexOf("id=\"house-birch\""));
        assertTrue(birch.contains("No day of this time is known well enough for a mean yet."));
        assertFalse(birch.contains("<svg class=\"chart"));
    }

    @Test
    void it_is_found_from_every_page() {
        assertTrue(site.visitor.get("/").body().contains("href=\"/season\""));
        assertEquals(200, site.visitor.get("/season?days=forever").statusCode());
    }
}
