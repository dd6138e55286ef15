package bagward.site.api;

import bagward.board.Board;
import bagward.site.view.Freshness;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The board in the interface.
 *
 * @param at the time it was made for
 * @param ageSeconds since then, s
 * @param newestReading when the newest reading was measured
 * @param newestReadingAgeSeconds since then, s
 * @param old whether this is too old to trust
 * @param station name of the station
 * @param zone zone of the station; all times here are UTC
 * @param houses in which plants grow, in walking order
 * @param drying places in which seed dries, in walking order
 * @param bags bags that are on, in walking order
 * @param sensors in the order of the configuration
 * @param alarms highest priority first
 * @param setAside alarms that are shelved, suppressed or out of service, in the same order
 */
public record BoardAnswer(
        Instant at,
        long ageSeconds,
        Optional<Instant> newestReading,
        Optional<Long> newestReadingAgeSeconds,
        boolean old,
        String station,
        String zone,
        List<HouseAnswer> houses,
        List<DryingAnswer> drying,
        List<BagAnswer> bags,
        List<SensorAnswer> sensors,
        List<AlarmAnswer> alarms,
        List<AlarmAnswer> setAside) {
    /** The answer for a board of some age. */
    public static BoardAnswer of(Board board, Freshness freshness) {
        return new BoardAnswer(
                board.at(),
                freshness.boardAge().toSeconds(),
                board.newestReading(),
                freshness.readingAge().map(java.time.Duration::toSeconds),
                freshness.old(),
                board.station(),
                board.zone().getId(),
                board.houses().stream().map(HouseAnswer::of).toList(),
                board.drying().stream().map(DryingAnswer::of).toList(),
                board.bags().stream().map(BagAnswer::of).toList(),
                board.sensors().stream().map(SensorAnswer::of).toList(),
                board.alarms().stream().map(AlarmAnswer::of).toList(),
                board.setAside().stream().map(AlarmAnswer::of).toList());
    }
}
