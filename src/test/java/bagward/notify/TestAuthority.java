package bagward.notify;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.ArrayList;
import java.util.List;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;

/** An authority made by the test with the keytool of Java, and a server on 127.0.0.1 that it vouches for. */
final class TestAuthority {
    private static final String PASSWORD = "changeit";

    private final Path folder;

    TestAuthority(Path folder) throws IOException {
        this.folder = folder;
        key("ca", "CN=Test authority", "bc:c");
        keytool("-exportcert", "-rfc", "-alias", "ca", "-keystore", "ca.p12", "-file", "ca.pem");
        key("server", "CN=localhost", "san=ip:127.0.0.1,dns:localhost");
        keytool("-certreq", "-alias", "server", "-keystore", "server.p12", "-file", "server.csr");
        keytool(
                "-gencert",
                "-rfc",
                "-alias",
                "ca",
                "-keystore",
                "ca.p12",
                "-infile",
                "server.csr",
                "-outfile",
                "server.pem",
                "-ext",
                "san=ip:127.0.0.1,dns:localhost");
        keytool("-importcert", "-noprompt", "-alias", "ca", "-keystore", "server.p12", "-file", "ca.pem");
        keytool("-importcert", "-noprompt", "-alias", "server", "-keystore", "server.p12", "-file", "server.pem");
    }

    private void key(String alias, String name, String extension) throws IOException {
        keytool(
                "-genkeypair",
                "-alias",
                alias,
                "-keyalg",
                "EC",
                "-groupname",
                "secp256r1",
                "-dname",
                name,
                "-ext",
                extension,
                "-validity",
                "2",
                "-storetype",
                "PKCS12",
                "-keystore",
                alias + ".p12");
    }

    private void keytool(String... arguments) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "keytool").toString());
        command.addAll(List.of(arguments));
        command.addAll(List.of("-storepass", PASSWORD));
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        try {
            if (process.waitFor() != 0) {
                throw new IllegalStateException(command + ": " + said);
            }
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The certificate of the authority. */
    Path caFile() {
        return folder.resolve("ca.pem");
    }

    /** What the server speaks TLS with. */
    SSLContext server() throws IOException, GeneralSecurityException {
        KeyStore store = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(folder.resolve("server.p12"))) {
            store.load(in, PASSWORD.toCharArray());
        }
        KeyManagerFactory keys = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
        keys.init(store, PASSWORD.toCharArray());
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(keys.getKeyManagers(), null, null);
        return context;
    }
}
