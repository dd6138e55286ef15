package bagward.message;

import bagward.board.Board;
import java.util.ArrayList;
import java.util.List;

/**
 * Composes few messages instead of many: alarms of one rule that came about together go into one message, what is not
 * urgent waits for the list of the morning or of the evening, and what nobody acknowledges is told again, then to the
 * people of the second turn.
 */
public final class BundlingComposer implements Composer {
    @Override
    public List<Message> compose(Board board, MessagePlan plan, Sent sent) {
        List<Message> messages = new ArrayList<>();
        for (Person person : plan.people()) {
            List<Message> lists = DayLists.due(board, plan, person, sent);
            messages.addAll(lists);
            Sent withLists = sent.with(lists);
            List<News> news = new DueNews(board, plan, person, withLists).all();
            messages.addAll(Bundles.of(board, person, news));
        }
        return messages;
    }
}
