package bagward.bag;

import bagward.climate.Climate;
import bagward.climate.MoistAir;

/**
 * A sensored bag by the hour: what the open bag would lack to saturation, and how much of that the bag holds back. Means of
 * each hour from the first cell on; NaN where less than half of it is known. The last hour that is not full is left out.
 *
 * @param room 100 − RH of the open bag, %RH
 * @param held RH in the bag − RH of the open bag, %RH
 * @param day share of day, 0 to 1
 */
@SuppressWarnings("ArrayRecordComponent") // never leaves the check; compared by no one
record VapourHours(double[] room, double[] held, double[] day) {
    /** Lag of bag and lent sensor together behind the house, minutes. A prior. */
    private static final double LAG_MINUTES = 15;

    static VapourHours of(SensoredBag bag) {
        Climate house = bag.house();
        int cells = house.grid().size();
        int each = (int) (3600 / house.grid().step().toSeconds());
        double[] vapour = new double[cells];
        for (int i = 0; i < cells; i++) {
            vapour[i] = MoistAir.vapourKilopascals(
                    house.temperature().valueOrNaN(i), house.humidity().valueOrNaN(i));
        }
        double[] lagged = LaggedHouse.lagged(vapour, house.grid().step().toSeconds() / 60.0, LAG_MINUTES);
        int hours = cells / each;
        VapourHours all = new VapourHours(new double[hours], new double[hours], new double[hours]);
        for (int hour = 0; hour < hours; hour++) {
            all.fill(hour, bag, lagged, each);
        }
        return all;
    }

    private void fill(int hour, SensoredBag bag, double[] lagged, int each) {
        SensorOffset pair = bag.pairOffset();
        int known = 0;
        for (int i = hour * each; i < (hour + 1) * each; i++) {
            double celsius = bag.measured().temperature().valueOrNaN(i)
                    - pair.temperature().mean();
            double percent =
                    bag.measured().humidity().valueOrNaN(i) - pair.humidity().mean();
            double open = 100 * lagged[i] / MoistAir.saturationKilopascals(celsius);
            double awake = Daylight.share(Daylight.global(bag.house().light().valueOrNaN(i)));
            if (!Double.isNaN(open + percent + awake)) {
                room[hour] += 100 - open;
                held[hour] += Math.min(100, percent) - open;
                day[hour] += awake;
                known++;
            }
        }
        double share = 2 * known >= each ? known : Double.NaN;
        room[hour] /= share;
        held[hour] /= share;
        day[hour] /= share;
    }

    int count() {
        return room.length;
    }

    boolean known(int hour) {
        return !Double.isNaN(room[hour]);
    }

    /**
     * Closure over hours [from, to): least squares of what is held on the room there is; NaN if nothing is known.
     *
     * @param offset how much more the sensor in the bag reads than that of the house, %RH
     */
    double closure(int from, int to, double offset) {
        double squares = 0;
        double products = 0;
        for (int i = Math.max(0, from); i < to; i++) {
            if (known(i)) {
                squares += room[i] * room[i];
                products += room[i] * (held[i] - offset);
            }
        }
        return products / squares;
    }

    /** Root mean square of the room over hours [from, to), %RH; NaN if nothing is known. */
    double meanRoom(int from, int to) {
        double squares = 0;
        int known = 0;
        for (int i = Math.max(0, from); i < to; i++) {
            if (known(i)) {
                squares += room[i] * room[i];
                known++;
            }
        }
        return known > 0 ? Math.sqrt(squares / known) : Double.NaN;
    }

    /** Mean share of day over hours [from, to). */
    double meanDay(int from, int to) {
        double sum = 0;
        int known = 0;
        for (int i = Math.max(0, from); i < to; i++) {
            if (known(i)) {
                sum += day[i];
                known++;
            }
        }
        return sum / known;
    }
}
