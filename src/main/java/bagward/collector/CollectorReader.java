package bagward.collector;

import bagward.collector.payload.SensorSource;
import bagward.collector.payload.TopicFilter;
import bagward.document.Secrets;
import bagward.document.Section;
import bagward.fault.ImpossibleValueException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads from the configuration how messages are collected. Keys of the mapping {@code broker}, with no {@code url} for
 * the broker inside this program:
 *
 * <ul>
 *   <li>{@code host}: address it listens on; 127.0.0.1 (this machine only) if left out
 *   <li>{@code port}: TCP port, 1883 if left out
 *   <li>{@code user}, {@code password-from} (an environment variable) or {@code password-file}: what clients must know;
 *       required where host is not this machine only
 * </ul>
 *
 * <p>and with a broker of its own:
 *
 * <ul>
 *   <li>{@code url}: mqtt://host:1883, or mqtts://host:8883 with TLS
 *   <li>{@code user}, {@code password-from}: as above, if it wants them
 *   <li>{@code ca-file}: certificates (PEM) to trust in place of those of Java
 *   <li>{@code window}: messages it sends before it waits for acknowledgements, 20 if left out (as mosquitto)
 * </ul>
 *
 * <p>Keys of the mapping {@code collector}, all with usual values: {@code client-id}, {@code batch} (messages in a
 * commit), {@code future-tolerance}, {@code past-tolerance}, {@code hear-all} (list topics that nobody configured), {@code
 * ask-rebirth} (ask Sparkplug B edge nodes for births that were missed).
 *
 * <p>How a sensor is heard stands in its entry of {@code sensors}, see {@link SourceReader}.
 */
public final class CollectorReader {
    private static final Duration LONGEST_TOLERANCE = Duration.ofHours(1);
    private static final Duration LONGEST_PAST = Duration.ofDays(36_500);
    private static final int MOST_IN_FLIGHT = 65_535;

    private CollectorReader() {}

    /**
     * Which broker is used.
     *
     * @param broker the mapping {@code broker}
     * @param folder where the broker inside this program keeps its files
     * @param base what relative paths start from
     * @param secrets passwords
     * @return empty if anything was refused
     */
    public static Optional<BrokerSettings> broker(Section broker, Path folder, Path base, Secrets secrets) {
        Optional<Credentials> credentials = secrets.user(broker).map(u -> new Credentials(u.user(), u.password()));
        return broker.has("url") ? external(broker, base, credentials) : embedded(broker, folder, credentials);
    }

    /**
     * How messages are collected.
     *
     * @param collector the mapping {@code collector}, if there is one
     * @return empty if anything was refused
     */
    public static Optional<CollectorSettings> settings(Optional<Section> collector) {
        CollectorSettings usual = CollectorSettings.USUAL;
        if (collector.isEmpty()) {
            return Optional.of(usual);
        }
        Section section = collector.get();
        String clientId =
                section.findValue("client-id", CollectorReader::clientId).orElse(usual.clientId());
        int batch = section.whole("batch", 1, 10_000, "messages", usual.batchMost());
        Duration tolerance =
                section.duration("future-tolerance", Duration.ZERO, LONGEST_TOLERANCE, usual.futureTolerance());
        Duration past = section.duration("past-tolerance", Duration.ofDays(1), LONGEST_PAST, usual.pastTolerance());
        boolean hearAll = section.flag("hear-all", usual.hearAll());
        boolean askRebirth = section.flag("ask-rebirth", usual.askRebirth());
        return section.make(() -> new CollectorSettings(
                clientId, batch, usual.batchLinger(), tolerance, past, hearAll, List.of(), askRebirth));
    }

    /**
     * Where the messages of sensors come from. It is the last reader of these entries and ends them.
     *
     * @param sensors entries of the list {@code sensors}
     * @return the sources of all entries in which nothing was refused
     */
    public static List<SensorSource> sources(List<Section> sensors) {
        List<SensorSource> sources = new ArrayList<>();
        for (Section sensor : sensors) {
            sources.addAll(SourceReader.read(sensor));
        }
        return sources;
    }

    private static Optional<BrokerSettings> embedded(Section broker, Path folder, Optional<Credentials> credentials) {
        String host = broker.text("host", "127.0.0.1");
        int port = broker.whole("port", 1, 65_535, "", 1883);
        if (!broker.has("user") && !BrokerSettings.Embedded.isLoopback(host)) {
            broker.refuse(
                    "host",
                    "must be this machine only (127.0.0.1) unless clients need a password",
                    "Set user and password-from.");
        }
        return broker.make(() -> new BrokerSettings.Embedded(folder, host, port, credentials));
    }

    private static Optional<BrokerSettings> external(Section broker, Path base, Optional<Credentials> credentials) {
        Optional<String> url = broker.value("url", CollectorReader::url);
        Optional<Path> caFile = broker.findText("ca-file").map(base::resolve);
        if (caFile.isPresent() && url.isPresent() && !url.get().startsWith("ssl:")) {
            broker.refuse("ca-file", "is of use with TLS only: write the url with mqtts://");
        }
        int window = broker.whole("window", 1, MOST_IN_FLIGHT, "messages", 20);
        return broker.make(
                () -> new BrokerSettings.External(new BrokerLink(url.orElseThrow(), credentials, caFile), window));
    }

    private static String url(String text) {
        return BrokerLink.normalised(text)
                .orElseThrow(
                        () -> new ImpossibleValueException(
                                "must be mqtt://host:port, or mqtts://host:port with TLS; user and password have keys of their own"));
    }

    private static String clientId(String text) {
        if (text.length() > 23 || !text.matches("[A-Za-z0-9-]+")) {
            throw new ImpossibleValueException("must be 1 to 23 letters, digits and '-': more a broker may refuse");
        }
        return text;
    }

    /** A topic filter as a configured value. */
    static Optional<TopicFilter> topic(Section section) {
        return section.findValue("topic", TopicFilter::new);
    }
}
