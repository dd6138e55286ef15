package bagward.collector.sparkplug;

import bagward.collector.sparkplug.MetricValue.NoNumber;
import bagward.collector.sparkplug.MetricValue.Real;
import bagward.collector.sparkplug.MetricValue.Text;
import bagward.collector.sparkplug.MetricValue.Whole;
import com.google.protobuf.CodedInputStream;
import com.google.protobuf.WireFormat;
import java.io.IOException;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/** Reads one metric, field by field. */
final class MetricReader {
    private static final int LONGEST_NAME = 1000;

    private Optional<String> name = Optional.empty();
    private OptionalLong alias = OptionalLong.empty();
    private OptionalLong timestamp = OptionalLong.empty();
    private OptionalInt datatype = OptionalInt.empty();
    private boolean historical;
    private boolean absent;
    private OptionalLong quality = OptionalLong.empty();
    private Optional<MetricValue> value = Optional.empty();

    private MetricReader() {}

    static Metric metric(CodedInputStream in) throws IOException {
        MetricReader reader = new MetricReader();
        for (int tag = in.readTag(); tag != 0; tag = in.readTag()) {
            reader.field(in, tag);
        }
        return new Metric(
                reader.name,
                reader.alias,
                reader.timestamp,
                reader.datatype,
                reader.historical,
                reader.absent,
                reader.quality,
                reader.value);
    }

    private void field(CodedInputStream in, int tag) throws IOException {
        switch (WireFormat.getTagFieldNumber(tag)) {
            case 1 -> name = Optional.of(named(Fields.text(in, tag)));
            case 2 -> alias = OptionalLong.of(Fields.varint(in, tag));
            case 3 -> timestamp = OptionalLong.of(Fields.varint(in, tag));
            case 4 -> datatype = OptionalInt.of((int) Fields.varint(in, tag));
            case 5 -> historical = Fields.truth(in, tag);
            case 7 -> absent = Fields.truth(in, tag);
            case 9 -> quality = Fields.nested(in, tag, PropertyReader::quality);
            default -> value(in, tag);
        }
    }

    private void value(CodedInputStream in, int tag) throws IOException {
        switch (WireFormat.getTagFieldNumber(tag)) {
            case 10, 11 -> value = Optional.of(new Whole(Fields.varint(in, tag)));
            case 12 -> value = Optional.of(Real.ofFloat(Fields.real32(in, tag)));
            case 13 -> value = Optional.of(new Real(Fields.real64(in, tag)));
            case 14 -> value = other(in, tag, "true or false");
            case 15 -> value = Optional.of(new Text(Fields.text(in, tag)));
            case 16 -> value = other(in, tag, "bytes");
            case 17 -> value = other(in, tag, "a data set");
            case 18 -> value = other(in, tag, "a template");
            default -> Fields.skip(in, tag);
        }
    }

    private static Optional<MetricValue> other(CodedInputStream in, int tag, String what) throws IOException {
        Fields.skip(in, tag);
        return Optional.of(new NoNumber(what));
    }

    private static String named(String name) {
        if (name.length() > LONGEST_NAME) {
            throw new SparkplugException("a metric name of more than " + LONGEST_NAME + " characters");
        }
        return name;
    }
}
