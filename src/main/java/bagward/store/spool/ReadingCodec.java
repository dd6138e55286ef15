package bagward.store.spool;

import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.store.StoreException;
import bagward.units.Quantity;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Readings as sensor, quantity, time (ms since 1970), value and flags, some 45 bytes each. */
final class ReadingCodec implements Codec<Reading> {
    private static final Map<String, Quantity> QUANTITIES =
            Arrays.stream(Quantity.values()).collect(Collectors.toMap(Quantity::word, Function.identity()));

    @Override
    public byte[] encode(List<Reading> readings) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(64 * readings.size());
        DataOutputStream out = new DataOutputStream(bytes);
        try {
            for (Reading reading : readings) {
                out.writeUTF(reading.series().sensor().value());
                out.writeUTF(reading.series().quantity().word());
                out.writeLong(reading.measuredAt().toEpochMilli());
                out.writeDouble(reading.value());
                out.writeInt(ReadingFlag.toBits(reading.flags()));
            }
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return bytes.toByteArray();
    }

    @Override
    public List<Reading> decode(byte[] bytes) {
        List<Reading> readings = new ArrayList<>();
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
        try {
            while (in.available() > 0) {
                SensorId sensor = new SensorId(in.readUTF());
                SeriesId series = new SeriesId(sensor, quantity(in.readUTF()));
                Instant at = Instant.ofEpochMilli(in.readLong());
                readings.add(new Reading(series, at, in.readDouble(), ReadingFlag.ofBits(in.readInt())));
            }
        } catch (IOException cutShort) {
            throw new StoreException("a batch in the spool ends in the middle of a reading: report this", cutShort);
        }
        return readings;
    }

    private static Quantity quantity(String word) {
        Quantity quantity = QUANTITIES.get(word);
        if (quantity == null) {
            throw new StoreException("the spool holds readings of the unknown quantity '" + word
                    + "': use the newer Bagward that wrote them");
        }
        return quantity;
    }
}
