package bagward.collector.sparkplug;

import com.google.protobuf.CodedInputStream;
import com.google.protobuf.WireFormat;
import java.io.IOException;

/** Fields of protocol buffers, each with the wire type that it must have. */
final class Fields {
    private Fields() {}

    /** Reads one kind of message up to the end of its input. */
    interface Body<T> {
        T read(CodedInputStream in) throws IOException;
    }

    static long varint(CodedInputStream in, int tag) throws IOException {
        expect(tag, WireFormat.WIRETYPE_VARINT);
        return in.readUInt64();
    }

    static boolean truth(CodedInputStream in, int tag) throws IOException {
        expect(tag, WireFormat.WIRETYPE_VARINT);
        return in.readBool();
    }

    static float real32(CodedInputStream in, int tag) throws IOException {
        expect(tag, WireFormat.WIRETYPE_FIXED32);
        return in.readFloat();
    }

    static double real64(CodedInputStream in, int tag) throws IOException {
        expect(tag, WireFormat.WIRETYPE_FIXED64);
        return in.readDouble();
    }

    static String text(CodedInputStream in, int tag) throws IOException {
        expect(tag, WireFormat.WIRETYPE_LENGTH_DELIMITED);
        return in.readStringRequireUtf8();
    }

    static <T> T nested(CodedInputStream in, int tag, Body<T> body) throws IOException {
        expect(tag, WireFormat.WIRETYPE_LENGTH_DELIMITED);
        int outer = in.pushLimit(in.readRawVarint32());
        T read = body.read(in);
        in.popLimit(outer);
        return read;
    }

    /** Passes over a field that is not wanted; groups, which could be nested without end, are not in the schema. */
    static void skip(CodedInputStream in, int tag) throws IOException {
        int type = WireFormat.getTagWireType(tag);
        if (type == WireFormat.WIRETYPE_START_GROUP || type == WireFormat.WIRETYPE_END_GROUP) {
            throw new SparkplugException("a group, which the schema does not have");
        }
        in.skipField(tag);
    }

    private static void expect(int tag, int wireType) {
        if (WireFormat.getTagWireType(tag) != wireType) {
            throw new SparkplugException("field " + WireFormat.getTagFieldNumber(tag) + " has wire type "
                    + WireFormat.getTagWireType(tag) + ", not " + wireType);
        }
    }
}
