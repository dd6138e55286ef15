package bagward.app;

import bagward.store.StoreReport;

/** What a store holds, in words. */
final class StoreWords {
    private StoreWords() {}

    static String of(StoreReport report) {
        String time = report.time()
                .map(span -> " from " + span.from() + " to " + span.to())
                .orElse("");
        return report.readings() + " readings" + time + ", " + report.changes() + " register changes, schema version "
                + report.version() + ", " + (report.bytes() >> 10) + " KB";
    }
}
