package bagward.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.SaltCheck;
import bagward.climate.SaturatedSalt;
import bagward.climate.SensorId;
import bagward.store.KeptCheck.Withdrawal;
import bagward.units.Celsius;
import bagward.units.RelativeHumidity;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SqliteSensorChecksTest {
    private static final Instant AT = Instant.parse("2026-04-02T07:15:00Z");

    private final Path file;

    SqliteSensorChecksTest(@TempDir Path folder) {
        file = folder.resolve("bagward.db");
    }

    @Test
    void checks_come_back_as_they_were_kept_also_after_a_restart() {
        try (SqliteStores stores = open()) {
            stores.sensorChecks().add(check("spare-1", 77.1), "Mirja", AT);
            stores.sensorChecks().add(check("spare-2", 75.25), "Odd", AT.plusSeconds(60));
        }
        try (SqliteStores stores = open()) {
            assertEquals(
                    List.of(
                            new KeptCheck(1, check("spare-1", 77.1), "Mirja", AT, Optional.empty()),
                            new KeptCheck(2, check("spare-2", 75.25), "Odd", AT.plusSeconds(60), Optional.empty())),
                    stores.sensorChecks().checks());
        }
    }

    @Test
    void a_check_is_withdrawn_once_and_is_kept_with_the_reason() {
        try (SqliteStores stores = open()) {
            SensorCheckStore checks = stores.sensorChecks();
            checks.add(check("spare-1", 77.1), "Mirja", AT);
            Withdrawal wrong = new Withdrawal(AT.plusSeconds(3600), "Odd", "the box leaked");
            assertTrue(checks.withdraw(1, wrong));
            assertFalse(checks.withdraw(1, new Withdrawal(AT.plusSeconds(7200), "Mirja", "again")));
            assertFalse(checks.withdraw(2, wrong));
            assertEquals(Optional.of(wrong), checks.checks().get(0).withdrawn());
        }
    }

    private SqliteStores open() {
        return SqliteStores.open(file, Clock.systemUTC());
    }

    private static SaltCheck check(String sensor, double read) {
        return new SaltCheck(
                new SensorId(sensor),
                AT,
                new SaltCheck.Point(SaturatedSalt.SODIUM_CHLORIDE, new Celsius(20.5), new RelativeHumidity(read)),
                new SaltCheck.Point(SaturatedSalt.POTASSIUM_NITRATE, new Celsius(21), new RelativeHumidity(96.2)));
    }
}
