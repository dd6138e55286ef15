package bagward.site.plan;

import bagward.station.House;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Finds the arrangement of houses and bays that draws the spots largest on a sheet. */
final class Arrangement {
    /** No spot is drawn smaller; a station that needs it overflows the sheet instead. */
    private static final int SMALLEST = 8;

    private Arrangement() {}

    static Measures best(List<House> houses, Sheet sheet) {
        int mostBays = houses.stream().mapToInt(h -> h.bays().size()).max().orElse(1);
        return IntStream.rangeClosed(1, Math.max(1, houses.size()))
                .boxed()
                .flatMap(abreast -> IntStream.rangeClosed(1, Math.max(1, mostBays))
                        .mapToObj(bays -> largest(houses, sheet, bays, abreast)))
                .max(Comparator.comparingDouble(Measures::spot)
                        .thenComparing(Comparator.comparingDouble((Measures m) -> m.height(houses))
                                .reversed()))
                .orElseThrow()
                .stretched(houses);
    }

    private static Measures largest(List<House> houses, Sheet sheet, int bays, int abreast) {
        for (double spot = sheet.largestSpot(); spot > SMALLEST; spot -= 0.5) {
            Measures measures = new Measures(sheet, spot, Measures.LEAST_TALL, bays, abreast);
            if (measures.fits(houses)) {
                return measures;
            }
        }
        return new Measures(sheet, SMALLEST, Measures.LEAST_TALL, bays, abreast);
    }
}
