package bagward.notify;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes channels of what is configured. */
final class Channels {
    private Channels() {}

    /**
     * All of them.
     *
     * @param settings what is configured
     * @param line the connection to the broker, if one is configured
     */
    static List<Channel> of(DeliverySettings settings, Optional<MqttLine> line) {
        List<Channel> channels = new ArrayList<>();
        for (ChannelPlan plan : settings.channels()) {
            if (plan instanceof ChannelPlan.Mail mail) {
                channels.add(new MailChannel(mail.name(), mail.to(), mail.server()));
            } else if (plan instanceof ChannelPlan.Webhook hook) {
                channels.add(new WebhookChannel(hook.name(), hook.settings(), Clock.systemUTC()));
            } else if (plan instanceof ChannelPlan.Mqtt) {
                channels.add(new MqttChannel(plan.name(), line.orElseThrow()));
            }
        }
        return channels;
    }
}
