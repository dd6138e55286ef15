package bagward.bag;

import bagward.climate.Climate;
import bagward.climate.Reading;
import bagward.climate.RegularSeries;
import bagward.climate.Resampler;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.climate.TimeGrid;
import bagward.units.Quantity;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * A real house with a second sensor lower in the crop; source and licence in src/test/resources/open-data.
 *
 * @param house house sensor with light above the crop
 * @param second the second sensor, a stand-in for one that hangs in a bag
 */
public record OpenData(Climate house, Climate second) {
    static final Duration STEP = Duration.ofMinutes(5);

    /** Five days that travel with the tests. */
    static OpenData excerpt() {
        String name = "/open-data/greenhouse-2022-winter-excerpt.csv";
        try (InputStream in = Objects.requireNonNull(OpenData.class.getResourceAsStream(name), name)) {
            return read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Six weeks, if the environment names their folder. */
    public static Optional<OpenData> whole() {
        return Optional.ofNullable(System.getenv("BAGWARD_OPEN_DATA")).map(folder -> {
            try {
                return read(Files.readString(Path.of(folder, "greenhouse-2022-winter.csv")));
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        });
    }

    /** Cells [from, to) of both. */
    OpenData part(int from, int to) {
        return new OpenData(part(house, from, to), part(second, from, to));
    }

    static Climate part(Climate climate, int from, int to) {
        TimeGrid grid = new TimeGrid(climate.grid().at(from), climate.grid().step(), to - from);
        return new Climate(
                part(climate.temperature(), grid, from),
                part(climate.humidity(), grid, from),
                part(climate.light(), grid, from));
    }

    private static RegularSeries part(RegularSeries series, TimeGrid grid, int from) {
        return RegularSeries.of(grid, Arrays.copyOfRange(series.toArray(), from, from + grid.size()));
    }

    private static OpenData read(String text) throws IOException {
        List<CSVRecord> rows = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(text))
                .getRecords();
        TimeGrid grid = TimeGrid.covering(time(rows.get(0)), time(rows.get(rows.size() - 1)), STEP);
        Climate house = new Climate(
                series(rows, grid, "air_temperature_c", Quantity.TEMPERATURE),
                series(rows, grid, "relative_humidity_pct", Quantity.HUMIDITY),
                series(rows, grid, "par_umol_m2_s", Quantity.LIGHT));
        Climate second = new Climate(
                series(rows, grid, "second_air_temperature_c", Quantity.TEMPERATURE),
                series(rows, grid, "second_relative_humidity_pct", Quantity.HUMIDITY),
                RegularSeries.unknown(grid));
        return new OpenData(house, second);
    }

    private static RegularSeries series(List<CSVRecord> rows, TimeGrid grid, String column, Quantity quantity) {
        SeriesId id = new SeriesId(new SensorId("open"), quantity);
        List<Reading> readings = new ArrayList<>();
        for (CSVRecord row : rows) {
            if (!row.get(column).isEmpty()) {
                double value = Double.parseDouble(row.get(column));
                readings.add(
                        Reading.of(id, time(row), Math.min(quantity.highest(), Math.max(quantity.lowest(), value))));
            }
        }
        return Resampler.onto(grid, readings, Duration.ofMinutes(15));
    }

    private static Instant time(CSVRecord row) {
        return OffsetDateTime.parse(row.get("time")).toInstant();
    }
}
