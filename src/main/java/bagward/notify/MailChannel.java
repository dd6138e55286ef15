package bagward.notify;

import bagward.alarm.Priority;
import bagward.message.ChannelName;
import bagward.message.Parcel;
import bagward.store.TrustedCertificates;
import jakarta.mail.AuthenticationFailedException;
import jakarta.mail.MessagingException;
import jakarta.mail.SendFailedException;
import jakarta.mail.Session;
import jakarta.mail.Transport;
import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.nio.charset.StandardCharsets;
import java.util.Date;
import java.util.Properties;
import java.util.UUID;
import org.eclipse.angus.mail.smtp.SMTPAddressFailedException;
import org.eclipse.angus.mail.smtp.SMTPSendFailedException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Sends mail over SMTP (RFC 5321), one connection a message. A message that comes twice, since the answer of the server was
 * lost, carries the same Message-ID, by which mail programs know it.
 */
final class MailChannel implements Channel {
    private static final Logger LOG = LoggerFactory.getLogger(MailChannel.class);
    private static final int FIRST_PERMANENT = 500;
    private static final String UTF_8 = StandardCharsets.UTF_8.name();

    private final ChannelName name;
    private final String to;
    private final MailSettings settings;
    private final Session session;

    MailChannel(ChannelName name, String to, MailSettings settings) {
        this.name = name;
        this.to = to;
        this.settings = settings;
        this.session = Session.getInstance(properties(settings));
    }

    private static Properties properties(MailSettings settings) {
        String patience = Long.toString(settings.patience().toMillis());
        Properties properties = new Properties();
        properties.setProperty("mail.smtp.host", settings.host());
        properties.setProperty("mail.smtp.port", Integer.toString(settings.port()));
        properties.setProperty("mail.smtp.connectiontimeout", patience);
        properties.setProperty("mail.smtp.timeout", patience);
        properties.setProperty("mail.smtp.writetimeout", patience);
        properties.setProperty("mail.smtp.quitwait", "false");
        properties.setProperty(
                "mail.smtp.auth", Boolean.toString(settings.credentials().isPresent()));
        properties.setProperty("mail.smtp.ssl.checkserveridentity", "true");
        switch (settings.security()) {
            case TLS -> properties.setProperty("mail.smtp.ssl.enable", "true");
            case STARTTLS -> {
                properties.setProperty("mail.smtp.starttls.enable", "true");
                properties.setProperty("mail.smtp.starttls.required", "true");
            }
            case NONE -> properties.setProperty("mail.smtp.starttls.enable", "false");
        }
        settings.caFile()
                .ifPresent(file -> properties.put(
                        "mail.smtp.ssl.socketFactory",
                        TrustedCertificates.read(file).sockets()));
        return properties;
    }

    @Override
    public ChannelName name() {
        return name;
    }

    @Override
    public String kind() {
        return "e-mail";
    }

    @Override
    public String address() {
        return to + " by " + settings.host();
    }

    @Override
    public void hand(Outgoing outgoing) {
        try {
            MimeMessage mail = mail(outgoing);
            send(mail);
        } catch (SendFailedException e) {
            throw refusal(e);
        } catch (MessagingException e) {
            throw DeliveryException.outOfReach(
                    "mail server " + settings.host() + ":" + settings.port() + " has not taken it: " + reason(e), e);
        }
    }

    private void send(MimeMessage mail) throws MessagingException {
        Transport transport = session.getTransport("smtp");
        try {
            connect(transport);
            transport.sendMessage(mail, mail.getAllRecipients());
        } finally {
            closeQuietly(transport);
        }
    }

    /** The server has answered already: what goes wrong from here on changes nothing. */
    private static void closeQuietly(Transport transport) {
        try {
            transport.close();
        } catch (MessagingException e) {
            LOG.debug("Closing: {}", e.getMessage());
        }
    }

    private void connect(Transport transport) throws MessagingException {
        try {
            if (settings.credentials().isPresent()) {
                transport.connect(
                        settings.credentials().get().user(),
                        settings.credentials().get().password());
            } else {
                transport.connect();
            }
        } catch (AuthenticationFailedException e) {
            throw DeliveryException.outOfReach(
                    "mail server " + settings.host() + " refuses user and password: check deliveries.mail", e);
        }
    }

    private MimeMessage mail(Outgoing outgoing) throws MessagingException {
        Parcel parcel = outgoing.parcel();
        MimeMessage mail = new Identified(session, messageId(parcel));
        mail.setFrom(new InternetAddress(settings.from(), true));
        mail.setRecipient(jakarta.mail.Message.RecipientType.TO, new InternetAddress(to, true));
        mail.setSubject(Wording.subject(outgoing), UTF_8);
        mail.setText(Wording.text(outgoing), UTF_8);
        mail.setSentDate(Date.from(parcel.at()));
        // RFC 3834: out-of-office programs do not answer to it
        mail.setHeader("Auto-Submitted", "auto-generated");
        if (parcel instanceof Parcel.Letter letter && letter.message().priority() == Priority.HIGH) {
            mail.setHeader("Importance", "high");
        }
        return mail;
    }

    /** The Message-ID of a parcel on this channel. */
    String messageId(Parcel parcel) {
        byte[] both = (parcel.id() + " " + name).getBytes(StandardCharsets.UTF_8);
        return "<" + UUID.nameUUIDFromBytes(both) + "@" + settings.from().replaceAll(".*@", "") + ">";
    }

    private DeliveryException refusal(SendFailedException e) {
        String says = "mail server " + settings.host() + " refuses mail to " + to + ": " + reason(e);
        return code(e) >= FIRST_PERMANENT ? DeliveryException.refused(says, e) : DeliveryException.outOfReach(says, e);
    }

    /** The reply code of the server (RFC 5321, 4.2), found beneath; 0 if it said none. */
    private static int code(MessagingException e) {
        for (Throwable at = e; at != null; at = at instanceof MessagingException m ? m.getNextException() : null) {
            if (at instanceof SMTPAddressFailedException address) {
                return address.getReturnCode();
            }
            if (at instanceof SMTPSendFailedException send && send.getReturnCode() > 0) {
                return send.getReturnCode();
            }
        }
        return 0;
    }

    private static String reason(MessagingException e) {
        Exception deepest = e;
        while (deepest instanceof MessagingException m && m.getNextException() != null) {
            deepest = m.getNextException();
        }
        String says = deepest.getMessage();
        return says == null || says.isBlank() ? deepest.getClass().getSimpleName() : says;
    }

    /**
     * Whether a text is one mail address.
     *
     * @throws AddressException if it is not
     */
    static void check(String address) throws AddressException {
        InternetAddress parsed = new InternetAddress(address, true);
        parsed.validate();
    }

    /** A mail that keeps the Message-ID it was given. */
    private static final class Identified extends MimeMessage {
        private final String id;

        Identified(Session session, String id) {
            super(session);
            this.id = id;
        }

        @Override
        protected void updateMessageID() throws MessagingException {
            setHeader("Message-ID", id);
        }
    }
}
