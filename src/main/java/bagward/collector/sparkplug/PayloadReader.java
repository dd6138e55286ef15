package bagward.collector.sparkplug;

import com.google.protobuf.CodedInputStream;
import com.google.protobuf.WireFormat;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/**
 * Reads payloads: protocol buffers of the Sparkplug B schema (Sparkplug 3.0, chapter 6.4), from strangers. What is declared
 * longer than what is there is refused before anything of that size is made; what is nested deeper than metrics and their
 * properties is passed over unread.
 */
final class PayloadReader {
    /** Longest payload that is read, bytes: a birth of a few thousand metrics. */
    static final int LONGEST = 512 * 1024;

    private static final int MOST_METRICS = 10_000;
    private static final long HIGHEST_SEQUENCE = 255;

    private PayloadReader() {}

    /** @throws SparkplugException if it is not a payload, or beyond the limits */
    static SparkplugPayload read(byte[] bytes) {
        if (bytes.length > LONGEST) {
            throw new SparkplugException("the payload has " + bytes.length + " bytes: allowed are " + LONGEST);
        }
        try {
            return payload(CodedInputStream.newInstance(bytes));
        } catch (IOException e) {
            throw new SparkplugException("not readable as a Sparkplug B payload: it is cut short, damaged or none", e);
        }
    }

    private static SparkplugPayload payload(CodedInputStream in) throws IOException {
        OptionalLong timestamp = OptionalLong.empty();
        OptionalLong sequence = OptionalLong.empty();
        List<Metric> metrics = new ArrayList<>();
        for (int tag = in.readTag(); tag != 0; tag = in.readTag()) {
            switch (WireFormat.getTagFieldNumber(tag)) {
                case 1 -> timestamp = OptionalLong.of(Fields.varint(in, tag));
                case 2 -> metrics.add(Fields.nested(in, tag, MetricReader::metric));
                case 3 -> sequence = OptionalLong.of(sequence(Fields.varint(in, tag)));
                default -> Fields.skip(in, tag);
            }
            if (metrics.size() > MOST_METRICS) {
                throw new SparkplugException("more than " + MOST_METRICS + " metrics in one payload");
            }
        }
        return new SparkplugPayload(timestamp, sequence, metrics);
    }

    private static long sequence(long number) {
        if (number < 0 || number > HIGHEST_SEQUENCE) {
            throw new SparkplugException("the sequence number is not 0 to 255");
        }
        return number;
    }
}
