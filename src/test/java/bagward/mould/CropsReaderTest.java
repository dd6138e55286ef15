package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.fault.RefusedInputException;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

class CropsReaderTest {
    @Test
    void the_shipped_crops_are_read_whole() {
        List<Crop> crops = Seeds.crops();
        assertEquals(
                List.of("oleracea", "napus", "rapa"),
                crops.stream().map(crop -> crop.id().value()).toList());
        assertEquals(Duration.ofDays(7), crops.get(0).bag().dueAfter());
        assertEquals(Duration.ofHours(3), crops.get(0).heat().heatFor());
        assertTrue(crops.stream()
                .noneMatch(c -> c.heat().source().isBlank()
                        || c.bag().source().isBlank()
                        || c.ripening().source().isBlank()));
    }

    @Test
    void limits_out_of_order_and_missing_parts_are_refused_together() {
        RefusedInputException refused =
                assertThrows(RefusedInputException.class, () -> CropsReader.parse("crops", """
                        crops:
                          - id: a
                            name: A
                            heat: {watch-celsius: 40, heat-celsius: 30, heat-for: 3 h, loss-celsius: 33, source: prior}
                            bag: {due-after: 7 d, overdue-every: 1 d, after-pollination: 2 d, after-last-flower: 5 d, source: prior}
                        """));
        assertTrue(refused.getMessage().contains("heat limits 40.0, 30.0, 33.0 °C"), refused.getMessage());
        assertTrue(
                refused.getMessage().contains("crops[0].ripening: this is required and missing"), refused.getMessage());
    }
}
