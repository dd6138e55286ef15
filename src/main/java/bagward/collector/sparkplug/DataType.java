package bagward.collector.sparkplug;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Data types of metrics that can be numbers (Sparkplug 3.0, chapter 6.4.16), with their codes. */
enum DataType {
    /** Not said. */
    UNKNOWN(0, 0, false),
    INT8(1, 8, true),
    INT16(2, 16, true),
    INT32(3, 32, true),
    INT64(4, 64, true),
    UINT8(5, 8, false),
    UINT16(6, 16, false),
    UINT32(7, 32, false),
    UINT64(8, 64, false),
    FLOAT(9, 0, false),
    DOUBLE(10, 0, false),
    STRING(12, 0, false),
    TEXT(14, 0, false),
    /** Any other: no number. */
    OTHER(-1, 0, false);

    private static final double TWO_TO_64 = 0x1p64;

    private final int code;
    private final int width;
    private final boolean signed;

    DataType(int code, int width, boolean signed) {
        this.code = code;
        this.width = width;
        this.signed = signed;
    }

    static DataType of(OptionalInt code) {
        return Arrays.stream(values())
                .filter(type -> type.code == code.orElse(UNKNOWN.code))
                .findFirst()
                .orElse(OTHER);
    }

    /**
     * The number that a value of this type is; empty if it is none, but a text that may be read as one.
     *
     * @throws SparkplugException if value and type do not fit together, or it is no number
     */
    OptionalDouble number(MetricValue value) {
        if (value instanceof MetricValue.Whole whole && width > 0) {
            return OptionalDouble.of(whole(whole.bits()));
        }
        if (value instanceof MetricValue.Real real && (this == FLOAT || this == DOUBLE || this == UNKNOWN)) {
            return OptionalDouble.of(real.number());
        }
        if (value instanceof MetricValue.Text && (this == STRING || this == TEXT || this == UNKNOWN)) {
            return OptionalDouble.empty();
        }
        if (value instanceof MetricValue.NoNumber other) {
            throw new SparkplugException("is " + other.what() + ", not a number");
        }
        throw new SparkplugException(
                this == UNKNOWN
                        ? "has no data type, and no birth said it"
                        : "has the data type " + name() + " but another kind of value");
    }

    /**
     * Whole numbers travel unsigned in 32 or 64 bits. The standard does not say how a negative one gets there; encoders
     * send it in two's complement, of the width of the type or of the field (observed with Eclipse Tahu 1.0.17).
     */
    private double whole(long bits) {
        if (width == Long.SIZE) {
            return signed || bits >= 0 ? bits : bits + TWO_TO_64;
        }
        long mask = (1L << width) - 1;
        long highest = signed ? mask >> 1 : mask;
        boolean negative = signed && ((bits > highest && bits <= mask) || extended(bits, mask));
        if (negative) {
            return (bits & mask) - (mask + 1);
        }
        if (bits < 0 || bits > highest) {
            throw new SparkplugException("is " + Long.toUnsignedString(bits) + ", which is no " + name());
        }
        return bits;
    }

    /** Whether bits are a negative number of this width, spread to 32 or 64 bits. */
    private static boolean extended(long bits, long mask) {
        long upper = ~(mask >> 1);
        return (bits & upper) == upper || (bits & upper) == (upper & 0xFFFF_FFFFL);
    }
}
