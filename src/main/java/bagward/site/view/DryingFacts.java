package bagward.site.view;

import bagward.board.DryingView;
import bagward.board.DryingView.FungusSince;
import bagward.board.Measure;
import bagward.mould.SeedAir;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;

/** What a drying place does to seed, as people read it. */
public final class DryingFacts {
    private static final String NOT_KNOWN = "Not known: no fresh reading of temperature and humidity";

    private DryingFacts() {}

    /** The lines of a sheet: air, seed moisture, fungi, lots. */
    public static List<Fact> of(DryingView view, ZoneId zone) {
        return List.of(
                new Fact("Air", air(view, zone)),
                new Fact("Seed comes to", view.seed().map(DryingFacts::moisture).orElse(NOT_KNOWN)),
                new Fact("Storage fungi", fungi(view, zone)),
                new Fact("Seed lots", lots(view)));
    }

    private static String lots(DryingView view) {
        return view.hanging() == 0
                ? "None is entered as hanging here, so damp air raises no alarm"
                : Words.count(view.hanging(), "hangs here", "hang here");
    }

    /** Further lines for the page of the place: speed of growth, and the old rule of storage. */
    public static List<Fact> more(DryingView view) {
        List<Fact> facts = new ArrayList<>();
        view.seed().ifPresent(seed -> {
            facts.add(new Fact("Growth of mould", seed.growth().words() + ", estimated, on what feeds it well"));
            facts.add(new Fact(
                    "Humidity and °F",
                    seed.keepsHundredRule()
                            ? "Together at most 100: kept, as asked of seed stores"
                            : "Together above 100: more than is asked of seed stores"));
        });
        return facts;
    }

    /** One short line for the wall: "Seed room 73 %RH, damp", if storage fungi could grow. */
    public static String line(DryingView view) {
        String air = view.seed().isEmpty()
                ? "not known"
                : view.humidity().map(m -> Words.whole(m.value()) + " %RH").orElse("not known");
        return view.house().name() + " " + air + (view.fungi().isEmpty() ? "" : ", damp");
    }

    private static String air(DryingView view, ZoneId zone) {
        if (view.temperature().isEmpty() && view.humidity().isEmpty()) {
            return view.newestReading()
                    .map(at -> "No data since " + Words.dayAndClock(at, zone))
                    .orElse("No sensor was heard here so far");
        }
        return part(view.temperature(), Words::oneDecimal, " °C", zone) + "; "
                + part(view.humidity(), Words::whole, " %RH", zone);
    }

    private static String part(Optional<Measure> measure, DoubleFunction<String> number, String unit, ZoneId zone) {
        return measure.map(m -> number.apply(m.value()) + unit + ", measured " + Words.dayAndClock(m.asOf(), zone))
                .orElse("no value in" + unit);
    }

    private static String moisture(SeedAir seed) {
        return seed.moisture().says() + " of its moist mass, estimated"
                + switch (seed.dryness()) {
                    case DRY_ENOUGH -> "; dry enough to be stored";
                    case PERHAPS -> "; perhaps dry enough to be stored";
                    case TOO_DAMP -> "; too damp to be stored";
                };
    }

    private static String fungi(DryingView view, ZoneId zone) {
        if (view.fungi().isEmpty()) {
            return view.seed().isEmpty()
                    ? NOT_KNOWN
                    : "None of the known ones could grow in this air. Look all the same";
        }
        Map<String, List<FungusSince>> bySince = new LinkedHashMap<>();
        view.fungi()
                .forEach(fungus -> bySince.computeIfAbsent(since(fungus, zone), same -> new ArrayList<>())
                        .add(fungus));
        return "Could grow: "
                + bySince.entrySet().stream()
                        .map(group -> names(group.getValue()) + " " + group.getKey())
                        .collect(Collectors.joining("; "));
    }

    private static String names(List<FungusSince> fungi) {
        return fungi.stream().map(f -> f.fungus().name()).collect(Collectors.joining(", "));
    }

    private static String since(FungusSince fungus, ZoneId zone) {
        return "since " + Words.dayAndClock(fungus.since(), zone) + (fungus.orLonger() ? " or longer" : "");
    }
}
