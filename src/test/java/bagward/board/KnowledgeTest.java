package bagward.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.AlarmBook;
import bagward.bag.BagBelief;
import bagward.bag.Outlook;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.climate.Reading;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What lent sensors and past nights teach the board. */
class KnowledgeTest {
    private static final TagCode LENT_TO = new TagCode("S-1");

    private static BagInsight insight(BoardInputs in, String tag) {
        Board board = Scenario.tick(in, AlarmBook.EMPTY);
        return board.find(new TagCode(tag)).orElseThrow().insight();
    }

    private static BagBelief belief(BoardInputs in, String tag) {
        return insight(in, tag).belief().orElseThrow();
    }

    @Test
    void a_lent_sensor_moves_what_is_believed_of_the_other_bags_of_its_material() {
        BoardInputs in = Scenario.lent().at(60);
        BagBelief before = belief(in, "S-2");

        BagBelief after = belief(Scenario.knowing(in), "S-2");

        assertEquals(0, before.sensoredBags());
        assertEquals(1, after.sensoredBags());
        assertTrue(after.closureByNight().mean() > before.closureByNight().mean() + 0.05, "" + after.closureByNight());
    }

    @Test
    void the_bag_itself_is_believed_its_own_sensor_more_than_the_others_are() {
        BoardInputs in = Scenario.knowing(Scenario.lentAndGivenBack().at(70));

        assertTrue(insight(in, "S-1").own());
        assertFalse(insight(in, "S-2").own());
        assertTrue(belief(in, "S-1").closureByNight().mean()
                > belief(in, "S-2").closureByNight().mean());
        assertTrue(belief(in, "S-1").closureByNight().deviation()
                < belief(in, "S-2").closureByNight().deviation());
    }

    @Test
    void what_was_taught_stays_when_the_sensor_is_out_and_the_bag_is_off() {
        BoardInputs in = Scenario.knowing(Scenario.lentAndGivenBack()
                .change(new RegisterChange.TakeOff(LENT_TO, Scenario.hours(62)))
                .at(70));

        assertEquals(1, belief(in, "S-2").sensoredBags());
    }

    @Test
    void a_bag_that_was_swapped_while_a_sensor_was_lent_does_not_teach_for_the_next_one() {
        BoardInputs in = Scenario.knowing(Scenario.lentAndGivenBack()
                .change(new RegisterChange.Swap(LENT_TO, Scenario.hours(61), Scenario.FILM))
                .at(70));

        assertFalse(insight(in, "S-1").own());
        assertEquals(1, belief(in, "S-1").sensoredBags());
    }

    @Test
    void readings_in_any_order_teach_the_same() {
        Scenario scenario = Scenario.lentAndGivenBack();
        List<Reading> shuffled = new ArrayList<>(scenario.readings());
        Collections.shuffle(shuffled, new Random(7));

        Knowledge inOrder = Scenario.knowing(scenario.at(70)).knowledge();
        Knowledge anyOrder = Scenario.knowing(scenario.at(70, shuffled, Scenario.materials()))
                .knowledge();

        assertEquals(inOrder.taught(), anyOrder.taught());
    }

    @Test
    void readings_after_the_sensor_was_taken_out_teach_nothing() {
        Knowledge stopped = Scenario.knowing(Scenario.lentAndGivenBack().at(70)).knowledge();
        Knowledge wentOn = Scenario.knowing(Scenario.lentAndGivenBack()
                        .heard(Scenario.SPARE, 60, 70, 25, 20)
                        .at(70))
                .knowledge();

        assertEquals(stopped.taught(), wentOn.taught());
    }

    @Test
    void a_board_without_three_nights_says_why_it_foretells_nothing() {
        Board board = Scenario.tick(Scenario.knowing(Scenario.lent().at(42)), AlarmBook.EMPTY);

        Outlook.None none =
                assertInstanceOf(Outlook.None.class, board.houses().get(0).tonight());
        assertTrue(none.because().contains("of the last 7 nights"), none.because());
        assertTrue(board.bags().get(0).tonight().isEmpty());
    }

    @Test
    void a_board_in_the_evening_foretells_the_night_of_house_and_bag() {
        Scenario scenario = new Scenario(10)
                .heard(Scenario.SOUTH_POST, 0, 24 * 5, 14, 80)
                .bag("S-1", Scenario.SOUTH, Scenario.WINDOW, 1, 6);

        Board board = Scenario.tick(Scenario.knowing(scenario.at(24 * 4 + 18)), AlarmBook.EMPTY);

        Outlook.Night night =
                assertInstanceOf(Outlook.Night.class, board.houses().get(0).tonight());
        assertEquals(80, night.humidity().middle().valueOrNaN(3), 0.5);
        double inBag = board.bags()
                .get(0)
                .tonight()
                .orElseThrow()
                .climate()
                .humidity()
                .middle()
                .valueOrNaN(3);
        assertEquals(90, inBag, 1.5);
    }
}
