package bagward.store.influx;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.document.Inspection;
import bagward.document.Secrets;
import bagward.document.Section;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InfluxSettingsReaderTest {
    private static final Path FOLDER = Path.of("/srv/station");

    private final Inspection inspection = new Inspection();

    private Optional<InfluxSettings> read(String text) {
        Section top = Section.parse("test.yaml", "influxdb: " + text, inspection);
        return InfluxSettingsReader.read(top.section("influxdb"), FOLDER, Secrets.of(Map.of("SECRET", "alder-7")));
    }

    @Test
    void an_address_and_a_database_are_enough() {
        assertEquals(
                Optional.of(InfluxStores.settings("http://influx.example:8086", "our bags")),
                read("{url: 'http://influx.example:8086/', database: our bags}"));
    }

    @Test
    void a_user_or_a_token_and_a_file_of_certificates_beside_the_configuration_are_read() {
        InfluxSettings plain = InfluxStores.settings("https://influx.example", "bags");
        InfluxSettings trusting = InfluxStores.trusting(plain, FOLDER.resolve("ca.pem"));
        assertEquals(
                Optional.of(InfluxStores.as(trusting, new InfluxLogin.User("house", "alder-7"))),
                read(
                        "{url: 'https://influx.example', database: bags, user: house, password-from: SECRET, ca-file: ca.pem}"));
        assertEquals(
                Optional.of(InfluxStores.keptBy(InfluxStores.as(plain, new InfluxLogin.Token("alder-7")), "long")),
                read("{url: 'https://influx.example', database: bags, token-from: SECRET, retention-policy: long}"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{database: bags} | influxdb.url",
                "{url: 'http://a:8086'} | influxdb.database",
                "{url: 'mqtt://a:8086', database: b} | must be http://host:port, or https://host:port",
                "{url: 'http://me:secret@a:8086', database: b} | have keys of their own",
                "{url: 'http://a:8086/write?db=x', database: b} | have keys of their own",
                "{url: 'http://a b', database: b} | is no address",
                "{url: 'http://a:8086', database: b, ca-file: ca.pem} | with TLS only: write the url with https://",
                "{url: 'http://a:8086', database: b, user: u} | go together: give both",
                "{url: 'http://a:8086', database: b, user: u, password-from: SECRET, token-from: SECRET} | one way too many",
                "{url: 'http://a:8086', database: b, bucket: c} | this key is not known here"
            })
    void what_cannot_be_meant_is_refused(String text, String rule) {
        assertEquals(Optional.empty(), read(text));
        String said = inspection.faults().get(0).sentence();
        assertTrue(said.contains(rule), said);
    }
}
