package bagward.site;

import io.javalin.http.Context;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A table to take away as CSV (RFC 4180), in UTF-8. */
final class CsvDownload {
    private static final String FORMULA_STARTS = "=+-@\t\r";
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+([.][0-9]+)?");

    private CsvDownload() {}

    /**
     * Answers with a file. A cell that a spreadsheet would take for a formula gets an apostrophe in front, since people
     * type what stands in some of them.
     *
     * @param name of the file
     */
    static void answer(Context ctx, String name, List<String> columns, List<List<String>> rows) {
        StringBuilder text = new StringBuilder();
        Stream.concat(Stream.of(columns), rows.stream())
                .forEach(row -> text.append(line(row)).append("\r\n"));
        ctx.contentType("text/csv; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"" + name + "\"")
                .header("Cache-Control", "no-store")
                .result(text.toString());
    }

    private static String line(List<String> row) {
        return row.stream().map(CsvDownload::harmless).map(CsvDownload::quoted).collect(Collectors.joining(","));
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(letter -> "\",\r\n".indexOf(letter) >= 0);
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    private static String harmless(String cell) {
        return !cell.isEmpty() && !NUMBER.matcher(cell).matches() && FORMULA_STARTS.indexOf(cell.charAt(0)) >= 0
                ? "'" + cell
                : cell;
    }
}
