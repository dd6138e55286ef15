package bagward.collector.sparkplug;

import com.google.protobuf.CodedInputStream;
import com.google.protobuf.WireFormat;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/** Reads the quality from the properties of a metric: keys and values stand in two lists of the same order. */
final class PropertyReader {
    private static final int MOST = 1000;

    private PropertyReader() {}

    static OptionalLong quality(CodedInputStream in) throws IOException {
        List<String> keys = new ArrayList<>();
        List<OptionalLong> values = new ArrayList<>();
        for (int tag = in.readTag(); tag != 0; tag = in.readTag()) {
            switch (WireFormat.getTagFieldNumber(tag)) {
                case 1 -> keys.add(Fields.text(in, tag));
                case 2 -> values.add(Fields.nested(in, tag, PropertyReader::whole));
                default -> Fields.skip(in, tag);
            }
            if (keys.size() > MOST || values.size() > MOST) {
                throw new SparkplugException("more than " + MOST + " properties of one metric");
            }
        }
        int at = keys.indexOf("Quality");
        return at >= 0 && at < values.size() ? values.get(at) : OptionalLong.empty();
    }

    private static OptionalLong whole(CodedInputStream in) throws IOException {
        OptionalLong value = OptionalLong.empty();
        for (int tag = in.readTag(); tag != 0; tag = in.readTag()) {
            int field = WireFormat.getTagFieldNumber(tag);
            if (field == 3 || field == 4) {
                value = OptionalLong.of(Fields.varint(in, tag));
            } else {
                Fields.skip(in, tag);
            }
        }
        return value;
    }
}
