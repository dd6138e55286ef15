package bagward;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Instant;
import java.util.List;

/** The walls between the rooms. */
@AnalyzeClasses(packages = "bagward", importOptions = ImportOption.DoNotIncludeTests.class)
class RoomsTest {
    /** Lowest first: a room may use those before it and none after it. */
    private static final List<String> ROOMS = List.of(
            "fault",
            "units",
            "document",
            "climate",
            "station",
            "bag",
            "mould",
            "pollen",
            "alarm",
            "board",
            "message",
            "clockwork",
            "store",
            "collector",
            "notify",
            "watch",
            "site",
            "demo",
            "app");

    private static final String[] PURE = {
        "bagward.fault..",
        "bagward.units..",
        "bagward.document..",
        "bagward.climate..",
        "bagward.station..",
        "bagward.bag..",
        "bagward.mould..",
        "bagward.pollen..",
        "bagward.alarm..",
        "bagward.board..",
        "bagward.message.."
    };

    @ArchTest
    static void lower_rooms_know_nothing_of_higher_ones(com.tngtech.archunit.core.domain.JavaClasses all) {
        for (int i = 0; i < ROOMS.size(); i++) {
            String[] higher = ROOMS.subList(i + 1, ROOMS.size()).stream()
                    .map(room -> "bagward." + room + "..")
                    .toArray(String[]::new);
            if (higher.length > 0) {
                noClasses()
                        .that()
                        .resideInAPackage("bagward." + ROOMS.get(i) + "..")
                        .should()
                        .dependOnClassesThat()
                        .resideInAnyPackage(higher)
                        .allowEmptyShould(true)
                        .check(all);
            }
        }
    }

    @ArchTest
    static final ArchRule rooms_have_no_cycles =
            slices().matching("bagward.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule every_class_lives_in_a_room = classes()
            .should()
            .resideInAnyPackage(ROOMS.stream().map(r -> "bagward." + r + "..").toArray(String[]::new));

    @ArchTest
    static final ArchRule the_pure_core_does_no_input_or_output = noClasses()
            .that()
            .resideInAnyPackage(PURE)
            .should()
            .dependOnClassesThat(resideInAPackage("java.nio.file..")
                    .or(resideInAPackage("java.sql.."))
                    .or(resideInAPackage("java.net.."))
                    .or(resideInAPackage("java.util.concurrent.."))
                    .or(resideInAPackage("io.javalin.."))
                    .or(resideInAPackage("org.eclipse.paho..")));

    @ArchTest
    static final ArchRule the_pure_core_reads_no_clock = noClasses()
            .that()
            .resideInAnyPackage(PURE)
            .should()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime");
}
