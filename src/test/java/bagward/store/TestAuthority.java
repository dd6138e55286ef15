package bagward.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.Key;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;

/** An authority for tests that signs one certificate for 127.0.0.1; made with the keytool of this Java. */
public final class TestAuthority {
    private static final String PASSWORD = "not-a-secret";

    private final Path folder;

    private TestAuthority(Path folder) {
        this.folder = folder;
    }

    /** Makes one in a folder. */
    public static TestAuthority make(Path folder) throws IOException, GeneralSecurityException {
        TestAuthority authority = new TestAuthority(Files.createDirectories(folder));
        authority.keytool("-genkeypair -alias ca -keyalg EC -dname CN=TestAuthority -ext bc:c");
        authority.keytool("-genkeypair -alias server -keyalg EC -dname CN=server");
        authority.keytool("-certreq -alias server -file " + folder.resolve("server.csr"));
        authority.keytool("-gencert -alias ca -ext san=ip:127.0.0.1 -rfc -infile " + folder.resolve("server.csr")
                + " -outfile " + folder.resolve("server.crt"));
        authority.exportKeys();
        return authority;
    }

    /** The certificate of the authority, PEM. */
    public Path authorityFile() {
        return folder.resolve("ca.pem");
    }

    /** The certificate of the server, PEM. */
    public Path certificate() {
        return folder.resolve("server.crt");
    }

    /** The key of the server, PEM. */
    public Path key() {
        return folder.resolve("server.key");
    }

    /** What a server in this process speaks TLS with. */
    public SSLContext server() throws IOException, GeneralSecurityException {
        KeyStore own = KeyStore.getInstance("PKCS12");
        own.load(null, null);
        try (InputStream chain = Files.newInputStream(certificate())) {
            Certificate[] certificates = CertificateFactory.getInstance("X.509")
                    .generateCertificates(chain)
                    .toArray(Certificate[]::new);
            own.setKeyEntry("server", serverKey(), PASSWORD.toCharArray(), certificates);
        }
        KeyManagerFactory managers = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
        managers.init(own, PASSWORD.toCharArray());
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(managers.getKeyManagers(), null, null);
        return context;
    }

    private Key serverKey() throws IOException, GeneralSecurityException {
        return keys().getKey("server", PASSWORD.toCharArray());
    }

    private KeyStore keys() throws IOException, GeneralSecurityException {
        KeyStore keys = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(folder.resolve("keys.p12"))) {
            keys.load(in, PASSWORD.toCharArray());
        }
        return keys;
    }

    private void exportKeys() throws IOException, GeneralSecurityException {
        Certificate authority = keys().getCertificate("ca");
        Key key = serverKey();
        Files.writeString(authorityFile(), pem("CERTIFICATE", authority.getEncoded()));
        Files.writeString(key(), pem("PRIVATE KEY", key.getEncoded()));
    }

    private static String pem(String what, byte[] bytes) {
        String text = Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(bytes);
        return "-----BEGIN " + what + "-----\n" + text + "\n-----END " + what + "-----\n";
    }

    private void keytool(String arguments) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "keytool").toString());
        command.addAll(List.of(arguments.split(" ")));
        command.addAll(List.of("-keystore", folder.resolve("keys.p12").toString()));
        command.addAll(List.of("-storetype", "PKCS12", "-storepass", PASSWORD));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(
                        folder.resolve("keytool.log").toFile()))
                .start();
        try {
            if (process.waitFor() != 0) {
                throw new IOException("keytool failed: " + Files.readString(folder.resolve("keytool.log")));
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(e);
        }
    }
}
