package bagward.bag;

import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A CSV text with a header line, read into rows by column name.
 *
 * @param rows rows that are not blank, in order
 */
record CsvTable(List<Row> rows) {
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    /**
     * One row.
     *
     * @param line line of the text on which it starts, from 1
     * @param cells value by column name, trimmed
     */
    record Row(long line, Map<String, String> cells) {
        String cell(String column) {
            return cells.getOrDefault(column, "");
        }
    }

    /**
     * Reads a text; the separator is the semicolon if the header line has more of them than commas.
     *
     * @param text the whole text, with or without a byte order mark
     * @param required columns that must be there
     * @param optional columns that may be there
     * @throws RefusedInputException if columns are missing, unknown or doubled, or a row has too many or too few cells
     */
    static CsvTable read(String text, List<String> required, List<String> optional) {
        String body = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        try (CSVParser parser = format(body).parse(new StringReader(body))) {
            return read(parser, required, optional);
        } catch (IOException | UncheckedIOException | IllegalStateException unreadable) {
            String why = String.valueOf(unreadable.getMessage());
            throw new RefusedInputException(
                    List.of(Fault.of("file", why, "a quoted cell ends with a quote before the next separator")));
        }
    }

    private static CSVFormat format(String body) {
        String header = body.lines().findFirst().orElse("");
        long semicolons = header.chars().filter(c -> c == ';').count();
        long commas = header.chars().filter(c -> c == ',').count();
        return CSVFormat.RFC4180
                .builder()
                .setDelimiter(semicolons > commas ? ';' : ',')
                .setIgnoreEmptyLines(false)
                .get();
    }

    private static CsvTable read(CSVParser parser, List<String> required, List<String> optional) {
        var records = parser.iterator();
        List<String> header = records.hasNext() ? names(records.next()) : List.of();
        List<Fault> faults = new CsvHeader(required, optional).faults(header);
        if (!faults.isEmpty()) {
            throw new RefusedInputException(faults);
        }
        List<Row> rows = new ArrayList<>();
        long line = parser.getCurrentLineNumber() + 1;
        while (records.hasNext()) {
            CSVRecord cells = records.next();
            if (!blank(cells)) {
                row(cells, header, line, rows, faults);
            }
            line = parser.getCurrentLineNumber() + 1;
        }
        if (!faults.isEmpty()) {
            throw new RefusedInputException(faults);
        }
        return new CsvTable(List.copyOf(rows));
    }

    private static List<String> names(CSVRecord header) {
        return header.stream()
                .map(name -> name.strip().toLowerCase(Locale.ROOT))
                .toList();
    }

    private static boolean blank(CSVRecord cells) {
        return cells.stream().allMatch(String::isBlank);
    }

    private static void row(CSVRecord cells, List<String> header, long line, List<Row> rows, List<Fault> faults) {
        if (cells.size() != header.size()) {
            String rule = "a line has as many cells as the header, " + header.size();
            faults.add(Fault.of("line " + line, cells.size() + " cells", rule));
            return;
        }
        Map<String, String> byName = new LinkedHashMap<>();
        for (int i = 0; i < header.size(); i++) {
            byName.put(header.get(i), cells.get(i).strip());
        }
        rows.add(new Row(line, Map.copyOf(byName)));
    }

    /** Names that occur in a list more than once. */
    static Set<String> doubled(List<String> names) {
        Set<String> seen = new HashSet<>();
        Set<String> twice = new TreeSet<>();
        names.forEach(name -> {
            if (!seen.add(name)) {
                twice.add(name);
            }
        });
        return twice;
    }
}
