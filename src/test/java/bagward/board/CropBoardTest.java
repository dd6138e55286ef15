package bagward.board;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.alarm.Acting;
import bagward.alarm.AlarmBook;
import bagward.alarm.OtherLimit;
import bagward.alarm.Rule;
import bagward.bag.TagCode;
import bagward.mould.HeadCare;
import bagward.mould.HeatBand;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CropBoardTest {
    private static final double NOW = 30;

    private final Scenario scenario = new Scenario(20)
            .heard(Scenario.SOUTH_POST, 0, NOW, 23, 60)
            .bag("S-1", Scenario.SOUTH, Scenario.WINDOW, 1, 1)
            .bag("S-2", Scenario.SOUTH, Scenario.WINDOW, 2, 2, Optional.of(Scenario.TENDER.id()));

    @Test
    void each_head_has_the_days_and_the_heat_of_its_own_crop() {
        HeadCare usual = care("S-1");
        HeadCare tender = care("S-2");

        assertEquals(Instant.parse("2026-02-08T05:00:00Z"), usual.dates().due());
        assertEquals(Instant.parse("2026-02-06T05:00:00Z"), tender.dates().due());
        assertEquals(HeatBand.NONE, usual.heat().worst());
        assertEquals(HeatBand.HEAT, tender.heat().worst());
        assertEquals(
                Duration.ofDays(19),
                Duration.between(
                        tender.ripening().first().atStartOfDay(),
                        usual.ripening().first().atStartOfDay()));
    }

    @Test
    void a_rule_has_the_limit_of_the_crop() {
        Rule tenderer = Acting.withLimits(
                Scenario.HOT,
                new OtherLimit(Optional.empty(), Optional.empty(), Optional.of(Scenario.TENDER.id()), 22));

        List<String> called = Scenario.tick(scenario.watch(tenderer).at(NOW), AlarmBook.EMPTY).alarms().stream()
                .map(view -> view.alarm().key().subject().key())
                .toList();

        assertEquals(List.of("bag:S-2"), called);
    }

    private HeadCare care(String tag) {
        return Scenario.tick(scenario.at(NOW), AlarmBook.EMPTY)
                .find(new TagCode(tag))
                .flatMap(BagView::care)
                .orElseThrow();
    }
}
