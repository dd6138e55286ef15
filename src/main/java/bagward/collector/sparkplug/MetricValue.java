package bagward.collector.sparkplug;

/** What the value field of a metric holds. */
sealed interface MetricValue {
    /** {@code int_value} or {@code long_value}: bits, whose meaning is a matter of the data type. */
    record Whole(long bits) implements MetricValue {}

    /** {@code double_value}, or {@code float_value} as the shortest decimal number that is this float. */
    record Real(double number) implements MetricValue {
        static Real ofFloat(float number) {
            return new Real(Double.parseDouble(Float.toString(number)));
        }
    }

    /** {@code string_value}. */
    record Text(String text) implements MetricValue {}

    /** {@code boolean_value}, bytes, data sets, templates: never a reading. */
    record NoNumber(String what) implements MetricValue {}
}
