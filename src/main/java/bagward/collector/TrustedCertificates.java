package bagward.collector;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import java.util.Collection;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocketFactory;
import javax.net.ssl.TrustManagerFactory;

/** Trust in the certificates of one PEM file and in no others. */
final class TrustedCertificates {
    private TrustedCertificates() {}

    /** @throws BrokerException if the file cannot be read or holds no certificate */
    static SSLSocketFactory socketFactory(Path pemFile) {
        try (InputStream pem = Files.newInputStream(pemFile)) {
            Collection<? extends Certificate> certificates =
                    CertificateFactory.getInstance("X.509").generateCertificates(pem);
            if (certificates.isEmpty()) {
                throw new BrokerException(
                        pemFile + " holds no certificate: it must be a PEM file with at least one", null);
            }
            KeyStore trusted = KeyStore.getInstance(KeyStore.getDefaultType());
            trusted.load(null, null);
            int number = 0;
            for (Certificate certificate : certificates) {
                trusted.setCertificateEntry("ca" + number++, certificate);
            }
            TrustManagerFactory managers = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
            managers.init(trusted);
            SSLContext context = SSLContext.getInstance("TLS");
            context.init(null, managers.getTrustManagers(), null);
            return context.getSocketFactory();
        } catch (IOException | GeneralSecurityException e) {
            throw new BrokerException("the certificates in " + pemFile + " cannot be read: it must be a PEM file", e);
        }
    }
}
