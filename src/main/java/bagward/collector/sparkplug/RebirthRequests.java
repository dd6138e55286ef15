package bagward.collector.sparkplug;

import com.google.protobuf.CodedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;

/**
 * When to ask an edge node for its births again: at the start, and after something of it was missed. Not more often than
 * once a minute, and, as long as that does not help, more and more seldom down to once an hour.
 */
final class RebirthRequests {
    private static final Duration SOONEST = Duration.ofMinutes(1);
    private static final Duration LATEST = Duration.ofHours(1);
    private static final int BOOLEAN = 11;

    private boolean wanted = true;
    private Instant next = Instant.MIN;
    private Duration wait = SOONEST;
    private long asked;

    void want() {
        wanted = true;
    }

    void born(Instant at) {
        wanted = false;
        if (!at.isBefore(next)) {
            wait = SOONEST;
        }
    }

    /** Whether to ask now; if so, that counts as asked. A time set back by hours does not hold it up. */
    boolean due(Instant now) {
        boolean tooSoon = now.isBefore(next) && !next.isAfter(now.plus(LATEST));
        if (!wanted || tooSoon) {
            return false;
        }
        asked++;
        next = now.plus(wait);
        wait = wait.multipliedBy(2).compareTo(LATEST) > 0 ? LATEST : wait.multipliedBy(2);
        return true;
    }

    long asked() {
        return asked;
    }

    /** The command {@code Node Control/Rebirth} (Sparkplug 3.0, chapter 6.4.24). */
    static Command command(NodeId node, Instant now) {
        try {
            byte[] metric = bytes(out -> {
                out.writeString(1, "Node Control/Rebirth");
                out.writeUInt64(3, now.toEpochMilli());
                out.writeUInt32(4, BOOLEAN);
                out.writeBool(14, true);
            });
            return new Command(SparkplugTopic.commands(node), bytes(out -> {
                out.writeUInt64(1, now.toEpochMilli());
                out.writeByteArray(2, metric);
            }));
        } catch (IOException e) {
            throw new UncheckedIOException("memory does not fail to be written", e);
        }
    }

    private interface Fill {
        void into(CodedOutputStream out) throws IOException;
    }

    private static byte[] bytes(Fill fill) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        CodedOutputStream out = CodedOutputStream.newInstance(bytes);
        fill.into(out);
        out.flush();
        return bytes.toByteArray();
    }
}
