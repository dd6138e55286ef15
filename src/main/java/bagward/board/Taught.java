package bagward.board;

import bagward.bag.BagFit;
import bagward.bag.BagLesson;
import bagward.bag.Bagging;
import bagward.bag.SensorLoan;
import bagward.bag.SensorOffset;
import java.util.Optional;

/**
 * What a sensor that hung in a bag has told of it.
 *
 * @param loan the sensor, the head and when it hung there
 * @param bagging the bag
 * @param pairOffset what the lent sensor says more than the house in the same air
 * @param lesson what the bag taught; empty if too little was heard
 * @param fit how the bag sits; empty once the sensor is out
 */
public record Taught(
        SensorLoan loan, Bagging bagging, SensorOffset pairOffset, Optional<BagLesson> lesson, Optional<BagFit> fit) {}
