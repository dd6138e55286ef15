package bagward.collector.payload;

import java.util.List;

/**
 * What a format finds in a payload. Both lists are empty if nothing of what was looked for is there.
 *
 * @param values the numbers
 * @param refusals why other values cannot be used
 */
record Extraction(List<RawValue> values, List<String> refusals) {
    Extraction {
        values = List.copyOf(values);
        refusals = List.copyOf(refusals);
    }
}
