package bagward.site.page;

import bagward.bag.FlowerSign;
import bagward.bag.Head;
import bagward.bag.MaterialId;
import bagward.bag.Outlook;
import bagward.board.BagView;
import bagward.board.Board;
import bagward.climate.SensorId;
import bagward.mould.Crop;
import bagward.site.chart.BagChart;
import bagward.site.chart.Chart;
import bagward.site.chart.HourRow;
import bagward.site.form.Entered;
import bagward.site.plan.Glyph;
import bagward.site.plan.Glyphs;
import bagward.site.view.Fact;
import bagward.site.view.HeadFacts;
import bagward.site.view.LotSheet;
import bagward.site.view.LotWords;
import bagward.site.view.MouldSheet;
import bagward.site.view.Places;
import bagward.site.view.ToDo;
import bagward.site.view.Tonight;
import bagward.site.view.UsedBagSheet;
import bagward.site.view.Words;
import bagward.watch.BagHistory;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The page of a head: how is it, what next.
 *
 * @param tag code of the head
 * @param place bay and spot
 * @param house name of the house
 * @param headline how it is, in one sentence
 * @param glyph how its bag is drawn; empty if none is on
 * @param toDos what to do, most urgent first
 * @param bagFacts lines about the bag that is on
 * @param headFacts lines about the head
 * @param climate its chart; empty if it never had a bag
 * @param tonight what is to be expected in its bag; empty if none is on
 * @param mould wet spells and organisms; empty if it never had a bag
 * @param lot pods and seed lot since the last bag came off; empty while one is on
 * @param used what its newest bag went through before; empty for a new bag
 * @param actions what can be entered
 */
public record BagPage(
        String tag,
        String place,
        String house,
        String headline,
        Optional<Glyph> glyph,
        List<ToDo> toDos,
        List<Fact> bagFacts,
        List<Fact> headFacts,
        Optional<BagClimateView> climate,
        Optional<Night> tonight,
        Optional<MouldSheet> mould,
        Optional<LotSheet> lot,
        Optional<UsedBagSheet> used,
        Actions actions) {

    /**
     * What is to be expected in the bag until the next morning.
     *
     * @param says in one sentence, or why nothing can be said
     * @param hours hour by hour; empty without an outlook
     */
    public record Night(String says, Optional<NightHours> hours) {
        static Night of(Board board, BagView bag, double dampLimit) {
            Outlook house = NightHours.houseOf(board, bag).tonight();
            String says = bag.tonight()
                    .map(tonight -> Tonight.bag(tonight, board.zone()))
                    .orElseGet(() ->
                            house instanceof Outlook.None none ? none.because() : "Nothing is known of this bag.");
            return new Night(says, NightHours.of(board, bag, dampLimit));
        }
    }

    /**
     * What can be entered about the head now.
     *
     * @param bagOn whether a bag is on
     * @param open whether the head is still worked on
     * @param lent the sensor that hangs in the bag
     * @param spare sensors that can be lent
     * @param materials bags to choose from
     * @param material material of the newest bag
     * @param flowers notes of its flowers that can be withdrawn
     * @param lot what can be entered about its seed lot
     * @param entered what was entered and refused, or the fresh values
     */
    public record Actions(
            boolean bagOn,
            boolean open,
            Optional<SensorId> lent,
            List<Choice> spare,
            List<Choice> materials,
            String material,
            List<FlowerNote> flowers,
            LotActions lot,
            Entered entered) {}

    /**
     * A note of flowers that counts.
     *
     * @param sign which sign
     * @param noted the time it was made for
     * @param text in words
     */
    public record FlowerNote(String sign, String noted, String text) {
        private static FlowerNote of(FlowerSign sign, Instant at, String what, ZoneId zone) {
            return new FlowerNote(sign.name(), at.toString(), what + " " + Words.dayAndClock(at, zone));
        }

        /** The notes of a head that count. */
        public static List<FlowerNote> of(Head head, ZoneId zone) {
            List<FlowerNote> notes = new ArrayList<>();
            head.flowers()
                    .petalsDropped()
                    .ifPresent(at -> notes.add(of(FlowerSign.PETALS_DROPPED, at, "petals had dropped", zone)));
            head.flowers()
                    .lastFlowerOpened()
                    .ifPresent(at -> notes.add(of(FlowerSign.LAST_OPENED, at, "last flower opened", zone)));
            return notes;
        }
    }

    /**
     * The climate of the newest bag.
     *
     * @param sentence the chart in one sentence
     * @param water how long there was water on the film, with its interval
     * @param wide for desks
     * @param narrow for phones
     * @param hours the same by the hour
     * @param whole whether all of the time in the bag is shown
     */
    public record BagClimateView(
            String sentence, String water, Chart wide, Chart narrow, List<HourRow> hours, boolean whole) {
        static BagClimateView of(BagHistory history, Board board, double dampLimit, boolean whole) {
            Instant end = history.bag().grid().end();
            Instant begin = history.bag().grid().start();
            Instant shortBegin = end.minus(Duration.ofDays(2));
            Instant from = whole || shortBegin.isBefore(begin) ? begin : shortBegin;
            List<HourRow> hours = HourRow.of(history, board.zone(), from);
            return new BagClimateView(
                    sentence(history, board, dampLimit, from),
                    water(history, from),
                    BagChart.draw(history, board.zone(), dampLimit, from, 760),
                    BagChart.draw(history, board.zone(), dampLimit, from, 360),
                    hours,
                    whole);
        }

        private static String water(BagHistory history, Instant from) {
            var grid = history.bag().grid();
            int[] cells = history.bag().film().cells(Math.max(0, grid.indexOf(from)), grid.size());
            return "In that time there was water on the film for about "
                    + Words.span(grid.step().multipliedBy(cells[1])) + ": for "
                    + Words.span(grid.step().multipliedBy(cells[0])) + " almost surely, for up to "
                    + Words.span(grid.step().multipliedBy(cells[2])) + " possibly.";
        }

        private static String sentence(BagHistory history, Board board, double dampLimit, Instant from) {
            var bag = history.bag();
            int damp = 0;
            int unknown = 0;
            int begin = Math.max(0, bag.grid().indexOf(from));
            for (int i = begin; i < bag.grid().size(); i++) {
                double humidity = bag.humidity().middle().valueOrNaN(i);
                damp += humidity >= dampLimit ? 1 : 0;
                unknown += Double.isNaN(humidity) ? 1 : 0;
            }
            String limit = Words.whole(dampLimit) + " %RH";
            return "From " + Words.dayAndClock(from, board.zone()) + " to "
                    + Words.dayAndClock(bag.grid().end(), board.zone()) + " the bag was at or above " + limit + " for "
                    + Words.span(bag.grid().step().multipliedBy(damp)) + "; "
                    + Words.span(bag.grid().step().multipliedBy(unknown)) + " are without data.";
        }
    }

    /**
     * The page of a head.
     *
     * @param crop name of its crop; empty if none was named for its line
     */
    public static BagPage of(
            Board board,
            Head head,
            Optional<String> crop,
            Optional<BagHistory> history,
            double dampLimit,
            boolean whole,
            Actions actions) {
        Optional<BagView> bag = board.find(head.tag());
        List<ToDo> toDos = toDos(board, head);
        return new BagPage(
                head.tag().value(),
                Places.spot(board, head.spot()),
                Places.house(board, head.spot().house()),
                headline(board, head, bag, toDos),
                bag.map(b -> Glyphs.of(board, b)),
                toDos,
                bag.map(b -> HeadFacts.ofBag(board, b)).orElse(List.of()),
                HeadFacts.ofHead(head, crop, board.zone()),
                history.map(h -> BagClimateView.of(h, board, dampLimit, whole)),
                bag.map(b -> Night.of(board, b, dampLimit)),
                history.map(h -> MouldSheet.of(h.mould(), board.zone())),
                Optional.empty(),
                Optional.empty(),
                actions);
    }

    /** The same with one more line about the head. */
    public BagPage with(Fact more) {
        List<Fact> facts = new ArrayList<>(headFacts);
        facts.add(more);
        return new BagPage(
                tag, place, house, headline, glyph, toDos, bagFacts, facts, climate, tonight, mould, lot, used,
                actions);
    }

    /** The same with what pods and bag went through. */
    public BagPage with(Optional<LotSheet> lotSheet, Optional<UsedBagSheet> usedBag) {
        return new BagPage(
                tag, place, house, headline, glyph, toDos, bagFacts, headFacts, climate, tonight, mould, lotSheet,
                usedBag, actions);
    }

    /** Material of the newest bag of a head. */
    public static String newestMaterial(Head head) {
        return head.baggings().isEmpty()
                ? ""
                : head.baggings().get(head.baggings().size() - 1).material().toString();
    }

    private static List<ToDo> toDos(Board board, Head head) {
        return board.alarms().stream()
                .filter(alarm -> alarm.concerns(head.tag()))
                .map(a -> ToDo.of(board, a))
                .toList();
    }

    private static String headline(Board board, Head head, Optional<BagView> bag, List<ToDo> toDos) {
        if (!toDos.isEmpty()) {
            return Words.sentence(toDos.get(0).what()) + ": " + toDos.get(0).figures();
        }
        if (bag.isEmpty()) {
            return Words.sentence(LotWords.state(head, board.at())) + ".";
        }
        if (Glyphs.unknown(bag.get())) {
            return "Nothing is known of this bag now: look at it.";
        }
        return "No rule calls. Comes off " + Words.dueIn(bag.get().due(), board.at(), board.zone()) + ".";
    }

    /**
     * One entry of a list to choose from.
     *
     * @param value what is sent
     * @param text what is read
     */
    public record Choice(String value, String text) {
        /** A crop. */
        public static Choice of(Crop crop) {
            return new Choice(crop.id().value(), crop.name());
        }

        /** A material. */
        public static Choice of(MaterialId id, String name) {
            return new Choice(id.value(), name);
        }
    }
}
