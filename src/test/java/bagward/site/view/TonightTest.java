package bagward.site.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.Acting;
import bagward.alarm.AlarmBook;
import bagward.alarm.Rule;
import bagward.alarm.RuleKind;
import bagward.bag.BagMaterial;
import bagward.bag.Quantile;
import bagward.bag.TagCode;
import bagward.board.Board;
import bagward.board.BoardBuilder;
import bagward.board.BoardInputs;
import bagward.board.Scenario;
import bagward.climate.Climate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What pages say of tonight, and of how a bag's climate is known. */
class TonightTest {
    @Test
    void a_house_without_three_nights_says_so() {
        Tonight.House house = first(board(Scenario.lent(), 42));

        assertTrue(house.says().startsWith("Only 1 of the last 7 nights have data"), house.says());
        assertEquals("", house.skill());
        assertEquals(List.of(), Tonight.lines(board(Scenario.lent(), 42)));
    }

    @Test
    void an_evening_tells_the_dampest_hour_the_wet_hours_and_how_past_outlooks_did() {
        Board board = board(Scenario.dampWeek(), 24 * 4 + 18);

        Tonight.House house = first(board);

        assertTrue(house.says().startsWith("Up to 93 %RH about "), house.says());
        assertTrue(house.says().contains("down to 14.0 °C about "), house.says());
        assertTrue(house.skill().contains("such outlooks were off by"), house.skill());
        assertEquals("S-1", house.wettest().get(0).tag());
        assertTrue(
                house.wettest().get(0).hours().startsWith("wet 11 h ("),
                house.wettest().toString());
        assertTrue(
                Tonight.lines(board).get(0).startsWith("South up to 93 %RH, "),
                Tonight.lines(board).toString());
    }

    @Test
    void a_house_tells_whether_its_nights_favour_grey_mould_with_the_reason_in_numbers() {
        Tonight.House damp = house(board(Scenario.dampWeek(), 24 * 5), 0);
        Tonight.House dry = house(board(Scenario.lent(), 42), 0);
        Tonight.House silent = house(board(Scenario.dampWeek(), 24 * 4 + 18), 1);

        assertEquals(
                "Nights that favour grey mould: wet 17.1 h a day (limit 7 h), nights within 9 to 21 °C for 10.0 h"
                        + " (limit 9.5 h), means of 7 days; 48 h of the week unknown.",
                damp.week());
        assertTrue(
                dry.week().startsWith("Whether the last nights favoured grey mould is not known: wet 0.0 h"),
                dry.week());
        assertTrue(silent.week().endsWith("168 h of the week unknown."), silent.week());
    }

    @Test
    void the_page_of_an_estimate_has_five_lines_that_tell_where_it_comes_from() {
        BoardInputs in = Scenario.knowing(Scenario.lentAndGivenBack().at(70));
        Board board = Scenario.tick(in, AlarmBook.EMPTY);

        List<Fact> other = lines(in, board, "S-2");
        List<Fact> own = lines(in, board, "S-1");

        assertEquals(
                List.of("House", "Sun", "Material", "What was learnt", "How sure"),
                other.stream().map(Fact::name).toList());
        assertTrue(
                other.get(0).value().contains("14.0 °C and 70 %RH"),
                other.get(0).value());
        assertTrue(
                other.get(3).value().startsWith("Sensors hung in 1 bag of this material, none in this one."),
                other.get(3).value());
        assertTrue(
                own.get(3).value().contains("in this very bag for 2.0 days"),
                own.get(3).value());
        assertTrue(own.get(4).value().startsWith("Now estimated: "), own.get(4).value());
    }

    @Test
    void the_page_of_an_estimate_names_rules_that_act_on_another_value_than_the_best_one() {
        BoardInputs in = Scenario.lent().at(60);
        Board board = Scenario.tick(in, AlarmBook.EMPTY);
        List<Rule> rules = in.rules().stream()
                .map(rule -> rule.kind() == RuleKind.BAG_DAMP ? Acting.on(Quantile.POSSIBLE, rule) : rule)
                .toList();

        assertTrue(sure(in, board, "S-2", in.rules()).contains("Rules act on the best value."));
        String named = sure(in, board, "S-2", rules);
        assertTrue(named.contains("damp acts on an upper estimate (90 of 100 lie below): 9"), named);
        assertTrue(named.contains("The other rules act on the best value."), named);
        String measured = sure(in, board, "S-1", rules);
        assertTrue(measured.contains("Rules act on the measured value."), measured);
    }

    private static String sure(BoardInputs in, Board board, String tag, List<Rule> rules) {
        return lines(in, board, tag, rules).get(4).value();
    }

    @Test
    void without_any_lent_sensor_the_page_says_that_nothing_was_learnt() {
        BoardInputs in = Scenario.lent().at(60);

        List<Fact> lines = lines(in, Scenario.tick(in, AlarmBook.EMPTY), "S-2");

        assertTrue(lines.get(3).value().startsWith("Nothing yet"), lines.get(3).value());
    }

    private static Tonight.House first(Board board) {
        return Tonight.of(board, board.houses().get(0));
    }

    private static Board board(Scenario scenario, double hour) {
        return Scenario.tick(Scenario.knowing(scenario.at(hour)), AlarmBook.EMPTY);
    }

    private static List<Fact> lines(BoardInputs in, Board board, String tag) {
        return lines(in, board, tag, in.rules());
    }

    private static List<Fact> lines(BoardInputs in, Board board, String tag, List<Rule> rules) {
        var bag = board.find(new TagCode(tag)).orElseThrow();
        Climate house = BoardBuilder.climate(
                        in, bag.head(), bag.head().baggings().get(0))
                .house();
        Optional<BagMaterial> material = Optional.ofNullable(in.materials().get(bag.material()));
        return Estimate.lines(bag, material, house, rules);
    }

    private static Tonight.House house(Board board, int place) {
        return Tonight.of(board, board.houses().get(place));
    }
}
