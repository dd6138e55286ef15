package bagward.site;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A table to take away as CSV (RFC 4180), in UTF-8. */
final class CsvDownload {
    private static final String FORMULA_STARTS = "=+-@\t\r";

    private CsvDownload() {}

    /**
     * Answers with a file. A cell that a spreadsheet would take for a formula gets an apostrophe in front, since people
     * type what stands in some of them.
     *
     * @param name of the file
     */
    static void answer(Context ctx, String name, List<String> columns, List<List<String>> rows) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            printer.printRecord(columns);
            for (List<String> row : rows) {
                printer.printRecord(row.stream().map(CsvDownload::harmless).toList());
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        ctx.contentType("text/csv; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"" + name + "\"")
                .header("Cache-Control", "no-store")
                .result(text.toString());
    }

    private static String harmless(String cell) {
        return !cell.isEmpty() && FORMULA_STARTS.indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
    }
}
