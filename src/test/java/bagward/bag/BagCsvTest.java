package bagward.bag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.RegisterChange.GiveBack;
import bagward.bag.RegisterChange.HangToDry;
import bagward.bag.RegisterChange.Harvest;
import bagward.bag.RegisterChange.Lend;
import bagward.bag.RegisterChange.NoteFlowers;
import bagward.bag.RegisterChange.Pack;
import bagward.bag.RegisterChange.PutOn;
import bagward.bag.RegisterChange.TakeOff;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BagCsvTest {
    private static final String HEADER =
            "tag,put_on,house,bay,spot,material,seed_parent,pollen_parent,kind,buds,score,by,taken_off\n";
    private static final String GOOD = "H1,2026-05-01T07:30,north,a,3,paper,Tessel,Tessel,self,9,2,Ida,\n";

    private final BagCsv csv = new BagCsv(Stations.ZONE);

    @Test
    void a_line_is_a_bag_put_on_in_local_time() {
        Instant at = Instant.parse("2026-05-01T05:30:00Z");
        PutOn expected = new PutOn(
                new TagCode("H1"),
                at,
                Stations.spot(3),
                Stations.PAPER,
                new Line("Tessel"),
                new Line("Tessel"),
                new Pollination(at, "Ida", PollinationKind.SELF, 9, Optional.of(PollenScore.CLEAR)));

        assertEquals(List.of(expected), csv.read(HEADER + GOOD));
    }

    @Test
    void what_was_seen_of_the_flowers_can_stand_in_the_line() {
        String text = HEADER.strip() + ",last_flower,petals_dropped\n" + GOOD.strip()
                + ",2026-05-03T07:30,2026-05-06T07:30\n";
        TagCode tag = new TagCode("H1");

        List<RegisterChange> changes = csv.read(text);

        assertEquals(
                List.of(
                        new NoteFlowers(tag, Instant.parse("2026-05-03T05:30:00Z"), FlowerSign.LAST_OPENED),
                        new NoteFlowers(tag, Instant.parse("2026-05-06T05:30:00Z"), FlowerSign.PETALS_DROPPED)),
                changes.subList(1, changes.size()));
    }

    @Test
    void harvest_drying_packing_and_a_bag_used_before_can_stand_in_the_line() {
        String text = HEADER.strip()
                + ",bag_before,bag_before_off,harvested,harvest_note,hung,drying_place,packed,pack_note,moisture,moisture_method\n"
                + "H1,2026-05-01T07:30,north,a,3,paper,Tessel,Tessel,self,9,,Ida,2026-05-08T07:30,A-9,2026-04-20T08:00,"
                + "2026-06-20T09:00,brown,2026-06-20T10:00,north,2026-06-30T10:00,clean,7.5,meter\n";
        TagCode tag = new TagCode("H1");

        List<RegisterChange> changes = csv.read(text);

        assertEquals(
                Optional.of(new UsedBefore(new TagCode("A-9"), Optional.of(Instant.parse("2026-04-20T06:00:00Z")))),
                ((PutOn) changes.get(0)).before());
        assertEquals(
                List.of(
                        new Harvest(tag, Instant.parse("2026-06-20T07:00:00Z"), "brown"),
                        new HangToDry(tag, Instant.parse("2026-06-20T08:00:00Z"), Optional.of(Stations.NORTH)),
                        new Pack(
                                tag,
                                Instant.parse("2026-06-30T08:00:00Z"),
                                "clean",
                                Optional.of(MeasuredMoisture.of(7.5, "meter")))),
                changes.subList(2, changes.size()));
    }

    @Test
    void a_cell_of_the_lot_without_the_one_it_belongs_to_is_named() {
        String text = HEADER.strip() + ",bag_before_off,harvest_note,drying_place,pack_note,moisture,moisture_method\n"
                + GOOD.strip() + ",2026-04-20T08:00,brown,elsewhere,clean,7.5,\n";

        List<String> places = refused(text).stream()
                .map(f -> f.place().replace("line 2, column ", ""))
                .toList();

        assertEquals(
                List.of(
                        "'bag_before_off'",
                        "'harvest_note'",
                        "'drying_place'",
                        "'moisture'",
                        "'pack_note'",
                        "'moisture'"),
                places);
    }

    @Test
    void semicolons_quotes_a_byte_order_mark_and_blank_lines_are_read() {
        String text = "\uFEFF" + (HEADER + "\n" + GOOD).replace(',', ';').replace("Ida", "\"Ida; and Bo\"");

        PutOn putOn = (PutOn) csv.read(text).get(0);

        assertEquals("Ida; and Bo", putOn.pollination().by());
    }

    @Test
    void a_bag_that_is_off_and_a_lent_sensor_become_changes_of_their_own() {
        String text = HEADER.strip() + ",sensor,given_back\n"
                + "H1,2026-05-01 07:30,north,a,3,paper,Tessel,Tessel,self,9,,Ida,2026-05-08T07:30Z,spare-1,2026-05-04T07:00+02:00\n";
        TagCode tag = new TagCode("H1");

        List<RegisterChange> changes = csv.read(text);

        assertEquals(
                List.of(
                        new Lend(tag, Instant.parse("2026-05-01T05:30:00Z"), Stations.SPARE),
                        new GiveBack(tag, Instant.parse("2026-05-04T05:00:00Z"), Stations.SPARE),
                        new TakeOff(tag, Instant.parse("2026-05-08T07:30:00Z"))),
                changes.subList(1, 4));
    }

    @Test
    void the_crop_of_the_seed_parent_may_be_named() {
        String header = HEADER.strip() + ",crop\n";

        PutOn named = (PutOn) csv.read(header + GOOD.strip() + ",napus\n").get(0);
        PutOn silent = (PutOn) csv.read(header + GOOD.strip() + ",\n").get(0);

        assertEquals(Optional.of(new CropId("napus")), named.crop());
        assertEquals(Optional.empty(), silent.crop());
    }

    @Test
    void every_wrong_cell_is_named_by_line_and_column() {
        String text = HEADER + GOOD + "h2,yesterday,North,a,0,paper,Tessel,,selv,900,7,Ida,\n";

        assertEquals(
                List.of(
                        "line 3, column 'tag'",
                        "line 3, column 'put_on'",
                        "line 3, column 'house'",
                        "line 3, column 'pollen_parent'",
                        "line 3, column 'kind'",
                        "line 3, column 'score'"),
                places(text));
    }

    @Test
    void lines_are_counted_as_an_editor_counts_them_even_after_a_cell_of_two_lines() {
        String text = HEADER + GOOD.replace("Ida", "\"Ida\nand Bo\"") + "\n" + GOOD.replace("H1", "h1");

        assertEquals(List.of("line 5, column 'tag'"), places(text));
    }

    @Test
    void a_misspelt_column_is_answered_with_the_nearest_known_one() {
        List<Fault> faults = refused(HEADER.replace("buds", "bud") + GOOD);

        assertEquals("Did you mean 'buds'?", faults.get(0).remedy());
        assertEquals("column 'buds' is missing", faults.get(1).rule());
    }

    @Test
    void a_line_with_a_cell_too_many_is_refused() {
        assertEquals(List.of("line 2"), places(HEADER + GOOD.replace("Ida", "Ida,Bo")));
    }

    @Test
    void an_hour_that_the_clock_change_left_out_is_refused() {
        List<Fault> faults = refused(HEADER + GOOD.replace("2026-05-01T07:30", "2026-03-29T02:30"));

        assertTrue(faults.get(0).rule().contains("does not exist"), faults.toString());
    }

    @Test
    void an_hour_that_occurs_twice_is_refused_and_both_readings_are_offered() {
        List<Fault> faults = refused(HEADER + GOOD.replace("2026-05-01T07:30", "2026-10-25T02:30"));

        assertEquals(
                "Write 2026-10-25T02:30+02:00 or 2026-10-25T02:30+01:00.",
                faults.get(0).remedy());
    }

    @Test
    void an_unclosed_quote_is_one_clear_fault() {
        assertEquals(List.of("file"), places(HEADER + GOOD.replace("Ida", "\"Ida")));
    }

    @Test
    void an_empty_file_lacks_its_columns() {
        assertEquals(11, refused("").size());
    }

    private List<String> places(String text) {
        return refused(text).stream().map(Fault::place).toList();
    }

    private List<Fault> refused(String text) {
        return assertThrows(RefusedInputException.class, () -> csv.read(text)).faults();
    }
}
