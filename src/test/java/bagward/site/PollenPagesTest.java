package bagward.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.Line;
import bagward.bag.PollenScore;
import bagward.pollen.PollenEntry;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PollenPagesTest {
    private final OpenSite site = new OpenSite();

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void the_page_warns_of_the_allergy_before_anything_else() {
        String page = site.visitor.get("/pollen").body();
        assertTrue(page.indexOf("strong allergen") < page.indexOf("Score it now"));
    }

    @Test
    void a_house_with_scores_has_an_outlook_learnt_from_them_with_its_interval() {
        String page = site.visitor.get("/pollen").body();
        assertTrue(page.contains("Learnt from 25 scored days of this house."), page);
        assertTrue(page.contains("% interval"));
        assertTrue(page.contains("chance of clear or plentiful pollen"));
        assertTrue(page.contains("association"));
        assertTrue(page.contains("1 day so hot that the next morning may be spoilt"));
    }

    @Test
    void a_house_without_light_says_so_and_gives_no_outlook() {
        String page = site.visitor.get("/pollen?house=birch").body();
        assertTrue(page.contains("No outlook: light is missing"));
        assertTrue(page.contains("15 more scored days are needed, of 15"));
        assertTrue(page.contains("A prior: a guess of ours"));
    }

    @Test
    void the_wall_names_each_house_with_its_chance() {
        String wall = site.visitor.get("/wall").body();
        assertTrue(wall.contains("<span class=\"pollen-house\">Alder house</span>"));
        assertTrue(wall.contains("no outlook, light is missing"));
    }

    @Test
    void a_key_of_the_page_enters_a_score_for_now() {
        HttpResponse<String> done = site.visitor.post("/pollen/score", Map.of("pick", "birch/2", "by", "Ada"));
        assertEquals(303, done.statusCode(), done.body());
        assertEquals("/pollen?house=birch&done=pollen-score", location(done));
        PollenEntry entry = new PollenEntry.Scored(
                SampleStation.BIRCH, Optional.empty(), OpenSite.MORNING, "Ada", PollenScore.CLEAR);
        assertEquals(List.of(entry), site.pollen.entered());
        assertTrue(site.visitor.get(location(done)).body().contains("Scored: it is in the list"));
    }

    @Test
    void a_score_of_a_line_at_another_time_is_entered_too() {
        Map<String, String> form =
                Map.of("house", "alder", "line", "Rook 3", "at", "2027-05-11T08:30", "score", "0", "by", "Ada");
        assertEquals(303, site.visitor.post("/pollen/score", form).statusCode());
        PollenEntry entry = new PollenEntry.Scored(
                SampleStation.ALDER,
                Optional.of(new Line("Rook 3")),
                Instant.parse("2027-05-11T06:30:00Z"),
                "Ada",
                PollenScore.NONE);
        assertEquals(List.of(entry), site.pollen.entered());
        assertTrue(site.visitor.get("/pollen?line=Rook+3").body().contains("Nothing is said yet"));
    }

    @Test
    void a_score_is_withdrawn_by_whom_ever_and_stays_in_the_journal() {
        Map<String, String> form = Map.of("house", "alder", "line", "", "at", "2027-05-10T08:00:00Z", "by", "Bo");
        int before = site.pollen.scores().size();
        assertEquals(
                "/pollen?house=alder&done=pollen-withdrawn", location(site.visitor.post("/pollen/withdraw", form)));
        assertEquals(before - 1, site.pollen.scores().size());
        assertEquals(1, site.pollen.entered().size());
    }

    @ParameterizedTest
    @CsvSource({
        "pick, alder/4",
        "pick, alder",
        "pick, /2",
        "score, 7",
        "at, 2027-05-11T12:00",
        "at, yesterday",
        "by, ''"
    })
    void what_cannot_be_a_score_is_refused_and_nothing_entered(String field, String value) {
        Map<String, String> form = new HashMap<>(Map.of("house", "alder", "score", "2", "by", "Ada"));
        form.put(field, value);
        HttpResponse<String> refused = site.visitor.post("/pollen/score", form);
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("Nothing was entered yet"));
        assertEquals(List.of(), site.pollen.entered());
    }

    @Test
    void houses_that_do_not_exist_are_not_found() {
        assertEquals(404, site.visitor.get("/pollen?house=willow").statusCode());
        assertEquals(404, site.visitor.get("/pollen.csv?house=%3Cb%3E").statusCode());
    }

    @Test
    void the_table_has_one_line_a_score_with_its_light() throws java.io.IOException {
        site.visitor.post("/pollen/score", Map.of("pick", "alder/3", "by", "=HYPERLINK(\"x\")"));
        HttpResponse<String> file = site.visitor.get("/pollen.csv?house=alder&line=");
        assertEquals(
                "attachment; filename=\"pollen-alder.csv\"",
                file.headers().firstValue("Content-Disposition").orElse(""));
        List<CSVRecord> rows = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new java.io.StringReader(file.body()))
                .getRecords();
        CSVRecord newest = rows.get(rows.size() - 1);
        assertEquals("3", newest.get("score"));
        assertEquals("'=HYPERLINK(\"x\")", newest.get("by"), "no spreadsheet takes a name for a formula");
        assertTrue(Double.parseDouble(newest.get("light_to_score_mol_m2")) > 0.5);
        assertEquals("2027-05-11T07:40:00Z", newest.get("scored_at"));
        assertFalse(rows.get(0).isSet("light"));
    }

    private static String location(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }
}
