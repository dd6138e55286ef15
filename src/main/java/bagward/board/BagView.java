package bagward.board;

import bagward.alarm.Priority;
import bagward.bag.BagOutlook;
import bagward.bag.Head;
import bagward.bag.MaterialId;
import bagward.climate.SensorId;
import bagward.mould.HeadCare;
import bagward.mould.RiskAssessment;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * A bag that is on.
 *
 * @param head the head it is on, with its spot, lines and pollination
 * @param material what it is made of
 * @param putOn when it was put on
 * @param due when it is due to come off
 * @param lentSensor the sensor that hangs in it
 * @param temperature newest in-bag temperature, °C
 * @param humidity newest in-bag humidity, %RH
 * @param filmWet whether water on the film is likely now
 * @param risk mould risk with its reason
 * @param dampFor how long it has been damp without a break up to now; zero if it is not
 * @param insight what its estimate rests on, how its sensor finds it to sit, and tonight
 * @param care dates, heat and what tonight would add to the risk; empty where nobody asked
 * @param worst highest priority of its listed alarms; empty when all is well
 */
public record BagView(
        Head head,
        MaterialId material,
        Instant putOn,
        Instant due,
        Optional<SensorId> lentSensor,
        Optional<Measure> temperature,
        Optional<Measure> humidity,
        boolean filmWet,
        RiskAssessment risk,
        Duration dampFor,
        BagInsight insight,
        Optional<HeadCare> care,
        Optional<Priority> worst) {
    /** What is to be expected in it until the next morning; empty without an outlook of its house. */
    public Optional<BagOutlook> tonight() {
        return insight.tonight();
    }

    /** The same with the highest priority of its alarms. */
    BagView withWorst(Priority priority) {
        return new BagView(
                head,
                material,
                putOn,
                due,
                lentSensor,
                temperature,
                humidity,
                filmWet,
                risk,
                dampFor,
                insight,
                care,
                Optional.of(priority));
    }
}
