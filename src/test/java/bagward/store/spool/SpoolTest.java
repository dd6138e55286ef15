package bagward.store.spool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import bagward.store.Samples;
import bagward.store.StoreException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Batches in a spool, on real files. */
class SpoolTest {
    private static final int SMALL_SEGMENT = 400;
    private static final int LIMIT = 10_000;
    private static final int MOST_CALLS = 1000;

    private final Path folder;

    SpoolTest(@TempDir Path folder) {
        this.folder = folder;
    }

    private Spool<Reading> open() {
        return open(Disk.REAL);
    }

    private Spool<Reading> open(Disk disk) {
        return Spool.open(new Spool.Plan(folder, LIMIT, SMALL_SEGMENT, disk), new ReadingCodec());
    }

    private static void put(Spool<Reading> spool, int firstMinute) {
        spool.put(Samples.minutes(firstMinute, 2), Samples.at(firstMinute));
    }

    private static List<Reading> drain(Spool<Reading> spool) {
        List<Reading> drained = new ArrayList<>();
        for (Optional<Spool.Taken<Reading>> taken = spool.oldest(); taken.isPresent(); taken = spool.oldest()) {
            drained.addAll(taken.get().items());
            spool.drop(taken.get());
        }
        return drained;
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.sorted().toList();
        }
    }

    @Test
    void what_was_put_comes_out_in_order_also_after_a_restart_and_leaves_no_file() throws IOException {
        Spool<Reading> spool = open();
        for (int i = 0; i < 40; i += 2) {
            put(spool, i);
        }
        assertEquals(Samples.minutes(0, 40), spool.waiting());
        assertEquals(40, spool.depth().items());
        assertEquals(Optional.of(Samples.at(0)), spool.depth().oldest());
        assertTrue(files().size() > 3, "several segments");

        // no close: a process that was killed
        Spool<Reading> next = open();
        put(next, 40);
        assertEquals(42, next.depth().items());
        assertEquals(Samples.minutes(0, 42), drain(next));
        assertTrue(next.isEmpty());
        assertEquals(List.of(), files());
        assertEquals(0, next.depth().bytes());
    }

    @Test
    void a_segment_that_was_taken_and_not_dropped_is_taken_again() {
        Spool<Reading> spool = open();
        put(spool, 0);
        assertEquals(Samples.minutes(0, 2), spool.oldest().orElseThrow().items());
        put(spool, 2);
        assertEquals(Samples.minutes(0, 4), drain(open()));
    }

    @Test
    void a_batch_beyond_the_limit_is_refused_and_there_is_room_again_after_draining() {
        Spool<Reading> spool = open();
        int taken = 0;
        StoreException full = null;
        while (full == null) {
            int next = taken;
            try {
                put(spool, 2 * next);
                taken++;
            } catch (StoreException e) {
                full = e;
            }
        }
        assertTrue(full.toString().contains("is full"), full.toString());
        assertTrue(spool.depth().percent() > 98, "full at " + spool.depth().percent() + " %");
        assertTrue(spool.depth().bytes() <= LIMIT);
        assertEquals(Samples.minutes(0, 2 * taken), drain(spool));
        put(spool, 0);
        assertEquals(2, spool.depth().items());
    }

    @Test
    void a_torn_end_is_forgotten_and_what_was_promised_is_kept() throws IOException {
        Spool<Reading> spool = open();
        put(spool, 0);
        put(spool, 2);
        Path file = files().get(0);
        byte[] bytes = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(bytes, bytes.length - 5));
        Spool<Reading> next = open();
        assertEquals(0, next.depth().damagedBytes());
        put(next, 4);
        assertEquals(
                Stream.concat(Samples.minutes(0, 2).stream(), Samples.minutes(4, 2).stream())
                        .toList(),
                drain(next));
    }

    @Test
    void damage_is_counted_and_kept_for_a_person_and_the_rest_goes_on() throws IOException {
        Spool<Reading> spool = open();
        put(spool, 0);
        put(spool, 2);
        Path file = files().get(0);
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length - 3] ^= 1;
        Files.write(file, bytes);
        Spool<Reading> next = open();
        assertTrue(next.depth().damagedBytes() > 0);
        assertEquals(Samples.minutes(0, 2), drain(next));
        assertEquals(1, files().size());
        assertTrue(files().get(0).toString().endsWith(".damaged"));
    }

    @Test
    void damage_while_it_runs_is_counted_too() throws IOException {
        Spool<Reading> spool = open();
        put(spool, 0);
        put(spool, 2);
        Path file = files().get(0);
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length - 3] ^= 1;
        Files.write(file, bytes);
        assertEquals(Samples.minutes(0, 2), drain(spool));
        assertTrue(spool.depth().damagedBytes() > 0);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void when_the_nth_call_of_the_disk_fails_what_was_promised_is_there_and_what_was_refused_is_not(boolean fromThenOn)
            throws IOException {
        int n = 0;
        int refusals = 0;
        FaultyDisk disk;
        do {
            n++;
            clear();
            disk = new FaultyDisk(fromThenOn);
            Spool<Reading> spool = open(disk);
            disk.failAt(n);
            List<Reading> promised = putTen(spool);
            refusals += promised.size() < 20 ? 1 : 0;
            assertEquals(promised, spool.waiting(), "call " + n);
            // A refused batch may still be there if it could not be cut off; its sender sends it again.
            List<Reading> afterRestart = afterRestart();
            assertTrue(afterRestart.containsAll(promised), "call " + n + ": " + afterRestart);
            assertEquals(afterRestart.stream().distinct().toList(), afterRestart);
            assertEquals(promised, drain(spool), "call " + n);
        } while (disk.struck() && n < MOST_CALLS);
        assertTrue(refusals > 10, "only " + refusals + " of " + n + " calls refused a batch");
        assertFalse(disk.struck(), "it never got through");
    }

    private List<Reading> afterRestart() throws IOException {
        Path copy = Files.createDirectory(folder.resolve("copy"));
        for (Path file : files()) {
            if (Files.isRegularFile(file)) {
                Files.copy(file, copy.resolve(file.getFileName()));
            }
        }
        Spool<Reading> next = Spool.open(Spool.Plan.usual(copy, LIMIT), new ReadingCodec());
        List<Reading> drained = drain(next);
        Files.delete(copy);
        return drained;
    }

    private void clear() throws IOException {
        for (Path file : files()) {
            Files.delete(file);
        }
    }

    private static List<Reading> putTen(Spool<Reading> spool) {
        List<Reading> promised = new ArrayList<>();
        for (int i = 0; i < 20; i += 2) {
            try {
                put(spool, i);
                promised.addAll(Samples.minutes(i, 2));
            } catch (StoreException refused) {
                assertTrue(refused.toString().contains("cannot be written: free some space"), refused.toString());
            }
        }
        return promised;
    }

    @Test
    void a_folder_that_cannot_be_used_is_said_with_its_name() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "x");
        StoreException refusal =
                assertThrows(StoreException.class, () -> Spool.open(Spool.Plan.usual(file, LIMIT), new ReadingCodec()));
        assertTrue(refusal.toString().contains(file.toString()), refusal.toString());
    }
}
