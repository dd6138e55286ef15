package bagward.notify;

import bagward.collector.BrokerSettings;
import bagward.document.Secrets;
import bagward.document.Section;
import bagward.fault.ImpossibleValueException;
import bagward.message.ChannelName;
import jakarta.mail.internet.AddressException;
import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the list {@code deliveries.channels}. Keys of an entry:
 *
 * <ul>
 *   <li>{@code name}; {@code kind}: mail, webhook or mqtt
 *   <li>{@code to}: the address (mail)
 *   <li>{@code url}, {@code secret-from} or {@code secret-file}, {@code ca-file} (webhook)
 *   <li>{@code follow}: whether every line of the alarm journal is sent too (webhook, mqtt), false if left out
 * </ul>
 */
final class ChannelReader {
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final Map<String, Kind> KINDS =
            Map.of("mail", Kind.MAIL, "webhook", Kind.WEBHOOK, "mqtt", Kind.MQTT);

    private final Secrets secrets;
    private final Path folder;
    private final Optional<MailSettings> mail;
    private final boolean hasMail;
    private final boolean hasMqtt;
    private final Set<ChannelName> names = new HashSet<>();

    private enum Kind {
        MAIL,
        WEBHOOK,
        MQTT
    }

    ChannelReader(Secrets secrets, Path folder, Optional<MailSettings> mail, boolean hasMail, boolean hasMqtt) {
        this.secrets = secrets;
        this.folder = folder;
        this.mail = mail;
        this.hasMail = hasMail;
        this.hasMqtt = hasMqtt;
    }

    List<ChannelPlan> read(List<Section> entries) {
        List<ChannelPlan> plans = new ArrayList<>();
        for (Section entry : entries) {
            channel(entry).ifPresent(plans::add);
        }
        return plans;
    }

    /** Names of all entries that were read, also of those in which something else was refused. */
    Set<ChannelName> names() {
        return Set.copyOf(names);
    }

    private Optional<? extends ChannelPlan> channel(Section entry) {
        Optional<ChannelName> name = entry.value("name", ChannelName::new);
        if (name.isPresent() && !names.add(name.get())) {
            entry.refuse("name", "must be given to one channel only");
        }
        Optional<Kind> kind = entry.choice("kind", KINDS);
        if (kind.isEmpty()) {
            return Optional.empty();
        }
        return switch (kind.get()) {
            case MAIL -> mail(entry, name);
            case WEBHOOK -> webhook(entry, name);
            case MQTT -> mqtt(entry, name);
        };
    }

    private Optional<ChannelPlan.Mail> mail(Section entry, Optional<ChannelName> name) {
        Optional<String> to = entry.value("to", ChannelReader::mailAddress);
        if (!hasMail) {
            entry.refuse("kind", "needs a mail server", "Add deliveries.mail.");
        }
        // A refused server is a fault already; the entry itself may be sound.
        return mail.isEmpty()
                ? entry.make(() -> true).flatMap(sound -> Optional.empty())
                : entry.make(() -> new ChannelPlan.Mail(name.orElseThrow(), to.orElseThrow(), mail.get()));
    }

    private Optional<ChannelPlan.Webhook> webhook(Section entry, Optional<ChannelName> name) {
        Optional<URI> url = entry.value("url", text -> DeliveryReader.web(text, true));
        if (url.isPresent()
                && url.get().getScheme().equals("http")
                && !BrokerSettings.Embedded.isLoopback(url.get().getHost())) {
            entry.refuse("url", "must be https unless it is on this machine");
        }
        if (!secrets.names(entry, "secret")) {
            entry.text("secret-from");
        }
        Optional<WebhookSecret> secret = secret(entry);
        Optional<Path> caFile = entry.findText("ca-file").map(folder::resolve);
        boolean follows = entry.flag("follow", false);
        return entry.make(() -> new ChannelPlan.Webhook(
                name.orElseThrow(),
                new WebhookSettings(url.orElseThrow(), secret.orElseThrow(), caFile, PATIENCE),
                follows));
    }

    private Optional<WebhookSecret> secret(Section entry) {
        try {
            return secrets.find(entry, "secret").map(WebhookSecret::parse);
        } catch (ImpossibleValueException e) {
            entry.refuse("secret-from", e.getMessage());
            return Optional.empty();
        }
    }

    private Optional<ChannelPlan.Mqtt> mqtt(Section entry, Optional<ChannelName> name) {
        if (!hasMqtt) {
            entry.refuse("kind", "needs topics", "Add deliveries.mqtt.");
        }
        boolean follows = entry.flag("follow", false);
        return entry.make(() -> new ChannelPlan.Mqtt(name.orElseThrow(), follows));
    }

    /** A mail address as a configured value. */
    static String mailAddress(String text) {
        try {
            MailChannel.check(text);
            return text;
        } catch (AddressException e) {
            throw new ImpossibleValueException("must be a mail address such as ruth@example.org");
        }
    }
}
