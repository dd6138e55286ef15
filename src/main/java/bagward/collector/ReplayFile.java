package bagward.collector;

import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.Reader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads a recorded file whole, so that every fault is known before the first message is sent. */
final class ReplayFile {
    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setTrim(true)
            .get();
    private static final int MOST_FAULTS = 100;

    private final String name;
    private final ReplayPlan plan;
    private final List<Fault> faults = new ArrayList<>();

    private ReplayFile(String name, ReplayPlan plan) {
        this.name = name;
        this.plan = plan;
    }

    /**
     * The rows of a file in its order.
     *
     * @throws RefusedInputException with the faults by line, the first hundred of them
     */
    static List<ReplayRow> read(Path csv, ReplayPlan plan) {
        ReplayFile file = new ReplayFile(String.valueOf(csv.getFileName()), plan);
        List<ReplayRow> rows = file.rows(csv);
        if (!file.faults.isEmpty()) {
            throw new RefusedInputException(file.faults);
        }
        return rows;
    }

    private List<ReplayRow> rows(Path csv) {
        List<ReplayRow> rows = new ArrayList<>();
        try (Reader reader = Files.newBufferedReader(csv, StandardCharsets.UTF_8);
                CSVParser parser = FORMAT.parse(reader)) {
            checkColumns(parser.getHeaderNames());
            if (faults.isEmpty()) {
                for (CSVRecord record : parser) {
                    row(record, parser.getCurrentLineNumber()).ifPresent(rows::add);
                }
            }
        } catch (IOException | IllegalArgumentException e) {
            faults.add(Fault.of(name, "", "must be a CSV file in UTF-8 that can be read (" + e.getMessage() + ")"));
        }
        return rows;
    }

    private void checkColumns(List<String> header) {
        TreeSet<String> wanted = new TreeSet<>();
        wanted.add(plan.timeColumn());
        plan.tracks().forEach(track -> wanted.addAll(track.columns().keySet()));
        for (String column : wanted) {
            if (!header.contains(column)) {
                refuse(1, "no column '" + column + "'", "", "the columns are " + String.join(", ", header));
            }
        }
    }

    private Optional<ReplayRow> row(CSVRecord record, long line) {
        Optional<Instant> at = time(record, line);
        if (!record.isConsistent()) {
            refuse(line, "row", record.size() + " values", "must have as many values as the header has columns");
            return Optional.empty();
        }
        List<ReplayRow.Outgoing> messages = new ArrayList<>();
        for (ReplayPlan.Track track : plan.tracks()) {
            ObjectNode json = JsonNodeFactory.instance.objectNode();
            at.ifPresent(time -> json.put("time", time.toString()));
            track.columns()
                    .forEach((column, member) ->
                            number(record, line, column).ifPresent(value -> json.put(member, value)));
            if (json.size() > 1) {
                messages.add(new ReplayRow.Outgoing(track.topic(), json.toString()));
            }
        }
        return at.map(time -> new ReplayRow(time, messages));
    }

    private Optional<Instant> time(CSVRecord record, long line) {
        String text = record.isSet(plan.timeColumn()) ? record.get(plan.timeColumn()) : "";
        try {
            return Optional.of(OffsetDateTime.parse(text).toInstant());
        } catch (DateTimeException e) {
            refuse(line, plan.timeColumn(), text, "must be ISO 8601 with an offset, as 2026-04-03T06:15:00+02:00");
            return Optional.empty();
        }
    }

    private Optional<BigDecimal> number(CSVRecord record, long line, String column) {
        String text = record.get(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new BigDecimal(text));
        } catch (NumberFormatException e) {
            refuse(line, column, text, "must be a number with a decimal point, or empty");
            return Optional.empty();
        }
    }

    private void refuse(long line, String column, String found, String rule) {
        if (faults.size() < MOST_FAULTS) {
            faults.add(Fault.of(name + " line " + line + ", " + column, found, rule));
        }
    }
}
