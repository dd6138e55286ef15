package bagward.board;

import bagward.bag.BagMaterial;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;

/** When a bag is due to come off: on the morning of its day, whatever the hour at which it was put on. */
final class DueTime {
    /** When the day's work begins, house time; ours. */
    private static final LocalTime MORNING = LocalTime.of(6, 0);

    /** Days in the bag where the material does not say; common practice, no source. */
    private static final Duration USUAL = Duration.ofDays(7);

    private DueTime() {}

    /** The morning as many whole days as the material says after the civil day on which the bag was put on. */
    static Instant of(Instant putOn, Optional<BagMaterial> material, ZoneId zone) {
        LocalDate day = putOn.atZone(zone)
                .toLocalDate()
                .plusDays(material.map(BagMaterial::daysOn).orElse(USUAL).toDays());
        return day.atTime(MORNING).atZone(zone).toInstant();
    }
}
