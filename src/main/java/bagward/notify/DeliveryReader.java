package bagward.notify;

import bagward.collector.BrokerSettings;
import bagward.collector.Credentials;
import bagward.document.Secrets;
import bagward.document.Section;
import bagward.fault.ImpossibleValueException;
import bagward.message.MessagePlan;
import bagward.message.PeopleReader;
import bagward.message.Person;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the mapping {@code deliveries} and the list {@code people} of the configuration. Keys of {@code deliveries}:
 *
 * <ul>
 *   <li>{@code public-address}: address under which people reach the pages, for links in messages
 *   <li>{@code morning}, {@code evening}, {@code remind-every}, {@code second-after}: see {@link PeopleReader}
 *   <li>{@code mail}: the server, see {@link #mail}
 *   <li>{@code channels}: see {@link ChannelReader}
 *   <li>{@code mqtt}: {@code topic}, "bagward" if left out, and {@code every}, time between signs of life
 *   <li>{@code ping}: {@code url-from} or {@code url-file}, a secret since such addresses are, and {@code every}
 * </ul>
 */
public final class DeliveryReader {
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final Map<String, MailSettings.Security> SECURITIES = Map.of(
            "starttls",
            MailSettings.Security.STARTTLS,
            "tls",
            MailSettings.Security.TLS,
            "none",
            MailSettings.Security.NONE);

    private final Secrets secrets;
    private final Path folder;

    /**
     * A reader.
     *
     * @param secrets where passwords come from
     * @param folder what relative paths start from
     */
    public DeliveryReader(Secrets secrets, Path folder) {
        this.secrets = secrets;
        this.folder = folder;
    }

    /**
     * Reads both.
     *
     * @param top the top of the configuration
     * @return empty if anything was refused
     */
    public Optional<DeliverySettings> read(Section top) {
        Optional<Section> deliveries = top.findSection("deliveries");
        if (deliveries.isEmpty()) {
            PeopleReader.people(top.sections("people", 0), Set.of());
            return Optional.of(DeliverySettings.NONE);
        }
        return read(top, deliveries.get());
    }

    private Optional<DeliverySettings> read(Section top, Section section) {
        Optional<URI> pages = section.findValue("public-address", text -> web(text, false));
        Optional<MailSettings> mail = section.findSection("mail").flatMap(this::mail);
        Optional<DeliverySettings.Mqtt> mqtt = section.findSection("mqtt").flatMap(DeliveryReader::mqtt);
        ChannelReader reader = new ChannelReader(secrets, folder, mail, section.has("mail"), section.has("mqtt"));
        List<ChannelPlan> channels = reader.read(section.sections("channels", 0));
        Optional<DeliverySettings.Ping> ping = section.findSection("ping").flatMap(this::ping);
        List<Person> people = PeopleReader.people(top.sections("people", 0), reader.names());
        MessagePlan plan = PeopleReader.plan(section, people);
        return section.make(() -> new DeliverySettings(plan, channels, pages, mqtt, ping));
    }

    /**
     * The mail server: {@code host}, {@code port}, {@code security} (starttls, tls, none), {@code from}, {@code user} and
     * {@code password-from} or {@code password-file}, {@code ca-file}.
     */
    private Optional<MailSettings> mail(Section section) {
        String host = section.text("host");
        MailSettings.Security security = section.choice("security", SECURITIES, MailSettings.Security.STARTTLS);
        // RFC 6409 and RFC 8314
        int port = section.whole("port", 1, 65_535, "", security == MailSettings.Security.TLS ? 465 : 587);
        if (security == MailSettings.Security.NONE && !BrokerSettings.Embedded.isLoopback(host)) {
            section.refuse(
                    "security",
                    "must be starttls or tls unless the server is on this machine",
                    "Passwords and alarms would cross the network in clear.");
        }
        String from = section.value("from", ChannelReader::mailAddress).orElse("");
        Optional<Credentials> credentials =
                secrets.user(section).map(user -> new Credentials(user.user(), user.password()));
        Optional<Path> caFile = section.findText("ca-file").map(folder::resolve);
        return section.make(() -> new MailSettings(host, port, security, credentials, from, caFile, PATIENCE));
    }

    private static Optional<DeliverySettings.Mqtt> mqtt(Section section) {
        String topic = section.findValue("topic", DeliveryReader::topic).orElse("bagward");
        Duration every =
                section.duration("every", Duration.ofSeconds(5), Duration.ofMinutes(10), Duration.ofSeconds(30));
        return section.make(() -> new DeliverySettings.Mqtt(topic, every));
    }

    private Optional<DeliverySettings.Ping> ping(Section section) {
        Optional<URI> url = Optional.empty();
        if (!secrets.names(section, "url")) {
            section.text("url-from");
        }
        try {
            url = secrets.find(section, "url").map(text -> web(text, true));
        } catch (ImpossibleValueException e) {
            section.refuse("url-from", e.getMessage());
        }
        Duration every = section.duration("every", Duration.ofSeconds(30), Duration.ofDays(1), Duration.ofMinutes(5));
        Optional<URI> found = url;
        return section.make(() -> new DeliverySettings.Ping(found.orElseThrow(), every));
    }

    private static String topic(String text) {
        if (!text.matches("[A-Za-z0-9_-]+(/[A-Za-z0-9_-]+)*")) {
            throw new ImpossibleValueException("must be letters, digits, '-' and '_', in levels parted by '/'");
        }
        return text;
    }

    /** An address of the web, with a path only where it is wanted. */
    static URI web(String text, boolean path) {
        try {
            URI uri = new URI(text.strip());
            String scheme = String.valueOf(uri.getScheme()).toLowerCase(Locale.ROOT);
            boolean plain = uri.getHost() != null && uri.getUserInfo() == null && uri.getFragment() == null;
            boolean bare = uri.getRawQuery() == null
                    && (uri.getPath().isEmpty() || uri.getPath().equals("/"));
            if ((scheme.equals("http") || scheme.equals("https")) && plain && (path || bare)) {
                return uri;
            }
        } catch (URISyntaxException e) {
            throw notWeb(path);
        }
        throw notWeb(path);
    }

    private static ImpossibleValueException notWeb(boolean path) {
        return new ImpossibleValueException(
                "must be an address such as https://bagward.example" + (path ? "/path" : ":8420, without a path"));
    }
}
