package bagward.bag;

import bagward.bag.RegisterChange.PutOn;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One head while the changes are folded, with the change that last altered its bag. Confined to one fold. */
final class HeadLog {
    private final PutOn start;
    private final Optional<CropId> crop;
    private final List<Bagging> baggings = new ArrayList<>();
    private final FlowerNotes flowers = new FlowerNotes();
    private final DryingLog drying = new DryingLog();
    private Optional<Ending> ending = Optional.empty();
    private RegisterChange lastBagChange;

    /**
     * @param crop of its seed parent
     * @param before the use of its first bag before
     */
    HeadLog(PutOn start, Optional<CropId> crop, Optional<BagUse> before) {
        this.start = start;
        this.crop = crop;
        this.lastBagChange = start;
        baggings.add(new Bagging(start.material(), start.at(), Optional.empty(), before));
    }

    PutOn start() {
        return start;
    }

    FlowerNotes flowers() {
        return flowers;
    }

    DryingLog drying() {
        return drying;
    }

    List<Bagging> baggings() {
        return baggings;
    }

    RegisterChange lastBagChange() {
        return lastBagChange;
    }

    boolean bagged() {
        return newest().takenOff().isEmpty();
    }

    boolean ended() {
        return ending.isPresent();
    }

    boolean harvested() {
        return ending.filter(end -> end.state() == HeadState.HARVESTED).isPresent();
    }

    Instant newestPutOn() {
        return newest().putOn();
    }

    void takeOff(RegisterChange cause) {
        Bagging on = newest();
        baggings.set(baggings.size() - 1, new Bagging(on.material(), on.putOn(), Optional.of(cause.at()), on.before()));
        lastBagChange = cause;
    }

    void putOn(RegisterChange cause, MaterialId material, Optional<BagUse> before) {
        baggings.add(new Bagging(material, cause.at(), Optional.empty(), before));
        lastBagChange = cause;
    }

    void end(RegisterChange cause, Ending how) {
        if (bagged()) {
            takeOff(cause);
        }
        ending = Optional.of(how);
        lastBagChange = cause;
    }

    Head head() {
        return new Head(
                start.tag(),
                start.spot(),
                start.seedParent(),
                start.pollenParent(),
                crop,
                start.pollination(),
                baggings,
                flowers.signs(),
                ending,
                drying.drying());
    }

    private Bagging newest() {
        return baggings.get(baggings.size() - 1);
    }
}
