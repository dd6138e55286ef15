package bagward.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.CropId;
import bagward.bag.DryingStep;
import bagward.bag.FlowerSign;
import bagward.bag.Line;
import bagward.bag.MaterialId;
import bagward.bag.MeasuredMoisture;
import bagward.bag.PollenScore;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.RegisterChange;
import bagward.bag.RegisterChange.GiveBack;
import bagward.bag.RegisterChange.HangToDry;
import bagward.bag.RegisterChange.Harvest;
import bagward.bag.RegisterChange.Lend;
import bagward.bag.RegisterChange.Lose;
import bagward.bag.RegisterChange.NoteFlowers;
import bagward.bag.RegisterChange.Pack;
import bagward.bag.RegisterChange.PutOn;
import bagward.bag.RegisterChange.Swap;
import bagward.bag.RegisterChange.TakeOff;
import bagward.bag.RegisterChange.WithdrawDrying;
import bagward.bag.RegisterChange.WithdrawFlowers;
import bagward.bag.TagCode;
import bagward.bag.UsedBefore;
import bagward.climate.SensorId;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.Spot;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Register changes on disk. */
class SqliteRegisterTest {
    private static final TagCode TAG = new TagCode("R26-0147");
    private static final Instant TIME = Instant.parse("2026-05-04T03:02:01.123456789Z");
    private static final MaterialId FILM = new MaterialId("film-fine");

    private final Path file;

    SqliteRegisterTest(@TempDir Path folder) {
        file = folder.resolve("bagward.db");
    }

    private static List<RegisterChange> oneOfEach() {
        return List.of(
                putOn(PollinationKind.SELF, Optional.empty()),
                putOn(PollinationKind.SIB, Optional.of(PollenScore.NONE)),
                putOn(PollinationKind.CROSS, Optional.of(PollenScore.PLENTIFUL)),
                new Swap(TAG, TIME, FILM),
                new Swap(TAG, TIME, FILM, Optional.of(new UsedBefore(new TagCode("A1"), Optional.of(TIME)))),
                reused(UsedBefore.on(new TagCode("A1"))),
                new Lend(TAG, TIME, new SensorId("spare-1")),
                new GiveBack(TAG, TIME, new SensorId("spare-1")),
                new TakeOff(TAG, TIME),
                new NoteFlowers(TAG, TIME, FlowerSign.LAST_OPENED),
                new WithdrawFlowers(TAG, TIME, FlowerSign.PETALS_DROPPED),
                new Harvest(TAG, TIME, "12 pods, \"good\"\nsecond line"),
                new Lose(TAG, TIME, ""),
                new HangToDry(TAG, TIME, Optional.of(new HouseId("loft"))),
                new HangToDry(TAG, TIME, Optional.empty()),
                new Pack(TAG, TIME, "", Optional.empty()),
                new Pack(TAG, TIME, "two \"bags\"", Optional.of(MeasuredMoisture.of(7.25, "oven 103 °C"))),
                new WithdrawDrying(TAG, TIME, DryingStep.PACKED));
    }

    private static PutOn reused(UsedBefore before) {
        PutOn like = putOn(PollinationKind.SELF, Optional.empty());
        return new PutOn(
                like.tag(),
                like.at(),
                like.spot(),
                like.material(),
                like.seedParent(),
                like.pollenParent(),
                like.pollination(),
                like.crop(),
                Optional.of(before));
    }

    private static PutOn putOn(PollinationKind kind, Optional<PollenScore> score) {
        return new PutOn(
                TAG,
                TIME,
                new Spot(new HouseId("north"), new BayId("b2"), 17),
                FILM,
                new Line("Östra 4 × \"wild\""),
                new Line("K 12"),
                new Pollination(TIME.minusSeconds(600), "Ida", kind, 9, score),
                kind == PollinationKind.SIB ? Optional.of(new CropId("napus")) : Optional.empty());
    }

    @Test
    void the_sample_holds_every_kind_of_change() {
        Set<Class<?>> sampled = oneOfEach().stream().map(Object::getClass).collect(Collectors.toSet());
        assertEquals(Set.of(RegisterChange.class.getPermittedSubclasses()), sampled);
    }

    @Test
    void every_kind_of_change_survives_closing_and_opening_in_the_order_of_entry() {
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            stores.register().append(oneOfEach(), "Ida", TIME);
            stores.register().append(List.of(new TakeOff(new TagCode("A1"), TIME)), "Per", TIME);
        }
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            List<RegisterChange> changes = stores.register().changes();
            assertEquals(oneOfEach(), changes.subList(0, oneOfEach().size()));
            assertEquals(new TakeOff(new TagCode("A1"), TIME), changes.get(changes.size() - 1));
        }
    }

    @Test
    void a_list_with_a_broken_element_leaves_nothing() {
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            List<RegisterChange> broken = Arrays.asList(new TakeOff(TAG, TIME), null);
            assertThrows(RuntimeException.class, () -> stores.register().append(broken, "Ida", TIME));
            assertEquals(List.of(), stores.register().changes());
        }
    }

    @Test
    void a_change_of_an_unknown_kind_or_version_is_named_instead_of_guessed() throws SQLException {
        assertEquals(
                "unknown kind 'graft'",
                refused("{\"kind\":\"graft\",\"version\":1,\"tag\":\"A1\",\"at\":\"" + TIME + "\"}"));
        assertEquals(
                "unknown version",
                refused("{\"kind\":\"take-off\",\"version\":2,\"tag\":\"A1\",\"at\":\"" + TIME + "\"}"));
        assertEquals("without 'tag'", refused("{\"kind\":\"take-off\",\"version\":1}"));
        assertEquals(
                "without a time in 'at'",
                refused("{\"kind\":\"take-off\",\"version\":1,\"tag\":\"A1\",\"at\":\"noon\"}"));
    }

    private static String refused(String document) {
        String message = assertThrows(StoreException.class, () -> ChangeReading.read(document))
                .toString();
        return List.of("unknown kind 'graft'", "unknown version", "without 'tag'", "without a time in 'at'").stream()
                .filter(message::contains)
                .findFirst()
                .orElse(message);
    }

    @Test
    void the_stored_form_of_a_change_stays_readable() {
        String asWrittenByVersionOne = """
                {"kind":"put-on","version":1,"spot":{"house":"north","bay":"b2","number":17},"material":"film-fine",
                 "seedParent":"Östra 4 × \\"wild\\"","pollenParent":"K 12",
                 "pollination":{"at":"2026-05-04T02:52:01.123456789Z","by":"Ida","kind":"cross","budsOpened":9,
                 "score":"plentiful"},"tag":"R26-0147","at":"2026-05-04T03:02:01.123456789Z"}""";
        assertEquals(
                putOn(PollinationKind.CROSS, Optional.of(PollenScore.PLENTIFUL)),
                ChangeReading.read(asWrittenByVersionOne));
        assertEquals(
                new Swap(TAG, TIME, FILM),
                ChangeReading.read(
                        "{\"kind\":\"swap\",\"version\":1,\"material\":\"film-fine\",\"tag\":\"R26-0147\",\"at\":\""
                                + TIME + "\"}"),
                "a journal from before bags could be used again");
        assertTrue(ChangeJson.write(new TakeOff(TAG, TIME)).contains("\"kind\":\"take-off\""));
    }
}
