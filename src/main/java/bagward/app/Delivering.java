package bagward.app;

import bagward.board.Board;
import bagward.fault.BagwardException;
import bagward.message.BundlingComposer;
import bagward.message.Composer;
import bagward.message.Message;
import bagward.message.Sent;
import bagward.notify.AnswerLinks;
import bagward.notify.ChannelPlan;
import bagward.notify.Deliveries;
import bagward.notify.DeliveryDesk;
import bagward.notify.DeliverySettings;
import bagward.notify.RetryPlan;
import bagward.notify.SignsOfLife;
import bagward.pollen.PollenReport;
import bagward.station.HouseId;
import bagward.store.SqliteStores;
import bagward.watch.Health;
import bagward.watch.Watch;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** From the board to people: composes what is to be told after each board, puts it into the outbox and has it delivered. */
final class Delivering implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Delivering.class);
    private static final String KEY_FILE = "link.key";

    private final Composer composer = new BundlingComposer();
    private final DeliverySettings settings;
    private final SignsOfLife signs;
    private final Deliveries deliveries;
    private Optional<Sent> sent = Optional.empty();
    private LocalDate tidiedOn = LocalDate.MIN;
    private volatile Supplier<Map<HouseId, PollenReport>> pollen = Map::of;
    private volatile Optional<Watch> watch = Optional.empty();
    private volatile Optional<String> trouble = Optional.empty();

    /** Nothing is delivered before {@link #start}. */
    Delivering(Configuration configuration, SqliteStores stores, Clock clock) {
        this.settings = configuration.deliveries();
        this.signs = new SignsOfLife(
                settings,
                configuration.broker().link(),
                configuration.collector().clientId(),
                clock,
                () -> watch.map(running -> running.health().well()).orElse(false));
        this.deliveries = new Deliveries(new Deliveries.Parts(
                clock,
                stores.outbox(),
                configuration.station().name(),
                configuration.station().zone(),
                signs.channels(),
                settings.channels().stream()
                        .filter(ChannelPlan::follows)
                        .map(ChannelPlan::name)
                        .collect(Collectors.toSet()),
                settings.pages(),
                AnswerLinks.withKeyOf(configuration.store().folder().resolve(KEY_FILE)),
                signs,
                RetryPlan.USUAL,
                new SplittableRandom()));
    }

    /**
     * Starts to deliver, and to compose with the next board.
     *
     * @param newestPollen the newest report of pollen of each house
     */
    void start(Watch running, Supplier<Map<HouseId, PollenReport>> newestPollen) {
        pollen = newestPollen;
        watch = Optional.of(running);
        signs.start();
        deliveries.start();
        running.listen(this::take);
    }

    /** What pages see. */
    DeliveryDesk desk() {
        return deliveries;
    }

    /** How deliveries are. */
    Health.Part part() {
        Optional<String> wrong = trouble.or(deliveries::trouble);
        return new Health.Part("deliveries", wrong.isEmpty(), wrong.orElse("nothing is held up"));
    }

    /** Called with one board after the other, never two at a time. */
    private void take(Board board) {
        try {
            compose(board);
            deliveries.takeJournal();
            signs.show(board);
            tidy(board.at().atZone(board.zone()).toLocalDate());
            trouble = Optional.empty();
        } catch (BagwardException e) {
            LOG.warn("messages are not in the outbox yet; they are composed again with the next board", e);
            trouble = Optional.of("messages are not in the outbox yet: " + e.getMessage());
        }
    }

    private void compose(Board board) {
        Sent before = sent.isPresent() ? sent.get() : deliveries.sent();
        List<Message> messages = composer.compose(board, pollen.get(), settings.plan(), before);
        deliveries.put(messages);
        sent = Optional.of(messages.isEmpty() ? before : before.with(messages));
    }

    private void tidy(LocalDate today) {
        if (!today.equals(tidiedOn)) {
            deliveries.forgetOld();
            tidiedOn = today;
        }
    }

    @Override
    public void close() {
        deliveries.close();
        signs.close();
    }
}
