package bagward.store.influx;

import bagward.climate.Reading;
import bagward.climate.SeriesId;
import bagward.store.ReadingStore;
import bagward.store.Samples;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Stores on a server for tests. */
final class InfluxStores {
    private InfluxStores() {}

    static InfluxSettings settings(String url, String database) {
        return new InfluxSettings(url, database, Optional.empty(), Optional.empty(), Optional.empty());
    }

    static InfluxSettings as(InfluxSettings settings, InfluxLogin login) {
        return new InfluxSettings(
                settings.url(), settings.database(), settings.retentionPolicy(), Optional.of(login), settings.caFile());
    }

    static InfluxSettings trusting(InfluxSettings settings, Path caFile) {
        return new InfluxSettings(
                settings.url(), settings.database(), settings.retentionPolicy(), settings.login(), Optional.of(caFile));
    }

    static InfluxSettings keptBy(InfluxSettings settings, String retentionPolicy) {
        return new InfluxSettings(
                settings.url(), settings.database(), Optional.of(retentionPolicy), settings.login(), settings.caFile());
    }

    static InfluxReadings open(InfluxSettings settings) {
        return open(settings, new HeldQuarantine());
    }

    static InfluxReadings open(InfluxSettings settings, HeldQuarantine quarantine) {
        return new InfluxReadings(settings, quarantine, Samples.CLOCK, Limits.USUAL);
    }

    static List<Reading> all(ReadingStore store, SeriesId series) {
        return store.readings(series, Instant.MIN, Instant.MAX);
    }
}
