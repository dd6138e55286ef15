package bagward.collector;

import bagward.fault.ImpossibleValueException;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.apache.activemq.artemis.api.core.TransportConfiguration;
import org.apache.activemq.artemis.core.config.Configuration;
import org.apache.activemq.artemis.core.config.impl.ConfigurationImpl;
import org.apache.activemq.artemis.core.remoting.impl.netty.NettyAcceptorFactory;
import org.apache.activemq.artemis.core.server.ActiveMQServer;
import org.apache.activemq.artemis.core.server.JournalType;
import org.apache.activemq.artemis.core.server.embedded.EmbeddedActiveMQ;
import org.apache.activemq.artemis.core.settings.impl.AddressFullMessagePolicy;
import org.apache.activemq.artemis.core.settings.impl.AddressSettings;
import org.apache.activemq.artemis.core.settings.impl.PageFullMessagePolicy;

/**
 * An MQTT broker inside this program, for stations that have none. Messages of quality 1 and sessions are on disk before
 * they are acknowledged, and outlive a restart. No console, no management, no call to the outside.
 */
public final class EmbeddedBroker implements AutoCloseable {
    private static final int MOST_LOOKS = 20;
    private static final long LOOK_MILLIS = 50;

    /** Messages that wait for one topic or subscription are kept on disk up to here, then publishers are refused. */
    private static final long MOST_WAITING_BYTES = 256L << 20;

    /** Above this the messages of a topic go to page files in place of memory. */
    private static final long IN_MEMORY_BYTES = 4L << 20;

    private static final int JOURNAL_FILE_BYTES = 4 << 20;
    private static final int FULL_DISK_PERCENT = 95;

    private final BrokerSettings.Embedded settings;
    private final EmbeddedActiveMQ broker = new EmbeddedActiveMQ();

    private EmbeddedBroker(BrokerSettings.Embedded settings) {
        this.settings = settings;
    }

    /**
     * Starts a broker; it takes connections when this returns.
     *
     * @throws ImpossibleValueException if it would listen to the network without a password
     * @throws BrokerException if the port is taken or the folder cannot be used
     */
    public static EmbeddedBroker start(BrokerSettings.Embedded settings) {
        if (settings.credentials().isEmpty() && !BrokerSettings.Embedded.isLoopback(settings.host())) {
            throw new ImpossibleValueException("the broker may not listen on " + settings.host()
                    + " without a password: set user and password, or use host 127.0.0.1");
        }
        EmbeddedBroker started = new EmbeddedBroker(settings);
        started.open();
        return started;
    }

    /** Where clients on this machine reach it. */
    public BrokerLink link() {
        return settings.link();
    }

    private void open() {
        try {
            broker.setConfiguration(configuration());
            settings.credentials().ifPresent(c -> broker.setSecurityManager(new OneUser(c)));
            broker.start();
        } catch (Exception e) {
            close();
            throw failed(e);
        }
        if (!broker.getActiveMQServer().isActive()
                || !broker.getActiveMQServer().getRemotingService().isStarted()) {
            close();
            throw failed(null);
        }
    }

    private BrokerException failed(@org.jspecify.annotations.Nullable Exception cause) {
        return new BrokerException(
                "the embedded broker could not start on " + settings.host() + ":" + settings.port() + " with folder "
                        + settings.folder()
                        + ": check that nothing else uses the port and that the folder can be written",
                cause);
    }

    private Configuration configuration() throws Exception {
        String folder = settings.folder().toAbsolutePath().toString();
        Configuration configuration = new ConfigurationImpl()
                .setName("bagward")
                .setPersistenceEnabled(true)
                .setJournalType(JournalType.NIO)
                .setJournalDatasync(true)
                .setJournalDirectory(folder + "/journal")
                .setBindingsDirectory(folder + "/bindings")
                .setPagingDirectory(folder + "/paging")
                .setLargeMessagesDirectory(folder + "/large")
                .setJournalFileSize(JOURNAL_FILE_BYTES)
                .setJournalMinFiles(2)
                .setJournalPoolFiles(2)
                .setMaxDiskUsage(FULL_DISK_PERCENT)
                .setJMXManagementEnabled(false)
                .setMessageCounterEnabled(false)
                .setSecurityEnabled(settings.credentials().isPresent());
        configuration.addAcceptorConfiguration(acceptor());
        configuration.addAddressSetting("#", addresses());
        if (settings.credentials().isPresent()) {
            configuration.setSecurityRoles(Map.of("#", Set.of(OneUser.role())));
        }
        return configuration;
    }

    private TransportConfiguration acceptor() {
        Map<String, Object> network = Map.of("host", settings.host(), "port", settings.port(), "protocols", "MQTT");
        Map<String, Object> protocol = Map.of("defaultMaximumInFlightPublishMessages", BrokerSettings.Embedded.WINDOW);
        return new TransportConfiguration(NettyAcceptorFactory.class.getName(), network, "mqtt", protocol);
    }

    private static AddressSettings addresses() {
        return new AddressSettings()
                // the default gives up after ten deliveries, and the message is gone
                .setMaxDeliveryAttempts(-1)
                .setAddressFullMessagePolicy(AddressFullMessagePolicy.PAGE)
                .setMaxSizeBytes(IN_MEMORY_BYTES)
                .setPageSizeBytes(1 << 20)
                .setPageLimitBytes(MOST_WAITING_BYTES)
                .setPageFullMessagePolicy(PageFullMessagePolicy.FAIL);
    }

    /** Stops it; messages and sessions stay on disk. Clients that are just leaving are let go first. */
    @Override
    public void close() {
        try {
            awaitLeaving();
            broker.stop();
        } catch (Exception e) {
            throw new BrokerException("the embedded broker on port " + settings.port() + " could not stop cleanly", e);
        }
    }

    /** A client that says goodbye while the journal closes makes the broker print errors that mean nothing. */
    private void awaitLeaving() throws InterruptedException {
        ActiveMQServer server = broker.getActiveMQServer();
        for (int look = 0;
                look < MOST_LOOKS
                        && server.getConnectionCount() + server.getSessions().size() > 0;
                look++) {
            TimeUnit.MILLISECONDS.sleep(LOOK_MILLIS);
        }
    }
}
