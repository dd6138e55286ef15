package bagward.store.spool;

import bagward.store.Payload;
import bagward.store.Quarantined;
import bagward.store.StoreException;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Unusable messages as time of arrival (ms since 1970), topic, payload and reason. */
final class QuarantineCodec implements Codec<Quarantined> {
    @Override
    public byte[] encode(List<Quarantined> messages) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        try {
            for (Quarantined message : messages) {
                out.writeLong(message.arrivedAt().toEpochMilli());
                write(out, message.topic().getBytes(StandardCharsets.UTF_8));
                write(out, message.payload().toBytes());
                write(out, message.reason().getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return bytes.toByteArray();
    }

    @Override
    public List<Quarantined> decode(byte[] bytes) {
        List<Quarantined> messages = new ArrayList<>();
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
        try {
            while (in.available() > 0) {
                Instant arrivedAt = Instant.ofEpochMilli(in.readLong());
                String topic = new String(read(in), StandardCharsets.UTF_8);
                Payload payload = Payload.of(read(in));
                messages.add(new Quarantined(arrivedAt, topic, payload, new String(read(in), StandardCharsets.UTF_8)));
            }
        } catch (IOException cutShort) {
            throw new StoreException("a batch in the spool ends in the middle of a message: report this", cutShort);
        }
        return messages;
    }

    private static void write(DataOutputStream out, byte[] part) throws IOException {
        out.writeInt(part.length);
        out.write(part);
    }

    private static byte[] read(DataInputStream in) throws IOException {
        return in.readNBytes(in.readInt());
    }
}
