package bagward.pollen;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Tables among the test resources. */
final class Tables {
    private Tables() {}

    static List<CSVRecord> read(String name) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (InputStreamReader reader = new InputStreamReader(
                Objects.requireNonNull(Tables.class.getResourceAsStream("/pollen/" + name), name),
                StandardCharsets.UTF_8)) {
            return format.parse(reader).getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
