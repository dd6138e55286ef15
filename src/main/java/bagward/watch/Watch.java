package bagward.watch;

import bagward.alarm.AlarmAct;
import bagward.alarm.AlarmKey;
import bagward.alarm.Rule;
import bagward.bag.BagClimate;
import bagward.bag.Bagging;
import bagward.bag.Head;
import bagward.bag.Register;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.board.Board;
import bagward.climate.Span;
import bagward.station.HouseId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** What pages see of the running watch. Safe for use by several threads. */
public interface Watch {
    /** The newest board. */
    Board board();

    /**
     * Calls back with each new board until the returned handle is closed. The callback must not block.
     */
    Subscription listen(Consumer<Board> listener);

    /** The register as it stands. */
    Register register();

    /**
     * Enters changes, all or none; they are on disk when it returns, and on the next board.
     *
     * @param by who entered them
     * @throws bagward.fault.RefusedInputException with every fault, if one breaks a rule of the register
     */
    void change(List<RegisterChange> changes, String by);

    /**
     * Confirms that a person has seen alarms; on disk, all together, and on the board when this returns.
     *
     * @return those of them that there were to confirm
     */
    Set<AlarmKey> acknowledge(Set<AlarmKey> keys, String by);

    /**
     * Puts an alarm aside or brings it back; it is on disk and on the board when this returns.
     *
     * @throws bagward.fault.RefusedInputException with every fault, if it is not allowed
     */
    void act(AlarmAct act);

    /** The rules that are watched. */
    List<Rule> rules();

    /** House and bag climate of a head over its newest bagging; empty if the tag is unknown or never had a bag. */
    Optional<BagHistory> history(TagCode tag);

    /** The climate inside one of the bags of a head, of the last 21 days that it was on. */
    BagClimate inBag(Head head, Bagging bagging);

    /** What the air of a drying place was over a stretch of time; empty if there is no such place. */
    Optional<PlaceStay> stay(HouseId place, Span span);

    /** How the running parts are. */
    Health health();

    /** Ends a subscription. */
    interface Subscription extends AutoCloseable {
        @Override
        void close();
    }
}
