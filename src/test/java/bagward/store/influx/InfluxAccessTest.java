package bagward.store.influx;

import static bagward.store.Samples.humidity;
import static bagward.store.influx.InfluxStores.all;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.fault.RefusedInputException;
import bagward.store.Samples;
import bagward.store.StoreException;
import bagward.store.TestAuthority;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real influxd that asks for users, or speaks TLS. */
class InfluxAccessTest {
    private static final String ODD = "p:ä'\" =,€";

    private final Path folder;

    InfluxAccessTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @Test
    void a_user_with_the_right_password_and_grant_is_served_and_others_are_told_why_not() throws IOException {
        try (InfluxServer server = InfluxServer.startWithUsers(folder.resolve("users"))) {
            InfluxRequests.to(server).ask("", "CREATE USER root WITH PASSWORD 'r' WITH ALL PRIVILEGES");
            InfluxRequests root = InfluxRequests.to(server).as("root", "r");
            root.ask("", "CREATE DATABASE bags");
            root.ask("", "CREATE USER house WITH PASSWORD '" + ODD.replace("'", "\\'") + "'");
            InfluxSettings settings = InfluxStores.settings(server.url(), "bags");
            InfluxSettings house = InfluxStores.as(settings, new InfluxLogin.User("house", ODD));

            assertRefused(settings, "it does not let in nobody in particular: correct user and password");
            assertRefused(
                    InfluxStores.as(settings, new InfluxLogin.User("house", "wrong")),
                    "it does not let in user 'house': correct user and password");
            assertRefused(house, "user 'house' may not do that: grant reading and writing on database 'bags'");

            root.ask("", "GRANT ALL ON bags TO house");
            assertStores(house);
        }
    }

    @Test
    void a_user_who_may_create_the_database_gets_it_and_another_is_told_that_it_is_missing() throws IOException {
        try (InfluxServer server = InfluxServer.startWithUsers(folder.resolve("users"))) {
            InfluxRequests.to(server).ask("", "CREATE USER root WITH PASSWORD 'r' WITH ALL PRIVILEGES");
            InfluxRequests.to(server).as("root", "r").ask("", "CREATE USER house WITH PASSWORD 'h'");
            InfluxSettings settings = InfluxStores.settings(server.url(), "new one");
            assertStores(InfluxStores.as(settings, new InfluxLogin.User("root", "r")));
            assertRefused(
                    InfluxStores.as(
                            InfluxStores.settings(server.url(), "not there"), new InfluxLogin.User("house", "h")),
                    "grant reading and writing on database 'not there'");
        }
    }

    @Test
    void a_server_with_tls_is_trusted_by_the_certificate_of_its_authority_and_not_without()
            throws IOException, GeneralSecurityException {
        TestAuthority authority = TestAuthority.make(folder.resolve("authority"));
        try (InfluxServer server =
                InfluxServer.startWithTls(folder.resolve("tls"), authority.certificate(), authority.key())) {
            InfluxSettings settings = InfluxStores.settings(server.url(), "bags");
            assertStores(InfluxStores.trusting(settings, authority.authorityFile()));
            assertRefused(settings, "no trusted TLS connection came about: give the certificate of its authority");
            String byName = server.url().replace("127.0.0.1", "localhost");
            assertRefused(
                    InfluxStores.trusting(InfluxStores.settings(byName, "bags"), authority.authorityFile()),
                    "and the name in its certificate as url");
            assertRefused(
                    InfluxStores.settings(server.url().replace("https", "http"), "bags"),
                    "it speaks TLS: write the url with https");
        }
    }

    @Test
    void a_file_without_a_certificate_is_refused_before_anything_is_asked() throws IOException {
        Path notes = Files.writeString(folder.resolve("notes.pem"), "no certificate here");
        InfluxSettings settings = InfluxStores.trusting(InfluxStores.settings("https://127.0.0.1:1", "bags"), notes);
        RefusedInputException refused = assertThrows(RefusedInputException.class, () -> InfluxStores.open(settings));
        assertTrue(refused.getMessage().contains("notes.pem: must be a PEM file"), refused.getMessage());
    }

    @Test
    void no_password_or_token_is_ever_shown() {
        InfluxSettings settings = InfluxStores.settings("http://127.0.0.1:1", "bags");
        for (InfluxLogin login : List.of(new InfluxLogin.User("house", ODD), new InfluxLogin.Token(ODD))) {
            InfluxSettings with = InfluxStores.as(settings, login);
            assertTrue(!with.toString().contains(ODD), with.toString());
        }
    }

    private static void assertStores(InfluxSettings settings) {
        try (InfluxReadings store = InfluxStores.open(settings)) {
            store.append(List.of(humidity(1, 51)));
            assertEquals(List.of(humidity(1, 51)), all(store, Samples.AIR_HUMIDITY));
        }
    }

    private static void assertRefused(InfluxSettings settings, String why) {
        try (InfluxReadings store = InfluxStores.open(settings)) {
            StoreException append = assertThrows(StoreException.class, () -> store.append(List.of(humidity(1, 51))));
            assertTrue(append.getMessage().contains(why), append.getMessage());
            assertTrue(append.getMessage().startsWith("InfluxDB at " + settings.url() + ": "), append.getMessage());
            assertThrows(StoreException.class, () -> all(store, Samples.AIR_HUMIDITY));
        }
    }
}
