package bagward.store;

import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocketFactory;
import javax.net.ssl.TrustManagerFactory;
import javax.net.ssl.X509TrustManager;

/**
 * Trust in the certificates of one PEM file and in no others.
 *
 * @param sockets makes sockets that trust them
 * @param manager knows whom to trust
 */
public record TrustedCertificates(SSLSocketFactory sockets, X509TrustManager manager) {
    /**
     * Reads the file.
     *
     * @throws RefusedInputException if it cannot be read or holds no certificate
     */
    public static TrustedCertificates read(Path pemFile) {
        try (InputStream pem = Files.newInputStream(pemFile)) {
            Collection<? extends Certificate> certificates =
                    CertificateFactory.getInstance("X.509").generateCertificates(pem);
            if (certificates.isEmpty()) {
                throw refused(pemFile);
            }
            X509TrustManager manager = trusting(certificates);
            return new TrustedCertificates(context(manager).getSocketFactory(), manager);
        } catch (IOException | GeneralSecurityException e) {
            RefusedInputException refused = refused(pemFile);
            refused.addSuppressed(e);
            throw refused;
        }
    }

    /** What clients speak TLS with that trust these certificates. */
    public SSLContext context() {
        try {
            return context(manager);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has TLS", e);
        }
    }

    private static SSLContext context(X509TrustManager manager) throws GeneralSecurityException {
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, new X509TrustManager[] {manager}, null);
        return context;
    }

    private static X509TrustManager trusting(Collection<? extends Certificate> certificates)
            throws IOException, GeneralSecurityException {
        KeyStore trusted = KeyStore.getInstance(KeyStore.getDefaultType());
        trusted.load(null, null);
        int number = 0;
        for (Certificate certificate : certificates) {
            trusted.setCertificateEntry("ca" + number++, certificate);
        }
        TrustManagerFactory managers = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        managers.init(trusted);
        return Arrays.stream(managers.getTrustManagers())
                .filter(X509TrustManager.class::isInstance)
                .map(X509TrustManager.class::cast)
                .findFirst()
                .orElseThrow(() -> new GeneralSecurityException("this Java has no X.509 trust manager"));
    }

    private static RefusedInputException refused(Path pemFile) {
        return new RefusedInputException(List.of(Fault.of(
                pemFile.toString(), "", "must be a PEM file that can be read, with at least one certificate")));
    }
}
