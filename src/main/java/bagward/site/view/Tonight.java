package bagward.site.view;

import bagward.bag.BagOutlook;
import bagward.bag.Banded;
import bagward.bag.Outlook;
import bagward.bag.OutlookSkill;
import bagward.bag.WetHours;
import bagward.board.BagView;
import bagward.board.Board;
import bagward.board.HouseView;
import bagward.climate.RegularSeries;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What is to be expected until the next morning, in words. */
public final class Tonight {
    /** So many bags are named as the wettest ones. */
    private static final int MOST_BAGS = 5;

    private Tonight() {}

    /**
     * A house tonight.
     *
     * @param house its name
     * @param says what is to be expected, or why nothing can be said
     * @param skill how past outlooks did; empty without an outlook
     * @param week whether the last week favoured grey mould; empty if nobody looked
     * @param wettest bags that will likely be wet longest, with hours
     */
    public record House(String house, String says, String skill, String week, List<Bag> wettest) {
        /** Copies the list. */
        public House {
            wettest = List.copyOf(wettest);
        }
    }

    /**
     * A bag that is likely to be wet.
     *
     * @param tag its head
     * @param hours how long, with interval
     */
    public record Bag(String tag, String hours) {}

    /** A house of a board. */
    public static House of(Board board, HouseView view) {
        String name = view.house().name();
        if (!(view.tonight() instanceof Outlook.Night night)) {
            return new House(name, ((Outlook.None) view.tonight()).because(), "", week(view), List.of());
        }
        String says = peak(night.humidity(), board.zone()) + coldest(night.temperature(), board.zone())
                + hours(night.wetHours()) + ".";
        String made = "Made for " + Words.clock(night.issuedAt(), board.zone()) + ". "
                + skill(night.humiditySkill(), "points of humidity") + " "
                + skill(night.temperatureSkill(), "K");
        return new House(name, says, made, week(view), wettest(board, view));
    }

    private static String week(HouseView view) {
        return view.week()
                .map(week -> switch (week.weather()) {
                            case CONDUCIVE -> "Nights that favour grey mould: ";
                            case NOT_CONDUCIVE -> "Nights of the last week did not favour grey mould: ";
                            case UNKNOWN -> "Whether the last nights favoured grey mould is not known: ";
                        }
                        + week.reason() + ".")
                .orElse("");
    }

    /** One short line for the wall: "Linden: up to 93 %RH, wet 2 h (0 to 6)". */
    public static List<String> lines(Board board) {
        List<String> lines = new ArrayList<>();
        for (HouseView view : board.houses()) {
            if (view.tonight() instanceof Outlook.Night night) {
                int cell = highest(night.humidity().middle());
                lines.add(view.house().name() + " up to "
                        + Words.whole(night.humidity().middle().valueOrNaN(cell)) + " %RH, "
                        + hours(night.wetHours()));
            }
        }
        return lines;
    }

    /** What is to be expected in a bag, in one sentence. */
    public static String bag(BagOutlook outlook, ZoneId zone) {
        return peak(outlook.climate().humidity(), zone)
                + coldest(outlook.climate().temperature(), zone)
                + hours(outlook.wet()) + ". Made for " + Words.clock(outlook.issuedAt(), zone)
                + "; intervals hold in 80 of 100 hours.";
    }

    private static List<Bag> wettest(Board board, HouseView view) {
        return board.bags().stream()
                .filter(bag -> bag.head().spot().house().equals(view.house().id()))
                .filter(bag -> likely(bag) > 0)
                .sorted(Comparator.comparingDouble(Tonight::likely).reversed())
                .limit(MOST_BAGS)
                .map(bag -> new Bag(
                        bag.head().tag().value(),
                        hours(bag.tonight().orElseThrow().wet())))
                .toList();
    }

    private static double likely(BagView bag) {
        return bag.tonight().map(outlook -> outlook.wet().likely()).orElse(0.0);
    }

    /** "wet 3 h (0 to 8 h)", or "not wet" if not even the high end of the interval is. */
    static String hours(WetHours wet) {
        if (wet.most() == 0) {
            return "not wet";
        }
        String likely = wet.likely() == 0 ? "not likely to be wet" : "wet " + Words.whole(wet.likely()) + " h";
        return likely + " (" + Words.whole(wet.least()) + " to " + Words.whole(wet.most()) + " h)";
    }

    private static String peak(Banded humidity, ZoneId zone) {
        int cell = highest(humidity.middle());
        return "Up to " + Words.whole(humidity.middle().valueOrNaN(cell)) + " %RH about "
                + Words.clock(humidity.middle().grid().at(cell), zone) + " ("
                + Words.whole(humidity.low().valueOrNaN(cell)) + " to "
                + Words.whole(humidity.high().valueOrNaN(cell)) + "), ";
    }

    private static String coldest(Banded temperature, ZoneId zone) {
        RegularSeries middle = temperature.middle();
        int cell = 0;
        for (int i = 1; i < middle.grid().size(); i++) {
            cell = !(middle.valueOrNaN(i) >= middle.valueOrNaN(cell)) && middle.known(i) ? i : cell;
        }
        return "down to " + Words.oneDecimal(middle.valueOrNaN(cell)) + " °C about "
                + Words.clock(middle.grid().at(cell), zone) + " ("
                + Words.oneDecimal(temperature.low().valueOrNaN(cell)) + " to "
                + Words.oneDecimal(temperature.high().valueOrNaN(cell)) + "), ";
    }

    private static int highest(RegularSeries middle) {
        int cell = 0;
        for (int i = 1; i < middle.grid().size(); i++) {
            cell = !(middle.valueOrNaN(i) <= middle.valueOrNaN(cell)) && middle.known(i) ? i : cell;
        }
        return cell;
    }

    private static String skill(OutlookSkill skill, String unit) {
        if (skill.nights() == 0) {
            return "No past night to judge it by yet.";
        }
        return "Over the last " + Words.count(skill.nights(), "night", "nights") + " such outlooks were off by "
                + Words.oneDecimal(skill.error()) + " " + unit + ", the mean of three nights by "
                + Words.oneDecimal(skill.threeNightError()) + ".";
    }
}
