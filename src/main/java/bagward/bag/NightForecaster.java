package bagward.bag;

import java.util.Arrays;

/**
 * Weighs the experts by how they did on the past nights of this very house, and says how far the weighted word was off on
 * those nights, each judged only by the nights before it. Confined to one outlook.
 */
final class NightForecaster {
    /** Weight of a past night's error against that of the night after it. */
    private static final double FORGETTING = 0.95;

    /** Errors of hours this far apart share about 60 % of their weight, hours. */
    private static final double KINSHIP_HOURS = 2;

    /** The scatter of the nights about their mean counts as so many judged nights. */
    private static final double PRIOR_NIGHTS = 0.5;

    private final NightTable table;
    private final NightExperts experts;
    private final double[][] squares;
    private final double[][] errors;
    private double ownSquares;
    private double yardstickSquares;
    private int judged;
    private int judgedHours;

    NightForecaster(NightTable table) {
        this.table = table;
        this.experts = new NightExperts(table);
        this.squares = new double[table.nights() + 1][];
        this.errors = new double[table.nights() + 1][];
        for (int night = table.nights(); night >= 1; night--) {
            judge(night);
        }
    }

    /** The word on the night to come, hour by hour. */
    double[] tonight() {
        return word(0);
    }

    /** Standard deviation of its error, hour by hour. */
    double[] deviation() {
        double[] scatter = scatter();
        double[] deviation = new double[table.hours()];
        for (int hour = 0; hour < deviation.length; hour++) {
            double sum = PRIOR_NIGHTS * scatter[hour];
            double weights = PRIOR_NIGHTS;
            for (int night = 1; night <= table.nights(); night++) {
                for (int other = 0; errors[night] != null && other < deviation.length; other++) {
                    double apart = (hour - other) / KINSHIP_HOURS;
                    double weight = Math.exp(-apart * apart / 2) * Math.pow(FORGETTING, night - 1) / KINSHIP_HOURS;
                    if (!Double.isNaN(errors[night][other])) {
                        sum += weight * errors[night][other] * errors[night][other];
                        weights += weight;
                    }
                }
            }
            deviation[hour] = Math.sqrt(sum / weights);
        }
        return deviation;
    }

    /** How the past outlooks did. */
    OutlookSkill skill() {
        double hours = Math.max(1, judgedHours);
        return new OutlookSkill(judged, Math.sqrt(ownSquares / hours), Math.sqrt(yardstickSquares / hours));
    }

    private void judge(int night) {
        double[] truth = table.values()[night];
        double[] own = word(night);
        double[] yardstick = experts.threeNights(night);
        double[] off = new double[own.length];
        int known = 0;
        for (int hour = 0; hour < own.length; hour++) {
            off[hour] = own[hour] - truth[hour + 1];
            double yard = yardstick[hour] - truth[hour + 1];
            if (!Double.isNaN(off[hour] + yard)) {
                ownSquares += off[hour] * off[hour];
                yardstickSquares += yard * yard;
                known++;
            }
        }
        judged += known > 0 ? 1 : 0;
        judgedHours += known;
        errors[night] = off;
        squares[night] = new double[NightExperts.count()];
        for (int expert = 0; expert < NightExperts.count(); expert++) {
            squares[night][expert] = meanSquare(experts.says(expert, night), truth);
        }
    }

    private static double meanSquare(double[] said, double[] truth) {
        double sum = 0;
        int known = 0;
        for (int hour = 0; hour < said.length; hour++) {
            double off = said[hour] - truth[hour + 1];
            if (!Double.isNaN(off)) {
                sum += off * off;
                known++;
            }
        }
        return known > 0 ? sum / known : Double.NaN;
    }

    private double[] word(int night) {
        double[] weights = weights(night);
        double[] word = new double[table.hours()];
        for (int expert = 0; expert < weights.length; expert++) {
            double[] said = experts.says(expert, night);
            for (int hour = 0; hour < word.length; hour++) {
                word[hour] += weights[expert] * said[hour];
            }
        }
        return word;
    }

    /** Weights from all nights before one: the further an expert's error lies above the least, the less it counts. */
    private double[] weights(int night) {
        int count = NightExperts.count();
        double[] loss = new double[count];
        double nights = 0;
        for (int past = night + 1; past <= table.nights(); past++) {
            double weight = Math.pow(FORGETTING, past - night - 1);
            if (!Double.isNaN(squares[past][0])) {
                nights += weight;
                for (int expert = 0; expert < count; expert++) {
                    loss[expert] += weight * squares[past][expert];
                }
            }
        }
        double least = Arrays.stream(loss).min().orElse(0);
        double all = 0;
        for (int expert = 0; expert < count; expert++) {
            double above = least > 0 ? loss[expert] / least - 1 : 0;
            loss[expert] = Math.exp(-Math.sqrt(nights) * above);
            all += loss[expert];
        }
        for (int expert = 0; expert < count; expert++) {
            loss[expert] /= all;
        }
        return loss;
    }

    /** Variance of each hour between nights, for an outlook whose past errors are few. */
    private double[] scatter() {
        double[] variance = new double[table.hours()];
        for (int hour = 1; hour <= variance.length; hour++) {
            double sum = 0;
            double square = 0;
            int known = 0;
            for (int night = 1; night <= table.nights(); night++) {
                double value = table.values()[night][hour];
                if (!Double.isNaN(value)) {
                    sum += value;
                    square += value * value;
                    known++;
                }
            }
            variance[hour - 1] = known > 1 ? Math.max(0, (square - sum * sum / known) / (known - 1)) : Double.NaN;
        }
        return variance;
    }
}
