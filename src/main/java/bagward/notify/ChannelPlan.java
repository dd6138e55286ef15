package bagward.notify;

import bagward.message.ChannelName;

/** A channel as it is configured. */
public sealed interface ChannelPlan {
    /** Its name. */
    ChannelName name();

    /** Whether it gets every line of the alarm journal. */
    boolean follows();

    /**
     * A mail address.
     *
     * @param name its name
     * @param to the address
     * @param server the server that takes our mail
     */
    record Mail(ChannelName name, String to, MailSettings server) implements ChannelPlan {
        @Override
        public boolean follows() {
            return false;
        }
    }

    /**
     * A program that takes messages over HTTP.
     *
     * @param name its name
     * @param settings where it is
     * @param follows whether it gets every line of the alarm journal
     */
    record Webhook(ChannelName name, WebhookSettings settings, boolean follows) implements ChannelPlan {}

    /**
     * Topics of the station's broker.
     *
     * @param name its name
     * @param follows whether it gets every line of the alarm journal
     */
    record Mqtt(ChannelName name, boolean follows) implements ChannelPlan {}
}
