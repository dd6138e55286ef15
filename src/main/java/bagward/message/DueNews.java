package bagward.message;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Priority;
import bagward.alarm.RuleId;
import bagward.board.AlarmView;
import bagward.board.Board;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What is to be told to one person now, alarm by alarm. */
final class DueNews {
    private final Board board;
    private final MessagePlan plan;
    private final Person person;
    private final Memory memory;
    private final List<Person> firsts;
    private final List<Memory> ofFirsts;
    private final Instant now;

    DueNews(Board board, MessagePlan plan, Person person, Sent sent) {
        this.board = board;
        this.plan = plan;
        this.person = person;
        this.memory = new Memory(sent, person);
        this.firsts = plan.people().stream()
                .filter(other -> other.turn() == Person.Turn.FIRST)
                .toList();
        this.ofFirsts = firsts.stream().map(other -> new Memory(sent, other)).toList();
        this.now = board.at();
    }

    /** In the order of the board: highest priority first, then in walking order. */
    List<News> all() {
        Map<Batch, List<News>> waiting =
                new TreeMap<>(Comparator.comparing(Batch::rule).thenComparing(Batch::news));
        for (AlarmView view : board.alarms()) {
            if (person.listens(view.rule().priority(), now, board.zone())) {
                news(view)
                        .ifPresent(news -> waiting.computeIfAbsent(
                                        new Batch(view.rule().id(), news.told().news()), b -> new ArrayList<>())
                                .add(news));
            }
        }
        return waiting.entrySet().stream()
                .filter(entry -> ripe(entry.getKey(), entry.getValue()))
                .flatMap(entry -> entry.getValue().stream())
                .toList();
    }

    private Optional<News> news(AlarmView view) {
        Alarm alarm = view.alarm();
        return switch (alarm.phase()) {
            case UNACKNOWLEDGED -> memory.first(alarm).isPresent() ? reminder(view) : first(view);
            case RETURNED_UNACKNOWLEDGED -> returned(view);
            default -> Optional.empty();
        };
    }

    private Optional<News> first(AlarmView view) {
        boolean again = memory.lastRaised(view.alarm().key())
                .filter(at -> at.plus(Pace.SAME_AGAIN).isAfter(now))
                .isPresent();
        if (again) {
            return Optional.empty();
        }
        if (person.turn() == Person.Turn.FIRST) {
            return told(view, Told.News.RAISED, 1);
        }
        boolean due = secondTurn(view).filter(at -> !at.isAfter(now)).isPresent();
        return due ? told(view, Told.News.SECOND_TURN, 1) : Optional.empty();
    }

    /**
     * When the second turn comes: a time after the first turn was told; if nobody of it can be told now, after the alarm
     * was raised; empty while somebody of it is just about to be told.
     */
    private Optional<Instant> secondTurn(AlarmView view) {
        Optional<Instant> told = ofFirsts.stream()
                .flatMap(other -> other.first(view.alarm()).stream())
                .min(Comparator.naturalOrder());
        boolean soon =
                firsts.stream().anyMatch(other -> other.listens(view.rule().priority(), now, board.zone()));
        if (told.isEmpty() && soon) {
            return Optional.empty();
        }
        return Optional.of(told.orElseGet(() -> raised(view)).plus(plan.secondAfter()));
    }

    /** Only what is high is told again by itself; the rest is told again by the lists. */
    private Optional<News> reminder(AlarmView view) {
        int told = memory.reminders(view.alarm());
        boolean due = memory.last(view.alarm())
                .filter(at -> !at.plus(plan.remindEvery()).isAfter(now))
                .isPresent();
        boolean asks = view.rule().priority() == Priority.HIGH && told < Pace.MOST_REMINDERS && due;
        return asks ? told(view, Told.News.REMINDED, told + 1) : Optional.empty();
    }

    private Optional<News> returned(AlarmView view) {
        boolean untold = !memory.was(memory.state(view.alarm(), Told.News.RETURNED, 1));
        boolean known = memory.first(view.alarm()).isPresent();
        return known && untold ? told(view, Told.News.RETURNED, 1) : Optional.empty();
    }

    private Optional<News> told(AlarmView view, Told.News news, int number) {
        return Optional.of(new News(view, memory.state(view.alarm(), news, number)));
    }

    /** Whether news has waited long enough for company, and long enough after the last message about its rule. */
    private boolean ripe(Batch batch, List<News> waiting) {
        Pace pace = Pace.of(waiting.get(0).alarm().rule().priority(), batch.news());
        boolean apart = memory.last(batch.rule(), batch.news())
                .map(at -> !at.plus(pace.apart()).isAfter(now))
                .orElse(true);
        Instant oldest = waiting.stream()
                .map(DueNews::begun)
                .min(Comparator.naturalOrder())
                .orElse(now);
        boolean gathered = Duration.between(oldest, now).compareTo(pace.gather()) >= 0 || waiting.size() >= Pace.MANY;
        return apart && gathered;
    }

    private static Instant begun(News news) {
        Alarm alarm = news.alarm().alarm();
        return alarm.phase() == AlarmPhase.RETURNED_UNACKNOWLEDGED
                ? alarm.clearSince().orElse(alarm.since())
                : raised(news.alarm());
    }

    private static Instant raised(AlarmView view) {
        return view.alarm().raisedAt().orElse(view.alarm().since());
    }

    private record Batch(RuleId rule, Told.News news) {}
}
