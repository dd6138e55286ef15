package bagward.site.api;

import bagward.mould.LotCourse;
import bagward.mould.LotStay;
import bagward.mould.SeedStay;
import bagward.units.SeedMoisture;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How pods and their seed lot fared, in the interface; all of it estimated.
 *
 * @param from when the last bag came off
 * @param index mould index of the pods now, 0 to 6
 * @param highest the highest so far
 * @param band band of the highest: "none", "low", "moderate", "high"; "none" does not mean that there is no mould
 * @param growingHours time in which it could grow, h
 * @param unknownHours time without data, h
 * @param places what each place meant for the seed, oldest first; those elsewhere are left out
 */
public record LotCourseAnswer(
        Instant from,
        double index,
        double highest,
        String band,
        double growingHours,
        double unknownHours,
        List<Place> places) {
    /** Copies the list. */
    public LotCourseAnswer {
        places = List.copyOf(places);
    }

    /**
     * A place where the lot hung.
     *
     * @param place short name of it
     * @param headingAtLeast moisture that the seed is heading for is not below this, % of the moist seed
     * @param headingAtMost nor above this
     * @param dryEnoughHours how long the air was surely dry enough for seed as it is stored, h
     * @param firstDryEnough when it was so first
     * @param worstGrowth class of the fastest growth that the air allowed
     * @param unknownHours time without data, h
     * @param fungi storage fungi that could grow
     */
    public record Place(
            String place,
            Optional<Double> headingAtLeast,
            Optional<Double> headingAtMost,
            double dryEnoughHours,
            Optional<Instant> firstDryEnough,
            Optional<String> worstGrowth,
            double unknownHours,
            List<Fungus> fungi) {
        private static Place of(LotStay stay, SeedStay seed) {
            return new Place(
                    stay.stay().house().map(Object::toString).orElse(""),
                    stay.newest().flatMap(air -> air.moisture().atLeast()).map(SeedMoisture::percent),
                    stay.newest().flatMap(air -> air.moisture().atMost()).map(SeedMoisture::percent),
                    hours(seed.dryEnough().known()),
                    seed.firstDryEnough(),
                    seed.worst().map(BagAnswer::word),
                    hours(seed.unknown()),
                    seed.fungi().stream()
                            .filter(fungus -> !fungus.time().known().isZero())
                            .map(fungus -> new Fungus(
                                    fungus.fungus().name(), hours(fungus.time().known())))
                            .toList());
        }
    }

    /**
     * A storage fungus.
     *
     * @param name its name
     * @param hours how long it could grow by the humidity of the air, h
     */
    public record Fungus(String name, double hours) {}

    /** The answer for a course. */
    public static LotCourseAnswer of(LotCourse course) {
        return new LotCourseAnswer(
                course.ripening().from(),
                course.state().index(),
                course.state().highest(),
                BagAnswer.word(course.band()),
                course.growingHours(),
                course.unknownHours(),
                course.stays().stream()
                        .flatMap(stay -> stay.seed().map(seed -> Place.of(stay, seed)).stream())
                        .toList());
    }

    private static double hours(Duration time) {
        return time.toMinutes() / 60.0;
    }
}
