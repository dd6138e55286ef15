package bagward.board;

import bagward.mould.SeedAir;
import bagward.mould.StorageFungus;
import bagward.station.House;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A drying place on the board.
 *
 * @param house the place
 * @param temperature newest temperature, °C
 * @param humidity newest humidity, %RH
 * @param newestReading when its newest reading was measured
 * @param seed what this air means for seed; empty if it is not known now
 * @param hanging how many seed lots are entered as hanging there now
 * @param fungi storage fungi that could grow now, and since when; the one that needs least humidity first
 */
public record DryingView(
        House house,
        Optional<Measure> temperature,
        Optional<Measure> humidity,
        Optional<Instant> newestReading,
        Optional<SeedAir> seed,
        int hanging,
        List<FungusSince> fungi) {
    /** How far back the air is looked at. */
    public static final Duration LOOK_BACK = Duration.ofDays(7);

    /** Copies the list. */
    public DryingView {
        fungi = List.copyOf(fungi);
    }

    /**
     * A fungus that could grow without a break.
     *
     * @param fungus the fungus
     * @param since from when on
     * @param orLonger whether that is only as far back as was looked
     */
    public record FungusSince(StorageFungus fungus, Instant since, boolean orLonger) {}
}
