package bagward.bag;

import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Bags as a CSV file, one head a line.
 *
 * <p>The first line names the columns, in any order and upper or lower case; cells are separated by commas or
 * semicolons and may be quoted; a byte order mark is skipped; blank lines are skipped.
 *
 * <table>
 * <caption>Columns</caption>
 * <tr><td>tag</td><td>code on the tag, not used before</td></tr>
 * <tr><td>put_on</td><td>when the head was pollinated and the bag put on: local time of the station such as
 *     2026-05-01T07:30, or with an offset such as 2026-05-01T07:30+02:00</td></tr>
 * <tr><td>house, bay, spot</td><td>where it hangs</td></tr>
 * <tr><td>material</td><td>short name of the bag material</td></tr>
 * <tr><td>seed_parent, pollen_parent</td><td>names of the lines</td></tr>
 * <tr><td>kind</td><td>self, sib or cross</td></tr>
 * <tr><td>buds</td><td>how many buds were opened, 1 to 60</td></tr>
 * <tr><td>by</td><td>who did it</td></tr>
 * <tr><td>score (optional)</td><td>pollen score 0 to 3; empty if it was not scored</td></tr>
 * <tr><td>crop (optional)</td><td>short name of the crop of the seed parent; empty: as with the heads of that line before</td></tr>
 * <tr><td>taken_off (optional)</td><td>when the bag came off; empty while it is on</td></tr>
 * <tr><td>sensor (optional)</td><td>spare sensor that hangs in the bag</td></tr>
 * <tr><td>lent_from (optional)</td><td>since when; empty means since put_on</td></tr>
 * <tr><td>given_back (optional)</td><td>until when; empty means until the bag comes off</td></tr>
 * <tr><td>last_flower (optional)</td><td>when its last flower opened</td></tr>
 * <tr><td>petals_dropped (optional)</td><td>when its petals had dropped</td></tr>
 * <tr><td>bag_before (optional)</td><td>tag of the head that this same bag was on before; empty for a new bag</td></tr>
 * <tr><td>bag_before_off (optional)</td><td>when it came off there; empty means the last bag that came off that head</td></tr>
 * <tr><td>harvested, harvest_note (optional)</td><td>when the head was cut as a seed lot, and what was seen</td></tr>
 * <tr><td>hung, drying_place (optional)</td><td>when the lot was hung to dry, and in which place of the station; empty or
 *     "elsewhere" for one whose climate is not known</td></tr>
 * <tr><td>packed, pack_note (optional)</td><td>when it was packed, and what was seen</td></tr>
 * <tr><td>moisture, moisture_method (optional)</td><td>% of the moist seed of the seed as measured by a person, and how</td></tr>
 * </table>
 */
public final class BagCsv {
    private static final List<String> REQUIRED = List.of(
            "tag", "put_on", "house", "bay", "spot", "material", "seed_parent", "pollen_parent", "kind", "buds", "by");
    private static final List<String> OPTIONAL = Stream.concat(
                    Stream.of(
                            "score",
                            "crop",
                            "taken_off",
                            "sensor",
                            "lent_from",
                            "given_back",
                            "last_flower",
                            "petals_dropped"),
                    LotCells.COLUMNS.stream())
            .toList();

    private final LocalTimes times;

    /** @param zone zone of times without an offset */
    public BagCsv(ZoneId zone) {
        this.times = new LocalTimes(zone);
    }

    /** Names of all columns that a file may have. */
    public static List<String> columns() {
        return Stream.concat(REQUIRED.stream(), OPTIONAL.stream()).toList();
    }

    /**
     * Reads a whole file.
     *
     * @param text the text of the file
     * @return the changes of all lines, in the order of the lines
     * @throws RefusedInputException with every fault by line and column; then nothing of the file is used
     */
    public List<RegisterChange> read(String text) {
        List<RegisterChange> changes = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.read(text, REQUIRED, OPTIONAL).rows()) {
            changes.addAll(new BagCsvRow(row, times, faults).changes());
        }
        if (!faults.isEmpty()) {
            throw new RefusedInputException(faults);
        }
        return List.copyOf(changes);
    }
}
