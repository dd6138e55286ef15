package bagward.site.plan;

import bagward.station.House;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds the arrangement of houses and bays that draws spots and house heads largest on a sheet. */
final class Arrangement {
    /** No spot is drawn smaller; a station that needs it overflows the sheet downwards instead. */
    private static final double SMALLEST = 6;

    /** How far the search for the largest spot is narrowed, units. */
    private static final double CLOSE = 0.25;

    private static final double[] HEAD_SHARES = {1, 0.8, 0.65, 0.5, 0.4, 0.3};

    private Arrangement() {}

    static Measures best(List<House> houses, Sheet sheet) {
        return DoubleStream.of(HEAD_SHARES)
                .mapToObj(sheet::withHead)
                .flatMap(paper -> arrangements(houses, paper))
                .max(Comparator.comparing((Measures m) -> m.width(houses) <= sheet.width())
                        .thenComparing(m -> m.fits(houses))
                        .thenComparingDouble(m -> m.spot() * Math.sqrt(m.sheet().head()))
                        .thenComparingDouble(m -> -m.height(houses)))
                .orElseThrow()
                .stretched(houses);
    }

    private static Stream<Measures> arrangements(List<House> houses, Sheet sheet) {
        int mostBays = houses.stream().mapToInt(h -> h.bays().size()).max().orElse(1);
        return IntStream.rangeClosed(1, Math.max(1, houses.size()))
                .boxed()
                .flatMap(abreast -> IntStream.rangeClosed(1, Math.max(1, mostBays))
                        .mapToObj(bays -> largest(houses, sheet, bays, abreast)));
    }

    private static Measures largest(List<House> houses, Sheet sheet, int bays, int abreast) {
        Measures most = new Measures(sheet, sheet.largestSpot(), Measures.LEAST_TALL, bays, abreast);
        if (most.fits(houses)) {
            return most;
        }
        double fits = SMALLEST;
        double tooLarge = sheet.largestSpot();
        while (tooLarge - fits > CLOSE) {
            double middle = (fits + tooLarge) / 2;
            if (new Measures(sheet, middle, Measures.LEAST_TALL, bays, abreast).fits(houses)) {
                fits = middle;
            } else {
                tooLarge = middle;
            }
        }
        return new Measures(sheet, fits, Measures.LEAST_TALL, bays, abreast);
    }
}
