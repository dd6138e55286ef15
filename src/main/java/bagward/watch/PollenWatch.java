package bagward.watch;

import bagward.bag.Line;
import bagward.pollen.PollenEntry;
import bagward.pollen.PollenReport;
import bagward.pollen.Predictor;
import bagward.pollen.TakenScore;
import bagward.station.HouseId;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What pages see of pollen. Safe for use by several threads. */
public interface PollenWatch {
    /** All scores that count, oldest first: those of the journal and those of pollinations. */
    List<TakenScore> scores();

    /**
     * Enters scores, all or none; they are on disk when it returns.
     *
     * @throws bagward.fault.RefusedInputException if a house does not exist or a time lies in the future
     */
    void enter(List<PollenEntry> entries);

    /**
     * The report of a house as it stands now; the first one after a start reads the season from disk, which takes
     * seconds.
     *
     * @param line only scores of this line; empty for all
     * @param predictor what the scores are set against
     * @return empty if there is no such house
     */
    Optional<PollenReport> report(HouseId house, Optional<Line> line, Predictor predictor);

    /** The newest reports of all houses without computing anything, for the wall; empty soon after a start. */
    Map<HouseId, PollenReport> newest();
}
