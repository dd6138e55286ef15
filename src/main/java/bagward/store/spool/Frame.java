package bagward.store.spool;

import java.nio.ByteBuffer;
import java.time.Instant;
import java.util.zip.CRC32C;

/**
 * One batch as it lies in a segment: length of the body (4 bytes), CRC-32C of the body (4 bytes), body. The body is the
 * time of putting (8 bytes, ms since 1970), the number of items (4 bytes) and the items. All numbers big-endian.
 *
 * @param putAt when it was put into the spool
 * @param items how many items it holds
 * @param data the items as their codec wrote them; nobody changes it
 */
@SuppressWarnings("ArrayRecordComponent") // compared by nobody; copying every batch twice would be waste
record Frame(Instant putAt, int items, byte[] data) {
    /** Bytes before the body. */
    static final int PREFIX = 8;

    /** Bytes of the body before the items. */
    static final int HEAD = 12;

    /** Bytes of the whole frame in a file. */
    int length() {
        return PREFIX + HEAD + data.length;
    }

    /** The frame as it lies in a file, ready to be written. */
    ByteBuffer toBytes() {
        ByteBuffer bytes = ByteBuffer.allocate(length());
        bytes.position(PREFIX);
        bytes.putLong(putAt.toEpochMilli()).putInt(items).put(data);
        bytes.putInt(0, HEAD + data.length).putInt(4, checksum(bytes.array(), PREFIX, HEAD + data.length));
        return bytes.flip();
    }

    /** Checksum of a part of an array. */
    static int checksum(byte[] bytes, int from, int length) {
        CRC32C sum = new CRC32C();
        sum.update(bytes, from, length);
        return (int) sum.getValue();
    }
}
