package bagward.collector;

import bagward.fault.RefusedInputException;
import bagward.store.TrustedCertificates;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.net.ssl.SSLSocketFactory;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;

/**
 * How a client reaches a broker.
 *
 * @param url {@code tcp://host:port} or {@code ssl://host:port}
 * @param credentials user and password, if the broker wants them
 * @param caFile certificates (PEM) that are trusted in place of those of Java, if any
 */
public record BrokerLink(String url, Optional<Credentials> credentials, Optional<Path> caFile) {
    private static final int CONNECT_SECONDS = 10;
    private static final int KEEP_ALIVE_SECONDS = 30;
    private static final Map<String, String> SCHEMES =
            Map.of("tcp", "tcp", "mqtt", "tcp", "ssl", "ssl", "mqtts", "ssl");

    /**
     * The same address as the client library writes it; empty if it is not tcp, mqtt, ssl or mqtts with a host. Without
     * a port it is 1883, or 8883 with TLS.
     */
    public static Optional<String> normalised(String address) {
        try {
            URI uri = new URI(address.strip());
            String scheme = uri.getScheme() == null
                    ? ""
                    : SCHEMES.getOrDefault(uri.getScheme().toLowerCase(Locale.ROOT), "");
            boolean plain = uri.getHost() != null
                    && uri.getUserInfo() == null
                    && (uri.getPath() == null
                            || uri.getPath().isEmpty()
                            || uri.getPath().equals("/"));
            if (scheme.isEmpty() || !plain) {
                return Optional.empty();
            }
            int usual = scheme.equals("ssl") ? 8883 : 1883;
            return Optional.of(scheme + "://" + uri.getHost() + ":" + (uri.getPort() < 0 ? usual : uri.getPort()));
        } catch (URISyntaxException e) {
            return Optional.empty();
        }
    }

    /**
     * A client that is not connected yet and keeps nothing on disk.
     *
     * @throws MqttException if the library refuses the address
     */
    public MqttAsyncClient client(String clientId) throws MqttException {
        return new MqttAsyncClient(url, clientId, new MemoryPersistence());
    }

    /**
     * What a client says when it connects. The library's own reconnecting stays off: it can stop for good.
     *
     * @param durable whether the broker keeps subscriptions and unacknowledged messages for this client
     * @throws BrokerException if the file of certificates cannot be used
     */
    public MqttConnectOptions connectOptions(boolean durable) {
        MqttConnectOptions options = new MqttConnectOptions();
        options.setCleanSession(!durable);
        options.setAutomaticReconnect(false);
        options.setConnectionTimeout(CONNECT_SECONDS);
        options.setKeepAliveInterval(KEEP_ALIVE_SECONDS);
        credentials.ifPresent(c -> {
            options.setUserName(c.user());
            options.setPassword(c.password().toCharArray());
        });
        caFile.ifPresent(file -> options.setSocketFactory(sockets(file)));
        return options;
    }

    private static SSLSocketFactory sockets(Path file) {
        try {
            return TrustedCertificates.read(file).sockets();
        } catch (RefusedInputException e) {
            throw new BrokerException("ca-file " + e.getMessage(), e);
        }
    }
}
