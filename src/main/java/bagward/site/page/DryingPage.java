package bagward.site.page;

import bagward.board.Board;
import bagward.board.DryingView;
import bagward.mould.GrowthClass;
import bagward.mould.SeedStay;
import bagward.site.chart.Chart;
import bagward.site.chart.DryingChart;
import bagward.site.view.DryingFacts;
import bagward.site.view.Fact;
import bagward.site.view.Words;
import bagward.station.HouseId;
import bagward.watch.PlaceStay;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Places in which seed dries, now and over the last days.
 *
 * @param days how many days are looked back
 * @param places in walking order; empty if the station has none
 * @param notes what is known of drying and keeping seed, each with its source
 */
public record DryingPage(int days, List<Place> places, List<Fact> notes) {
    private static final double WIDE = 960;
    private static final double NARROW = 360;

    /** Copies the lists. */
    public DryingPage {
        places = List.copyOf(places);
        notes = List.copyOf(notes);
    }

    /**
     * A place.
     *
     * @param id short name, for the address on the page
     * @param name as people call it
     * @param now how it is now
     * @param unknown time of the days without data, in words; empty if there is none
     * @param known whether anything of the days is known
     * @param wide chart for a desk
     * @param narrow chart for a phone
     * @param times for how long what could grow, worst last
     * @param rows its days, newest first
     */
    public record Place(
            String id,
            String name,
            List<Fact> now,
            String unknown,
            boolean known,
            Chart wide,
            Chart narrow,
            List<Fact> times,
            List<DryingRow> rows) {}

    /**
     * The page of a board.
     *
     * @param days how many days are looked back
     * @param stays gives what the air of a place was over these days
     */
    public static DryingPage of(Board board, int days, Function<HouseId, Optional<PlaceStay>> stays) {
        List<Place> places = new ArrayList<>();
        List<Fact> notes = new ArrayList<>();
        for (DryingView view : board.drying()) {
            stays.apply(view.house().id()).ifPresent(stay -> {
                places.add(place(board, view, stay));
                notes.addAll(notes.isEmpty() ? StorageNotes.of(stay.storage()) : List.of());
            });
        }
        return new DryingPage(days, places, notes);
    }

    private static Place place(Board board, DryingView view, PlaceStay stay) {
        List<Fact> now = new ArrayList<>(DryingFacts.of(view, board.zone()));
        now.addAll(DryingFacts.more(view));
        SeedStay seed = stay.seed();
        return new Place(
                view.house().id().value(),
                view.house().name(),
                now,
                seed.unknown().isZero() ? "" : Words.span(seed.unknown()),
                seed.unknown().compareTo(stay.span().length()) < 0,
                DryingChart.draw(stay, board.zone(), WIDE),
                DryingChart.draw(stay, board.zone(), NARROW),
                times(seed),
                DryingRow.of(stay, board.zone()));
    }

    private static List<Fact> times(SeedStay seed) {
        List<Fact> times = new ArrayList<>();
        times.add(new Fact(
                "Dry enough to be stored",
                lasted(seed.dryEnough().known(), seed.dryEnough().unknown())));
        seed.fungi()
                .forEach(hours -> times.add(new Fact(
                        hours.fungus().name() + ", from "
                                + Words.whole(hours.fungus().fromPercent()) + " %RH",
                        lasted(hours.time().known(), hours.time().unknown()))));
        new TreeMap<>(seed.growth())
                .tailMap(GrowthClass.NONE, false)
                .forEach((found, time) -> times.add(new Fact("Growth of " + found.words(), Words.span(time))));
        return times;
    }

    private static String lasted(Duration known, Duration unknown) {
        String open = unknown.isZero() ? "" : "; not known for " + Words.span(unknown);
        return (known.isZero() ? "at no known time" : Words.span(known)) + open;
    }
}
