package bagward.climate;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * One line of a table of values from outside, under src/test/resources/climate: quantity, inputs as "name=value" joined
 * by ';', value, unit, tolerance (absolute, or relative when it ends in '%'), source.
 */
record PublishedCheck(
        String quantity, Map<String, String> inputs, double value, String unit, double tolerance, String source) {

    static Stream<PublishedCheck> of(String file) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setCommentMarker('#')
                .get();
        try (InputStream in = PublishedCheck.class.getResourceAsStream("/climate/" + file)) {
            InputStreamReader text =
                    new InputStreamReader(Objects.requireNonNull(in, "no file " + file), StandardCharsets.UTF_8);
            return format.parse(text).stream().map(PublishedCheck::ofRecord).toList().stream();
        } catch (IOException cannotRead) {
            throw new UncheckedIOException(cannotRead);
        }
    }

    private static PublishedCheck ofRecord(CSVRecord row) {
        Map<String, String> inputs = new HashMap<>();
        for (String part : row.get("inputs").split(";", -1)) {
            String[] pair = part.split("=", 2);
            inputs.put(pair[0], pair[1]);
        }
        double value = Double.parseDouble(row.get("value"));
        String tolerance = row.get("tolerance");
        double allowed = tolerance.endsWith("%")
                ? Math.abs(value) * Double.parseDouble(tolerance.substring(0, tolerance.length() - 1)) / 100
                : Double.parseDouble(tolerance);
        return new PublishedCheck(row.get("quantity"), inputs, value, row.get("unit"), allowed, row.get("source"));
    }

    double input(String name) {
        return Double.parseDouble(word(name));
    }

    String word(String name) {
        return Objects.requireNonNull(inputs.get(name), () -> quantity + " needs the input " + name);
    }

    @Override
    public String toString() {
        return quantity + inputs + " = " + value + " " + unit + " (" + source + ")";
    }
}
