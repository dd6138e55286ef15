package bagward.store.spool;

import bagward.store.StoreException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A bounded queue of batches on disk. A batch is on disk when {@link #put} returns; what a killed process or a power cut
 * leaves is read again by the next one. Batches are taken a segment file at a time, oldest first, and a file is deleted
 * when all of it was passed on; so after a crash a segment may be passed on twice, which its store must take as once.
 * Safe for use by several threads.
 */
final class Spool<T> {
    private static final Logger LOG = LoggerFactory.getLogger(Spool.class);
    private static final String ENDING = ".spool";

    private final Plan plan;
    private final Codec<T> codec;
    private final Deque<Segment> segments = new ArrayDeque<>();
    private long lastNumber;
    private long damagedBytes;

    /**
     * How a spool is kept.
     *
     * @param folder where its files lie
     * @param limitBytes most bytes of all files together
     * @param segmentBytes a file takes no more batches once it has so many bytes
     * @param disk how files are made
     */
    record Plan(Path folder, long limitBytes, int segmentBytes, Disk disk) {
        /** A spool in a folder with files of 1 MB. */
        static Plan usual(Path folder, long limitBytes) {
            return new Plan(folder, limitBytes, 1 << 20, Disk.REAL);
        }
    }

    /** The oldest batches, to be passed on and then {@linkplain #drop dropped}. */
    record Taken<T>(Segment segment, List<T> items) {}

    private Spool(Plan plan, Codec<T> codec) {
        this.plan = plan;
        this.codec = codec;
    }

    /**
     * Opens a spool and makes its folder if it is missing.
     *
     * @throws StoreException if the folder cannot be read and written
     */
    static <T> Spool<T> open(Plan plan, Codec<T> codec) {
        Spool<T> spool = new Spool<>(plan, codec);
        try {
            Files.createDirectories(plan.folder());
            for (Path file : spool.files()) {
                spool.takeOver(file);
            }
            return spool;
        } catch (IOException e) {
            throw new StoreException(
                    "spool " + plan.folder() + " cannot be used: give this user the right to read and write it", e);
        }
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(plan.folder())) {
            return all.filter(file -> file.toString().endsWith(ENDING)).sorted().toList();
        }
    }

    private void takeOver(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        Contents contents = Contents.of(bytes);
        lastNumber = number(file);
        if (contents.rest() == Contents.Rest.DAMAGED) {
            setAside(file, bytes.length - contents.goodBytes());
        }
        if (contents.frames().isEmpty()) {
            Files.delete(file);
        } else {
            segments.add(Segment.left(file, contents));
        }
    }

    private synchronized void setAside(Path file, int damaged) throws IOException {
        Path copy = file.resolveSibling(file.getFileName() + ".damaged");
        Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
        damagedBytes += damaged;
        LOG.error("{} bytes of {} cannot be read and are kept in {}", damaged, file, copy);
    }

    private static long number(Path file) {
        String name = String.valueOf(file.getFileName());
        try {
            return Long.parseLong(name.substring(0, name.length() - ENDING.length()));
        } catch (NumberFormatException e) {
            throw new StoreException("spool file " + file + " is none of Bagward: move it elsewhere", e);
        }
    }

    /**
     * Adds a batch; it is on disk when this returns, and not in the spool when this throws.
     *
     * @throws StoreException if the spool is full, or the disk does not take it
     */
    synchronized void put(List<T> items, Instant now) {
        Frame frame = new Frame(now, items.size(), codec.encode(items));
        if (bytes() + frame.length() > plan.limitBytes()) {
            throw new StoreException("the spool " + plan.folder() + " is full (" + (plan.limitBytes() >> 20)
                    + " MB): the broker keeps what comes from now on; bring the store back");
        }
        try {
            writing().add(frame);
        } catch (IOException e) {
            throw new StoreException(
                    "the spool " + plan.folder() + " cannot be written: free some space and check the disk", e);
        }
    }

    private Segment writing() throws IOException {
        Segment last = segments.peekLast();
        if (last != null && last.takesMore() && last.bytes() < plan.segmentBytes()) {
            return last;
        }
        if (last != null) {
            last.seal();
        }
        Segment next = Segment.create(plan.folder(), "%012d%s".formatted(lastNumber + 1, ENDING), plan.disk());
        lastNumber++;
        segments.add(next);
        return next;
    }

    /**
     * The batches of the oldest file; empty if nothing waits.
     *
     * @throws StoreException if the file cannot be read
     */
    Optional<Taken<T>> oldest() {
        Segment segment;
        synchronized (this) {
            segment = segments.peekFirst();
            if (segment == null) {
                return Optional.empty();
            }
            segment.seal();
        }
        try {
            Contents contents = Contents.of(Segment.read(segment.file(), segment.bytes()));
            if (contents.goodBytes() < segment.bytes()) {
                setAside(segment.file(), segment.bytes() - contents.goodBytes());
            }
            return Optional.of(new Taken<>(segment, items(contents)));
        } catch (IOException e) {
            throw unreadable(segment.file(), e);
        }
    }

    /** Forgets batches that were passed on. */
    synchronized void drop(Taken<T> taken) {
        try {
            Files.deleteIfExists(taken.segment().file());
        } catch (IOException e) {
            // It is passed on again after the next start, which changes nothing.
            LOG.warn("{} was passed on and cannot be deleted", taken.segment().file(), e);
        }
        segments.remove(taken.segment());
    }

    /** Everything that waits, oldest first; what is passed on meanwhile may be missing. */
    List<T> waiting() {
        List<T> items = new ArrayList<>();
        for (Seen seen : seen()) {
            items.addAll(items(seen));
        }
        return items;
    }

    private synchronized List<Seen> seen() {
        return segments.stream().map(s -> new Seen(s.file(), s.bytes())).toList();
    }

    private record Seen(Path file, int bytes) {}

    private List<T> items(Seen seen) {
        try {
            return items(Contents.of(Segment.read(seen.file(), seen.bytes())));
        } catch (NoSuchFileException passedOn) {
            return List.of();
        } catch (IOException e) {
            throw unreadable(seen.file(), e);
        }
    }

    private List<T> items(Contents contents) {
        return contents.frames().stream()
                .flatMap(frame -> codec.decode(frame.data()).stream())
                .toList();
    }

    private static StoreException unreadable(Path file, IOException e) {
        return new StoreException("spool file " + file + " cannot be read: check the disk", e);
    }

    synchronized boolean isEmpty() {
        return segments.isEmpty();
    }

    private long bytes() {
        return segments.stream().mapToLong(Segment::bytes).sum();
    }

    /** How much waits. */
    synchronized Depth depth() {
        return new Depth(
                segments.stream().mapToLong(Segment::items).sum(),
                bytes(),
                plan.limitBytes(),
                segments.stream().flatMap(s -> s.oldest().stream()).findFirst(),
                damagedBytes);
    }

    /** Ends writing; what waits stays on disk. */
    synchronized void close() {
        segments.forEach(Segment::seal);
    }
}
