package bagward.collector;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.collector.payload.BareNumber;
import bagward.collector.payload.JsonAt;
import bagward.collector.payload.MeasureUnit;
import bagward.collector.payload.Place;
import bagward.collector.payload.SensorSource;
import bagward.collector.payload.TimeForm;
import bagward.collector.payload.TopicFilter;
import bagward.units.Quantity;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The collector on the embedded broker and on a real mosquitto. */
class MqttCollectorTest extends CollectorStage {
    private static final SensorId AIR = new SensorId("air");
    private static final SeriesId TEMPERATURE = new SeriesId(AIR, Quantity.TEMPERATURE);
    private static final Instant START = Instant.parse("2026-04-03T06:00:00Z");

    static final List<SensorSource> SOURCES = List.of(
            new SensorSource(
                    AIR,
                    new TopicFilter("house/air"),
                    new JsonAt(
                            List.of(Place.of(Quantity.TEMPERATURE, "/t", MeasureUnit.CELSIUS)),
                            Optional.of(new JsonAt.TimeAt("/at", TimeForm.SECONDS)))),
            new SensorSource(
                    new SensorId("bare"),
                    new TopicFilter("house/bare/+"),
                    new BareNumber(Place.of(Quantity.TEMPERATURE, "", MeasureUnit.CELSIUS))));

    private MqttCollector collector(TestBroker broker) {
        return collector(broker, CollectorSettings.USUAL.unlisting(List.of(new TopicFilter("unlisted/#"))), SOURCES);
    }

    static String json(int number) {
        return "{\"t\":" + (number % 40) + ".5,\"at\":" + (START.getEpochSecond() + number) + "}";
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void a_published_reading_is_stored_at_its_own_time_and_told(TestBroker.Kind kind) throws Exception {
        try (TestBroker broker = kind.start(folder);
                MqttCollector collector = collector(broker);
                Publisher publisher = new Publisher(broker.settings().link())) {
            connected(collector);
            publisher.publish("house/air", json(7));
            soon().until(() -> told.size() == 1);
            assertEquals(List.of(Reading.of(TEMPERATURE, START.plusSeconds(7), 7.5)), store.all());
            assertEquals(store.all(), told);
            assertTrue(collector.state().well(), collector.state().says());
            assertEquals(1, collector.state().counts().stored());
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void the_same_message_again_is_counted_and_not_stored_again(TestBroker.Kind kind) throws Exception {
        try (TestBroker broker = kind.start(folder);
                MqttCollector collector = collector(broker);
                Publisher publisher = new Publisher(broker.settings().link())) {
            connected(collector);
            for (int i = 0; i < 3; i++) {
                publisher.publish("house/air", json(1));
            }
            soon().until(() -> collector.state().counts().repeated() == 2);
            assertEquals(1, store.count());
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void messages_that_cannot_be_used_go_to_quarantine_with_their_reason(TestBroker.Kind kind) throws Exception {
        try (TestBroker broker = kind.start(folder);
                MqttCollector collector = collector(broker);
                Publisher publisher = new Publisher(broker.settings().link())) {
            connected(collector);
            publisher.publish("house/air", "{\"t\":");
            publisher.publish("house/bare/a", "warm");
            publisher.publish("house/air", new byte[70_000], false);
            soon().until(() -> store.quarantinedCount() == 3);
            List<String> reasons =
                    store.newestQuarantined(3).stream().map(q -> q.reason()).toList();
            assertTrue(reasons.get(0).contains("70000 bytes: allowed are 65536"), reasons::toString);
            assertTrue(reasons.get(1).contains("'warm' is not a number"), reasons::toString);
            assertTrue(reasons.get(2).contains("not readable as JSON"), reasons::toString);
            assertEquals("warm", store.newestQuarantined(2).get(1).payload().readable());
            assertEquals(3, collector.state().counts().quarantined());
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void a_topic_that_nobody_configured_is_heard_with_a_sample_and_never_stored(TestBroker.Kind kind) throws Exception {
        try (TestBroker broker = kind.start(folder);
                MqttCollector collector = collector(broker);
                Publisher publisher = new Publisher(broker.settings().link())) {
            connected(collector);
            soon().until(() -> {
                publisher.publish("unlisted/air", "{\"t\":4}");
                publisher.publish("attic/air", "{\"t\":3}");
                return !store.heardSince(Instant.EPOCH).isEmpty();
            });
            publisher.publish("house/air", json(1));
            soon().until(() -> store.count() == 1);
            assertEquals("attic/air", store.heardSince(Instant.EPOCH).get(0).topic());
            assertEquals("{\"t\":3}", store.heardSince(Instant.EPOCH).get(0).sample());
            assertEquals(
                    1,
                    store.heardSince(Instant.EPOCH).size(),
                    "configured topics, unlisted ones and $SYS are not among them");
            assertEquals(0, store.quarantinedCount());
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void a_retained_reading_with_its_own_time_is_stored_once_over_two_starts(TestBroker.Kind kind) throws Exception {
        try (TestBroker broker = kind.start(folder);
                Publisher publisher = new Publisher(broker.settings().link())) {
            publisher.retain("house/air", json(1));
            publisher.retain("house/bare/a", "21");
            for (int start = 0; start < 2; start++) {
                try (MqttCollector collector = collector(broker)) {
                    soon().until(() -> collector.state().counts().messages() == 2);
                }
            }
            assertEquals(List.of(Reading.of(TEMPERATURE, START.plusSeconds(1), 1.5)), store.all());
            assertTrue(store.newestQuarantined(1).get(0).reason().contains("retained"));
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void after_a_restart_of_the_broker_the_collector_goes_on(TestBroker.Kind kind) throws Exception {
        try (TestBroker broker = kind.start(folder);
                MqttCollector collector = collector(broker)) {
            connected(collector);
            try (Publisher publisher = new Publisher(broker.settings().link())) {
                publisher.publish("house/air", json(1));
            }
            soon().until(() -> store.count() == 1);
            broker.stop();
            soon().until(() -> !collector.state().connected());
            assertFalse(collector.state().well());
            assertTrue(
                    collector.state().says().startsWith("Not connected"),
                    collector.state().says());
            broker.startAgain();
            try (Publisher publisher = new Publisher(broker.settings().link())) {
                publisher.publish("house/air", json(2));
            }
            soon().until(() -> store.count() == 2);
            assertEquals(2, collector.state().counts().connections());
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void a_collector_that_starts_before_its_broker_waits_for_it(TestBroker.Kind kind) throws Exception {
        try (TestBroker broker = kind.start(folder)) {
            broker.stop();
            try (MqttCollector collector = collector(broker)) {
                soon().until(() -> collector.state().says().contains("no connection to the broker"));
                broker.startAgain();
                connected(collector);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void what_is_published_while_the_collector_is_away_is_stored_when_it_is_back(TestBroker.Kind kind)
            throws Exception {
        try (TestBroker broker = kind.start(folder);
                Publisher publisher = new Publisher(broker.settings().link())) {
            try (MqttCollector collector = collector(broker)) {
                connected(collector);
            }
            for (int i = 0; i < 300; i++) {
                publisher.publish("house/air", json(i));
            }
            broker.stop();
            broker.startAgain();
            try (MqttCollector collector = collector(broker)) {
                soon().until(() -> store.count() == 300);
                soon().until(() -> collector.state().counts().messages() == 300);
                assertTrue(store.largestBatch() <= broker.settings().window());
            }
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void while_the_store_fails_nothing_is_lost_and_the_connection_stands(TestBroker.Kind kind) throws Exception {
        try (TestBroker broker = kind.start(folder);
                MqttCollector collector = collector(broker);
                Publisher publisher = new Publisher(broker.settings().link())) {
            connected(collector);
            store.setBroken(true);
            for (int i = 0; i < 200; i++) {
                publisher.publish("house/air", json(i));
            }
            publisher.publish("house/air", "{");
            soon().until(() -> store.refusedBatches() >= 4);
            assertFalse(collector.state().well());
            assertTrue(
                    collector.state().says().contains("the disk is full"),
                    collector.state().says());
            assertEquals(0, store.count());
            store.setBroken(false);
            soon().until(() -> store.count() == 200 && store.quarantinedCount() == 1);
            soon().until(() -> collector.state().well());
            assertEquals(1, collector.state().counts().connections());
            assertEquals(0, collector.state().counts().lost());
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void what_was_not_committed_before_the_collector_closed_comes_again(TestBroker.Kind kind) throws Exception {
        try (TestBroker broker = kind.start(folder);
                Publisher publisher = new Publisher(broker.settings().link())) {
            store.setBroken(true);
            try (MqttCollector collector = collector(broker)) {
                connected(collector);
                for (int i = 0; i < 50; i++) {
                    publisher.publish("house/air", json(i));
                }
                publisher.publish("house/bare/a", "21");
                soon().until(() -> store.refusedBatches() > 0);
            }
            store.setBroken(false);
            try (MqttCollector collector = collector(broker)) {
                soon().until(() -> store.count() == 51);
                connected(collector);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void bare_numbers_that_arrive_together_are_all_kept(TestBroker.Kind kind) throws Exception {
        try (TestBroker broker = kind.start(folder);
                MqttCollector collector = collector(broker);
                Publisher publisher = new Publisher(broker.settings().link())) {
            connected(collector);
            for (int i = 0; i < 100; i++) {
                publisher.publish("house/bare/" + i % 3, Integer.toString(i % 50));
            }
            soon().until(() -> store.count() == 100);
            assertEquals(0, collector.state().counts().contradicted());
        }
    }
}
