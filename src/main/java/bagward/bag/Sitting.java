package bagward.bag;

import java.util.BitSet;

/**
 * How a sensored bag sat, hour by hour: a sequential test that starts in "fits" and goes over to "shut" or "off" when that
 * is far likelier since some hour of the last half day, and back when the bag does again what it taught. Hours in which it
 * sat otherwise teach nothing. A function of the readings up to each hour.
 *
 * <p>How often it is right is measured by the test program Detection; the figures are in bag-climate.md.
 */
final class Sitting {
    /** Evidence that makes a call: so chosen on simulated seasons that bags that sit well are called once in 100 weeks at most. */
    static final double CALL = 6.0;

    /** What a bag holds that has fallen shut, or is off or torn. Priors. */
    private static final double SHUT = 0.95;

    private static final double OFF = 0.03;

    /** A bag must have been heard so many hours, and a change have lasted so many, before anything is said. */
    static final int FIRST = 24;

    private static final int SHORTEST = 2;
    private static final int LONGEST = 12;

    /** Hours that decide whether it sits well again. */
    private static final int BACK = 3;

    private final VapourHours hours;
    private final BagBelief material;
    private final SittingTest test;
    private final BitSet counted = new BitSet();
    private final BitSet calls = new BitSet();
    private OwnSums sums;
    private BagFit.Verdict verdict = BagFit.Verdict.FITS;
    private int since;
    private OwnClosure taught;

    /** Follows a bag to the end of its readings. */
    Sitting(VapourHours hours, BagBelief material) {
        this.hours = hours;
        this.material = material;
        this.test = new SittingTest(hours, SHUT, OFF);
        counted.set(0, hours.count());
        this.sums = new OwnSums(hours, material, counted);
        this.taught = sums.before(0);
        for (int now = FIRST; now <= hours.count(); now++) {
            step(now);
            calls.set(now, verdict == BagFit.Verdict.SHUT);
        }
    }

    private void step(int now) {
        if (verdict == BagFit.Verdict.FITS) {
            taught = sums.before(now - 1);
            look(now);
        } else if (fitsAgain(now)) {
            counted.clear(since, now - BACK);
            sums = new OwnSums(hours, material, counted);
            verdict = BagFit.Verdict.FITS;
            since = now - BACK;
            taught = sums.before(now - 1);
        }
    }

    private void look(int now) {
        double most = CALL;
        int changed = since;
        for (int change = Math.max(since, now - LONGEST); change <= now - SHORTEST; change++) {
            if (!enough(change, now)) {
                continue;
            }
            OwnClosure before = sums.before(change - 1);
            double[] evidence = test.evidence(before, change, now);
            double closed = evidence[0];
            double open = evidence[1];
            if (Math.max(closed, open) > most) {
                most = Math.max(closed, open);
                verdict = closed > open ? BagFit.Verdict.SHUT : BagFit.Verdict.OFF;
                taught = before;
                changed = change;
            }
        }
        if (verdict != BagFit.Verdict.FITS) {
            since = changed;
        }
    }

    private boolean enough(int change, int now) {
        int known = 0;
        for (int i = change; i < now; i++) {
            known += hours.known(i) ? 1 : 0;
        }
        return known * 2 >= now - change && known > 0;
    }

    /** Whether the last hours lie nearer to what the bag taught than to what it did since. */
    private boolean fitsAgain(int now) {
        double otherwise = verdict == BagFit.Verdict.SHUT ? SHUT : OFF;
        double sum = 0;
        for (int i = now - BACK; i < now; i++) {
            if (hours.known(i)) {
                double expected = taught.at(hours.day()[i]) * hours.room()[i];
                double signal = otherwise * hours.room()[i] - expected;
                sum += signal * (hours.held()[i] - taught.offset() - expected - signal / 2);
            }
        }
        return sum < 0;
    }

    BagFit.Verdict verdict() {
        return verdict;
    }

    /** Whether the bag was called shut in one of the hours [from, to), each by the readings before it. */
    boolean calledShut(int from, int to) {
        int call = calls.nextSetBit(from);
        return call >= 0 && call < to;
    }

    /** First hour of the present verdict. */
    int since() {
        return since;
    }

    /** What the bag taught before it sat as it does now. */
    OwnClosure taught() {
        return taught;
    }

    /** Hours in which it sat well. */
    BitSet well() {
        BitSet well = (BitSet) counted.clone();
        if (verdict != BagFit.Verdict.FITS) {
            well.clear(since, hours.count());
        }
        return well;
    }
}
