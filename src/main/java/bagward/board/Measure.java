package bagward.board;

import bagward.bag.Origin;
import java.time.Instant;

/**
 * One value as it is shown: never without origin, interval and age.
 *
 * @param value best value in the canonical unit of its quantity
 * @param low lower end of its 90 % interval
 * @param high upper end
 * @param origin measured or estimated
 * @param asOf the time it stands for
 */
public record Measure(double value, double low, double high, Origin origin, Instant asOf) {}
