package bagward.store;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** A program that stores batches until it is killed, and prints the number of each batch once it is stored. */
final class KilledWriter {
    static final int BATCH = 37;

    private KilledWriter() {}

    /** Takes the store's file as its only argument. */
    public static void main(String[] arguments) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        try (SqliteStores stores = SqliteStores.open(Path.of(arguments[0]), Samples.CLOCK)) {
            int first = Integer.parseInt(arguments[1]);
            for (int batch = first; !out.checkError(); batch++) {
                stores.readings().append(Samples.minutes(batch * BATCH, BATCH));
                out.println("stored " + batch);
            }
        }
    }
}
