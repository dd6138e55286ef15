package bagward.pollen;

import java.util.ArrayList;
import java.util.List;

/**
 * How good past outlooks were: the Brier score with its parts (Murphy 1973: score = reliability − resolution +
 * uncertainty, exact if all outlooks of a bin are equal) and a table of what was said against what came.
 *
 * @param outlooks number of outlooks
 * @param brier mean squared difference of probability and outcome, 0 (perfect) to 1
 * @param reliability how far what came was from what was said, 0 is best
 * @param resolution how far the bins differ from the average, higher is better
 * @param uncertainty score of always saying the average
 * @param bins what was said against what came, lowest probability first, empty bins left out
 */
public record OutlookScore(
        int outlooks, double brier, double reliability, double resolution, double uncertainty, List<Bin> bins) {
    /** Copies the list. */
    public OutlookScore {
        bins = List.copyOf(bins);
    }

    /**
     * One bin of the reliability table.
     *
     * @param count outlooks in it
     * @param said their mean probability
     * @param came share of them that came true
     */
    public record Bin(int count, double said, double came) {}

    /** Share of the error of always saying the average that was saved: 1 perfect, 0 no better, negative worse. */
    public double skill() {
        return uncertainty == 0 ? Double.NaN : 1 - brier / uncertainty;
    }

    /**
     * Scores outlooks.
     *
     * @param probabilities what was said, each 0 to 1
     * @param outcomes whether it came
     * @param binCount number of equal bins from 0 to 1
     * @throws TooFewDataException without any outlook
     */
    public static OutlookScore of(double[] probabilities, boolean[] outcomes, int binCount) {
        int n = probabilities.length;
        if (n == 0 || outcomes.length != n) {
            throw new TooFewDataException("scoring " + n + " outlooks against " + outcomes.length
                    + " outcomes is impossible: give one outcome for each of at least one outlook");
        }
        int[] counts = new int[binCount];
        double[] said = new double[binCount];
        double[] came = new double[binCount];
        double squares = 0;
        double allCame = 0;
        for (int i = 0; i < n; i++) {
            int bin = Math.min(binCount - 1, (int) (probabilities[i] * binCount));
            double outcome = outcomes[i] ? 1 : 0;
            counts[bin]++;
            said[bin] += probabilities[i];
            came[bin] += outcome;
            allCame += outcome;
            squares += (probabilities[i] - outcome) * (probabilities[i] - outcome);
        }
        List<Bin> bins = bins(counts, said, came);
        double average = allCame / n;
        double reliability = bins.stream()
                        .mapToDouble(b -> b.count() * square(b.said() - b.came()))
                        .sum()
                / n;
        double resolution = bins.stream()
                        .mapToDouble(b -> b.count() * square(b.came() - average))
                        .sum()
                / n;
        return new OutlookScore(n, squares / n, reliability, resolution, average * (1 - average), bins);
    }

    private static List<Bin> bins(int[] counts, double[] said, double[] came) {
        List<Bin> bins = new ArrayList<>();
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                bins.add(new Bin(counts[i], said[i] / counts[i], came[i] / counts[i]));
            }
        }
        return bins;
    }

    private static double square(double value) {
        return value * value;
    }
}
