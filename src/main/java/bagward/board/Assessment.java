package bagward.board;

import bagward.alarm.AlarmKey;
import bagward.alarm.Verdict;
import bagward.bag.TagCode;
import java.util.List;
import java.util.Map;

/**
 * How everything is, before the alarms are moved: the costly part of a board, good for several boards of one time.
 *
 * @param houses in which plants grow, in walking order
 * @param bags in walking order, without the priority of their alarms
 * @param sensors in the order of the configuration
 * @param drying places in which seed dries, in walking order
 * @param verdicts one for each rule and each subject that is there
 * @param concerned the bags that an alarm of a house is about, in walking order
 */
public record Assessment(
        List<HouseView> houses,
        List<BagView> bags,
        List<SensorView> sensors,
        List<DryingView> drying,
        List<Verdict> verdicts,
        Map<AlarmKey, List<TagCode>> concerned) {
    /** Copies the lists. */
    public Assessment {
        houses = List.copyOf(houses);
        bags = List.copyOf(bags);
        sensors = List.copyOf(sensors);
        drying = List.copyOf(drying);
        verdicts = List.copyOf(verdicts);
        concerned = Map.copyOf(concerned);
    }
}
