package bagward.store.spool;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What is in the bytes of a segment.
 *
 * @param frames the frames that are whole, oldest first
 * @param goodBytes how many bytes they take, with the mark at the start
 * @param rest what follows them
 */
record Contents(List<Frame> frames, int goodBytes, Rest rest) {
    /** The first bytes of every segment. */
    static final byte[] MARK = "BGSPOOL1".getBytes(StandardCharsets.US_ASCII);

    /** What follows the frames that are whole. */
    enum Rest {
        /** Nothing. */
        NONE,
        /** The beginning of a frame, or zeros: a write that power or process cut short, so it was never promised. */
        TORN,
        /** Bytes that are no frame: the disk has damaged what was promised. */
        DAMAGED
    }

    /** Reads as many frames as there are. */
    static Contents of(byte[] bytes) {
        if (bytes.length < MARK.length) {
            return new Contents(List.of(), 0, bytes.length == 0 ? Rest.NONE : Rest.TORN);
        }
        if (!Arrays.equals(MARK, Arrays.copyOf(bytes, MARK.length))) {
            return new Contents(List.of(), 0, isZero(bytes, 0) ? Rest.TORN : Rest.DAMAGED);
        }
        List<Frame> frames = new ArrayList<>();
        int at = MARK.length;
        while (isWhole(bytes, at)) {
            ByteBuffer body = ByteBuffer.wrap(bytes, at + Frame.PREFIX, bodyLength(bytes, at));
            Instant putAt = Instant.ofEpochMilli(body.getLong());
            int items = body.getInt();
            byte[] data = new byte[body.remaining()];
            body.get(data);
            frames.add(new Frame(putAt, items, data));
            at += Frame.PREFIX + Frame.HEAD + data.length;
        }
        return new Contents(frames, at, rest(bytes, at));
    }

    private static boolean isWhole(byte[] bytes, int at) {
        if (bytes.length - at < Frame.PREFIX + Frame.HEAD) {
            return false;
        }
        int length = bodyLength(bytes, at);
        return length >= Frame.HEAD
                && length <= bytes.length - at - Frame.PREFIX
                && ByteBuffer.wrap(bytes).getInt(at + 4) == Frame.checksum(bytes, at + Frame.PREFIX, length);
    }

    private static Rest rest(byte[] bytes, int at) {
        int left = bytes.length - at;
        if (left == 0) {
            return Rest.NONE;
        }
        boolean cutShort = left < Frame.PREFIX + Frame.HEAD || bodyLength(bytes, at) > left - Frame.PREFIX;
        return cutShort || isZero(bytes, at) ? Rest.TORN : Rest.DAMAGED;
    }

    private static int bodyLength(byte[] bytes, int at) {
        return ByteBuffer.wrap(bytes).getInt(at);
    }

    private static boolean isZero(byte[] bytes, int from) {
        for (int i = from; i < bytes.length; i++) {
            if (bytes[i] != 0) {
                return false;
            }
        }
        return true;
    }
}
