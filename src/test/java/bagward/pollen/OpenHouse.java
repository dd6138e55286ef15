package bagward.pollen;

import bagward.climate.Climate;
import bagward.climate.Reading;
import bagward.climate.RegularSeries;
import bagward.climate.Resampler;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.climate.Site;
import bagward.climate.TimeGrid;
import bagward.units.Quantity;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Days of a real house with lamps; source and licence in src/test/resources/open-data. */
final class OpenHouse {
    static final ZoneId ZONE = ZoneId.of("Europe/Amsterdam");

    private static final Site SITE = new Site(52.03, 4.53, 0);
    private static final String EXCERPT = "/open-data/greenhouse-2022-winter-excerpt.csv";

    private OpenHouse() {}

    static HouseDay day(LocalDate date) {
        TimeGrid grid = HouseDay.grid(date, ZONE);
        Climate climate = new Climate(
                series(grid, "air_temperature_c", Quantity.TEMPERATURE),
                series(grid, "relative_humidity_pct", Quantity.HUMIDITY),
                series(grid, "par_umol_m2_s", Quantity.LIGHT));
        return new HouseDay(SITE, date, ZONE, climate, new BitSet());
    }

    private static RegularSeries series(TimeGrid grid, String column, Quantity quantity) {
        SeriesId id = new SeriesId(new SensorId("open"), quantity);
        List<Reading> readings = new ArrayList<>();
        for (CSVRecord row : rows()) {
            readings.add(Reading.of(
                    id, OffsetDateTime.parse(row.get("time")).toInstant(), Double.parseDouble(row.get(column))));
        }
        return Resampler.onto(grid, readings, Duration.ofMinutes(15));
    }

    private static List<CSVRecord> rows() {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (InputStreamReader reader = new InputStreamReader(
                Objects.requireNonNull(OpenHouse.class.getResourceAsStream(EXCERPT)), StandardCharsets.UTF_8)) {
            return format.parse(reader).getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
