package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.fault.RefusedInputException;
import bagward.units.SeedMoisture;
import java.time.Duration;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class StorageReaderTest {
    private static final Storage SHIPPED = Seeds.storage();

    @ParameterizedTest
    @CsvFileSource(resources = "/mould/storage-fungi.csv", numLinesToSkip = 1)
    void the_shipped_bands_are_those_of_the_table(double percent, String fungi, double driest, double moistest) {
        assertEquals(
                fungi,
                SHIPPED.fungiAt(percent).stream().map(StorageFungus::name).collect(Collectors.joining("; ")));
        StorageBand band = SHIPPED.bands().stream()
                .filter(b -> b.fromPercent() <= percent && percent < b.toPercent())
                .findFirst()
                .orElseThrow();
        assertEquals(new SeedMoisture(driest), band.driest());
        assertEquals(new SeedMoisture(moistest), band.moistest());
    }

    @Test
    void a_fungus_begins_exactly_at_its_band_and_none_below_the_first() {
        assertTrue(SHIPPED.fungiAt(64.9).isEmpty());
        assertEquals(1, SHIPPED.fungiAt(65).size());
        assertEquals(8, SHIPPED.fungiAt(100).size());
    }

    @Test
    void the_shipped_observations_are_those_of_rapeseed_kept_at_25_degrees() {
        // Mills & Sinha 1980, Phytopathology 70:541.
        StorageObservation moist = SHIPPED.seen().get(0);
        assertEquals(new SeedMoisture(12.4), moist.moisture());
        assertEquals(Duration.ofDays(30), moist.after());
        StorageObservation dry = SHIPPED.seen().get(1);
        assertEquals(new SeedMoisture(9.7), dry.moisture());
        assertEquals(Duration.ofDays(50), dry.after());
    }

    @Test
    void everything_shipped_names_its_source() {
        assertTrue(!SHIPPED.oil().source().isBlank()
                && !SHIPPED.stored().source().isBlank()
                && !SHIPPED.bandsSource().isBlank()
                && !SHIPPED.pace().source().isBlank()
                && SHIPPED.seen().stream().noneMatch(seen -> seen.source().isBlank()));
    }

    @Test
    void values_out_of_order_and_missing_parts_are_refused_together() {
        RefusedInputException refused =
                assertThrows(RefusedInputException.class, () -> StorageReader.parse("storage", """
                        oil: {low: 0.5, middle: 0.4, high: 0.45, source: test}
                        stored-at: {best-percent: 9, highest-percent: 8, source: test}
                        bands:
                          - {from-percent: 70, to-percent: 65, fungi: [A], seed-from-percent: 5, seed-to-percent: 6}
                        drying-pace: {safe-percent-a-day: 5, harmful-percent-a-day: 4, source: test}
                        """));
        String all = refused.getMessage();
        assertTrue(all.contains("oil shares 0.5, 0.4, 0.45 are impossible"), all);
        assertTrue(all.contains("stored moisture of 9.0 and at most 8.0 % is impossible"), all);
        assertTrue(all.contains("a band from 70.0 to 65.0 %RH"), all);
        assertTrue(all.contains("bands-source: this is required and missing"), all);
        assertTrue(all.contains("a pace of drying of 5.0 and 4.0 % a day is impossible"), all);
    }

    @Test
    void bands_that_overlap_are_refused() {
        RefusedInputException refused =
                assertThrows(RefusedInputException.class, () -> StorageReader.parse("storage", """
                        oil: {low: 0.3, middle: 0.4, high: 0.45, source: test}
                        stored-at: {best-percent: 7, highest-percent: 8, source: test}
                        bands-source: test
                        bands:
                          - {from-percent: 65, to-percent: 75, fungi: [A], seed-from-percent: 5, seed-to-percent: 6}
                          - {from-percent: 70, to-percent: 80, fungi: [B], seed-from-percent: 6, seed-to-percent: 7}
                        drying-pace: {safe-percent-a-day: 2.5, harmful-percent-a-day: 4, source: test}
                        """));
        assertTrue(refused.getMessage().contains("bands from 70.0 %RH are out of order"), refused.getMessage());
    }
}
