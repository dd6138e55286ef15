package bagward.collector.payload;

import bagward.climate.SensorId;
import bagward.collector.sparkplug.NodeId;
import bagward.units.Quantity;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Gives the decoders very many inputs and looks at each: it is a reading, a reason, or a message of an edge node without
 * either; it takes neither long nor much memory. As a program: {@code FuzzRun <millions> <seed>}.
 */
public final class FuzzRun {
    /** Time of the processor: far above what any input needs, far below what would hold up a station. */
    static final Duration LONGEST = Duration.ofSeconds(2);

    /** What one input may make the decoder allocate, bytes: some hundred times the longest payload. */
    static final long MOST_ALLOCATED = 64L << 20;

    private static final int LONGEST_REASONS = 8000;

    private final MessageDecoder decoder = new MessageDecoder(sources(), Duration.ofMinutes(5));
    private final com.sun.management.ThreadMXBean thread =
            (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
    private long inputs;
    private long readings;
    private long refused;
    private long longestNanos;
    private long mostAllocated;

    private static List<SensorSource> sources() {
        List<Place> places = List.of(
                Place.of(Quantity.TEMPERATURE, "t", MeasureUnit.CELSIUS),
                Place.of(Quantity.HUMIDITY, "h", MeasureUnit.PERCENT_HUMIDITY));
        SparkplugDevice air = new SparkplugDevice(new NodeId("alder", "gateway"), Optional.of("air"), places);
        SparkplugDevice itself = new SparkplugDevice(new NodeId("alder", "gateway"), Optional.empty(), places);
        return List.of(
                source("number", new BareNumber(Place.of(Quantity.TEMPERATURE, "", MeasureUnit.CELSIUS))),
                source(
                        "json",
                        new JsonAt(
                                List.of(
                                        Place.of(Quantity.TEMPERATURE, "/t", MeasureUnit.CELSIUS),
                                        Place.of(Quantity.HUMIDITY, "/h", MeasureUnit.PERCENT_HUMIDITY),
                                        Place.of(Quantity.LIGHT, "/l", MeasureUnit.LUX)),
                                Optional.of(new JsonAt.TimeAt("/at", TimeForm.ISO)))),
                source("senml", new SenMl(places)),
                new SensorSource(new SensorId("air"), air.topics(), air),
                new SensorSource(new SensorId("itself"), itself.topics(), itself));
    }

    private static SensorSource source(String topic, PayloadFormat format) {
        return new SensorSource(new SensorId(topic), new TopicFilter(topic), format);
    }

    /**
     * Decodes so many inputs of a seed.
     *
     * @throws IllegalStateException if one of them breaks a rule; the message says which
     */
    void run(long seed, long many) {
        FuzzInputs generator = new FuzzInputs(seed);
        for (long i = 0; i < many; i++) {
            Message message = generator.next();
            try {
                one(message);
            } catch (RuntimeException | StackOverflowError e) {
                throw new IllegalStateException("seed " + seed + ", input " + i + " on " + message.topic(), e);
            }
        }
    }

    private void one(Message message) {
        long allocated = thread.getCurrentThreadAllocatedBytes();
        long start = thread.getCurrentThreadCpuTime();
        Decoded decoded = decoder.decode(message);
        longestNanos = Math.max(longestNanos, thread.getCurrentThreadCpuTime() - start);
        mostAllocated = Math.max(mostAllocated, thread.getCurrentThreadAllocatedBytes() - allocated);
        inputs++;
        readings += decoded.readings().size();
        refused += decoded.refusals().isEmpty() ? 0 : 1;
        check(message, decoded);
    }

    private void check(Message message, Decoded decoded) {
        must(decoded.known(), "is not known");
        boolean something = !decoded.readings().isEmpty() || !decoded.refusals().isEmpty();
        must(something || message.topic().startsWith("spBv1.0"), "is neither reading nor reason");
        String reasons = String.join("; ", decoded.refusals());
        must(reasons.length() <= LONGEST_REASONS, "has a reason of " + reasons.length() + " characters");
        must(reasons.chars().noneMatch(Character::isISOControl), "has a reason that breaks lines");
        must(longestNanos <= LONGEST.toNanos(), "took " + longestNanos / 1_000_000 + " ms");
        must(mostAllocated <= MOST_ALLOCATED, "allocated " + mostAllocated + " bytes");
    }

    private static void must(boolean held, String otherwise) {
        if (!held) {
            throw new IllegalStateException("the input " + otherwise);
        }
    }

    long readings() {
        return readings;
    }

    long refused() {
        return refused;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%,d inputs: %,d readings, %,d refused; longest input %.1f ms, most allocated %.1f MB",
                inputs,
                readings,
                refused,
                longestNanos / 1e6,
                mostAllocated / 1e6);
    }

    /** Runs so many millions of a seed and prints what was seen. */
    public static void main(String[] arguments) {
        long millions = Long.parseLong(arguments[0]);
        long seed = Long.parseLong(arguments[1]);
        long start = System.nanoTime();
        FuzzRun run = new FuzzRun();
        for (long i = 0; i < millions; i++) {
            run.run(seed + i, 1_000_000);
            System.out.println(run);
        }
        Runtime heap = Runtime.getRuntime();
        System.gc();
        System.out.printf(
                Locale.ROOT,
                "%.0f s, heap afterwards %.0f MB of %.0f MB%n",
                (System.nanoTime() - start) / 1e9,
                (heap.totalMemory() - heap.freeMemory()) / 1e6,
                heap.maxMemory() / 1e6);
    }
}
