package bagward.store.spool;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;

/** One file of a spool: written once from front to end, read whole, deleted whole. Used under the lock of the spool. */
final class Segment {
    private final Path file;
    private Optional<FileChannel> writing;
    private int bytes;
    private long items;
    private Optional<Instant> oldest;

    private Segment(Path file, Optional<FileChannel> writing, Contents contents) {
        this.file = file;
        this.writing = writing;
        this.bytes = contents.goodBytes();
        this.items = contents.frames().stream().mapToLong(Frame::items).sum();
        this.oldest = contents.frames().stream().findFirst().map(Frame::putAt);
    }

    /** A new segment that frames can be added to. */
    static Segment create(Path folder, String name, Disk disk) throws IOException {
        Path file = folder.resolve(name);
        FileChannel channel = disk.create(file);
        try {
            write(channel, ByteBuffer.wrap(Contents.MARK), 0);
            channel.force(true);
            Disk.syncNames(folder);
        } catch (IOException e) {
            channel.close();
            Files.deleteIfExists(file);
            throw e;
        }
        return new Segment(file, Optional.of(channel), Contents.of(Contents.MARK));
    }

    /** A segment that an earlier run left; nothing is added to it. */
    static Segment left(Path file, Contents contents) {
        return new Segment(file, Optional.empty(), contents);
    }

    /**
     * Adds a frame; it is on disk when this returns. When it throws, the segment is as before and takes no more.
     */
    void add(Frame frame) throws IOException {
        FileChannel channel = writing.orElseThrow(() -> new IOException("segment " + file + " takes no more"));
        try {
            write(channel, frame.toBytes(), bytes);
            channel.force(false);
        } catch (IOException e) {
            // What was written of it lies after the good bytes and is never read, whether or not it can be cut off.
            seal();
            throw e;
        }
        bytes += frame.length();
        items += frame.items();
        oldest = oldest.or(() -> Optional.of(frame.putAt()));
    }

    private static void write(FileChannel channel, ByteBuffer from, long position) throws IOException {
        long at = position;
        while (from.hasRemaining()) {
            at += channel.write(from, at);
        }
    }

    /** Takes no more frames from now on. */
    void seal() {
        writing.ifPresent(channel -> {
            try {
                if (channel.size() > bytes) {
                    channel.truncate(bytes);
                }
                channel.close();
            } catch (IOException e) {
                // The frames before are synced; a torn end is cut off when the spool is opened next.
                closeQuietly(channel);
            }
        });
        writing = Optional.empty();
    }

    private static void closeQuietly(FileChannel channel) {
        try {
            channel.close();
        } catch (IOException closedAnyway) {
            // a file that cannot be closed is not written to any more either
            return;
        }
    }

    boolean takesMore() {
        return writing.isPresent();
    }

    Path file() {
        return file;
    }

    /** Bytes of the frames that were promised, with the mark at the start. */
    int bytes() {
        return bytes;
    }

    /** Items that were promised. */
    long items() {
        return items;
    }

    /** When the first frame was put. */
    Optional<Instant> oldest() {
        return oldest;
    }

    /** The first so many bytes of a segment's file. */
    static byte[] read(Path file, int bytes) throws IOException {
        byte[] all = Files.readAllBytes(file);
        return all.length == bytes ? all : Arrays.copyOf(all, Math.min(bytes, all.length));
    }
}
