package bagward.message;

import bagward.board.Board;
import bagward.pollen.PollenReport;
import bagward.station.HouseId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Composes few messages instead of many: alarms of one rule that came about together go into one message, what is not
 * urgent waits for the list of the morning or of the evening, and what nobody acknowledges is told again, then to the
 * people of the second turn.
 */
public final class BundlingComposer implements Composer {
    @Override
    public List<Message> compose(Board board, Map<HouseId, PollenReport> pollen, MessagePlan plan, Sent sent) {
        List<Message> messages = new ArrayList<>();
        DayLists dayLists = new DayLists(board, pollen, plan);
        for (Person person : plan.people()) {
            List<Message> lists = dayLists.due(person, sent);
            messages.addAll(lists);
            Sent withLists = sent.with(lists);
            List<News> news = new DueNews(board, plan, person, withLists).all();
            messages.addAll(Bundles.of(board, person, news));
        }
        return messages;
    }
}
