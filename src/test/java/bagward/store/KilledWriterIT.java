package bagward.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A process that is killed while it stores loses nothing that it had said was stored. */
class KilledWriterIT {
    private static final int KILLS = 10;

    private final Path file;

    KilledWriterIT(@TempDir Path folder) {
        file = folder.resolve("bagward.db");
    }

    @Test
    void every_batch_that_was_acknowledged_before_a_kill_is_there_once_and_whole() throws Exception {
        Random random = new Random(11);
        int next = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            int acknowledged = writeUntilKilled(next, 1 + random.nextInt(200), random.nextInt(3_000));
            next = checkAfter(acknowledged);
        }
        assertTrue(next > KILLS, "too little was written to mean anything: " + next + " batches");
    }

    private int writeUntilKilled(int first, int batches, int pauseMicros) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-classpath",
                System.getProperty("java.class.path"),
                KilledWriter.class.getName(),
                file.toString(),
                Integer.toString(first));
        Process writer = builder.redirectError(ProcessBuilder.Redirect.DISCARD).start();
        try (BufferedReader said = writer.inputReader()) {
            int newest = waitFor(said, batches);
            Thread.sleep(pauseMicros / 1_000, pauseMicros % 1_000 * 1_000);
            // By its handle, since destroying the process itself would close the stream that is still to be read.
            writer.toHandle().destroyForcibly();
            assertEquals(137, writer.waitFor(), "the writer ended by itself");
            return Math.max(newest, lastOf(said));
        } finally {
            writer.destroyForcibly();
        }
    }

    private static int waitFor(BufferedReader said, int batches) throws IOException {
        int newest = -1;
        int heard = 0;
        while (heard < batches) {
            String line = said.readLine();
            assertTrue(line != null, "the writer ended by itself");
            if (line.startsWith("stored ")) {
                newest = number(line);
                heard++;
            }
        }
        return newest;
    }

    private static int lastOf(BufferedReader said) throws IOException {
        int newest = -1;
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            newest = line.startsWith("stored ") ? Math.max(newest, number(line)) : newest;
        }
        return newest;
    }

    private static int number(String line) {
        return Integer.parseInt(line.substring("stored ".length()));
    }

    /** Returns the number of whole batches that are there. */
    private int checkAfter(int acknowledged) {
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            assertEquals("ok", stores.checkIntegrity());
            int there = stores.readings()
                    .readings(Samples.AIR_HUMIDITY, Instant.MIN, Instant.MAX)
                    .size();
            assertEquals(0, there % KilledWriter.BATCH, "part of a batch was left");
            int batches = there / KilledWriter.BATCH;
            assertTrue(batches >= acknowledged + 1, acknowledged + " was acknowledged, " + batches + " are there");
            assertEquals(
                    Samples.minutes(0, there),
                    stores.readings().readings(Samples.AIR_HUMIDITY, Instant.MIN, Instant.MAX));
            return batches;
        }
    }
}
