package bagward.demo;

import bagward.alarm.HeldSpan;
import bagward.alarm.SpellLine;
import bagward.bag.BagClimate;
import bagward.bag.BagClimates;
import bagward.bag.BagMaterial;
import bagward.bag.BagMaterialsReader;
import bagward.bag.MaterialLearning;
import bagward.bag.SimulatedSeason;
import bagward.bag.Sky;
import bagward.climate.Climate;
import bagward.document.Inspection;
import bagward.document.Section;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Alarms for heat in many sunny springs of {@link AlarmSeasons}, without a rehearsal: bags of one material that nobody lent a
 * sensor to share their estimate, so one estimate for each material stands for all of them. Arguments: first seed, number.
 */
final class HeatSprings {
    private static final int RUN_UP_DAYS = 28;
    private static final int DAYS = 28;
    private static final double BAGS_IN_A_HOUSE = 49;
    private static final Duration DAY = Duration.ofDays(1);
    private static final Duration OFF_DELAY = Duration.ofMinutes(30);

    private HeatSprings() {}

    /** Prints a line for each spring, and the means. */
    public static void main(String[] args) throws IOException {
        long first = Long.parseLong(args[0]);
        int springs = Integer.parseInt(args[1]);
        double[] sums = new double[4];
        for (long seed = first; seed < first + springs; seed++) {
            double[] rates = rates(new SimulatedSeason(seed, RUN_UP_DAYS + DAYS).houseBySensor());
            print("seed " + seed, rates, 1);
            for (int i = 0; i < sums.length; i++) {
                sums[i] += rates[i];
            }
        }
        print("mean", sums, springs);
    }

    private static void print(String what, double[] sums, int over) {
        System.out.printf(
                Locale.ROOT,
                "%s: hot-long %.2f alone, %.2f together; very-hot %.2f alone, %.2f together%n",
                what,
                sums[0] / over,
                sums[1] / over,
                sums[2] / over,
                sums[3] / over);
    }

    /** Alarms a day for 100 bags by the two rules on heat as shipped: alone and together. */
    private static double[] rates(Climate house) throws IOException {
        List<SpellLine> hot = new ArrayList<>();
        List<SpellLine> veryHot = new ArrayList<>();
        for (BagMaterial material : materials()) {
            BagClimate inside = BagClimates.estimate(
                    house,
                    new MaterialLearning(material, List.of()).unsensored(),
                    house.grid().start(),
                    Sky.UNKNOWN);
            hot.add(new SpellLine(inside.temperature().middle(), 30, 1));
            veryHot.add(new SpellLine(inside.temperature().middle(), 33, 1));
        }
        Instant from = house.grid().start().plus(DAY.multipliedBy(RUN_UP_DAYS));
        Instant end = house.grid().end();
        return new double[] {
            alone(hot, from, end, Duration.ofHours(3)),
            together(hot, from, end, Duration.ofHours(3)),
            alone(veryHot, from, end, Duration.ofMinutes(15)),
            together(veryHot, from, end, Duration.ofMinutes(15))
        };
    }

    /** Each bag for itself, on for a week from eight o'clock of a day on. */
    private static double alone(List<SpellLine> materials, Instant from, Instant end, Duration onDelay) {
        double raised = 0;
        double days = 0;
        for (Instant day = from; !day.plus(DAY.multipliedBy(7)).isAfter(end); day = day.plus(DAY)) {
            for (SpellLine material : materials) {
                raised += raised(material.within(day, day.plus(DAY.multipliedBy(7))), onDelay);
                days += 7;
            }
        }
        return 100 * raised / days;
    }

    /** A third of the bags are of each material, so one hot material is enough for a call of the house. */
    private static double together(List<SpellLine> materials, Instant from, Instant end, Duration onDelay) {
        List<HeldSpan> spans = new ArrayList<>();
        materials.forEach(material -> spans.addAll(material.within(from, end)));
        spans.sort(Comparator.comparing(HeldSpan::from));
        return 100 * raised(spans, onDelay) / (BAGS_IN_A_HOUSE * DAYS);
    }

    /** How often an alarm is raised by spans in order of their beginnings, which may overlap. */
    private static int raised(List<HeldSpan> spans, Duration onDelay) {
        int raised = 0;
        boolean standing = false;
        Instant last = Instant.EPOCH;
        for (HeldSpan span : spans) {
            standing = standing && !span.from().isAfter(last.plus(OFF_DELAY));
            if (!standing && span.from().plus(onDelay).isBefore(span.to())) {
                raised++;
                standing = true;
            }
            last = span.to().isAfter(last) ? span.to() : last;
        }
        return raised;
    }

    private static List<BagMaterial> materials() throws IOException {
        Inspection inspection = new Inspection();
        String text = Files.readString(Path.of("seeds", "bag-materials.yaml"));
        List<BagMaterial> all = BagMaterialsReader.read(Section.parse("bag-materials.yaml", text, inspection));
        inspection.throwIfRefused();
        return all.stream()
                .filter(material ->
                        AlarmSeasons.MATERIALS.contains(material.id().value()))
                .toList();
    }
}
