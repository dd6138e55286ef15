package bagward.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.units.Celsius;
import bagward.units.RelativeHumidity;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Humidity deficits that the instruments of a real greenhouse computed; source in src/test/resources/open-data. */
class OpenDataTest {
    private static final String EXCERPT = "/open-data/greenhouse-2022-winter-excerpt.csv";
    /** Rows of the whole series that carry all three values. */
    private static final int WHOLE = 12_359;

    @Test
    void humidity_deficits_agree_with_the_instruments_of_a_real_house() throws IOException {
        try (InputStream in = Objects.requireNonNull(OpenDataTest.class.getResourceAsStream(EXCERPT));
                Reader text = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            assertEquals(1440, rowsThatAgree(text));
        }
        String folder = System.getenv("BAGWARD_OPEN_DATA");
        if (folder != null) {
            try (Reader text = Files.newBufferedReader(Path.of(folder, "greenhouse-2022-winter.csv"))) {
                assertEquals(WHOLE, rowsThatAgree(text));
            }
        }
    }

    private static int rowsThatAgree(Reader text) throws IOException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        int rows = 0;
        for (CSVRecord row : format.parse(text)) {
            String temperature = row.get("air_temperature_c");
            String humidity = row.get("relative_humidity_pct");
            String deficit = row.get("humidity_deficit_g_m3");
            if (!temperature.isEmpty() && !humidity.isEmpty() && !deficit.isEmpty()) {
                double ours = VapourContent.deficit(
                                new Celsius(Double.parseDouble(temperature)),
                                new RelativeHumidity(Double.parseDouble(humidity)))
                        .gramsPerCubicMetre();
                double difference = Math.abs(ours - Double.parseDouble(deficit));
                assertTrue(difference <= 0.020, () -> row.get("time") + " differs by " + difference + " g m-3");
                rows++;
            }
        }
        return rows;
    }
}
