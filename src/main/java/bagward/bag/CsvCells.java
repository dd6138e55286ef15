package bagward.bag;

import bagward.fault.Fault;
import bagward.fault.ImpossibleValueException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The cells of one line, each read on its own; what is wrong is noted with line and column. */
record CsvCells(CsvTable.Row row, List<Fault> faults) {
    /** A cell that must be filled. */
    <T> Optional<T> cell(String column, Function<String, T> reader) {
        String text = row.cell(column);
        if (text.isEmpty()) {
            refuse(column, "must not be empty", "");
            return Optional.empty();
        }
        try {
            return Optional.of(reader.apply(text));
        } catch (ImpossibleValueException wrong) {
            refuse(column, String.valueOf(wrong.getMessage()), "");
        } catch (LocalTimes.UnclearTimeException wrong) {
            refuse(column, String.valueOf(wrong.getMessage()), wrong.remedy());
        }
        return Optional.empty();
    }

    /** A cell that may be empty. */
    <T> Optional<T> optional(String column, Function<String, T> reader) {
        return empty(column) ? Optional.empty() : cell(column, reader);
    }

    /** Whether a cell is empty or the file has no such column. */
    boolean empty(String column) {
        return row.cell(column).isEmpty();
    }

    /** Notes a fault of a cell that stands there without the one it belongs to. */
    void needs(String column, String other, String rule) {
        if (!empty(column) && empty(other)) {
            refuse(column, rule, "Fill column '" + other + "' too.");
        }
    }

    private void refuse(String column, String rule, String remedy) {
        faults.add(new Fault("line " + row.line() + ", column '" + column + "'", row.cell(column), rule, remedy));
    }
}
