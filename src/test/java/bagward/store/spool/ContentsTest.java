package bagward.store.spool;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.climate.Reading;
import bagward.store.Payload;
import bagward.store.Quarantined;
import bagward.store.Samples;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read from a segment, however its file was cut off or damaged. */
class ContentsTest {
    private static final ReadingCodec CODEC = new ReadingCodec();

    private static byte[] segment(List<List<Reading>> batches) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes(Contents.MARK);
        batches.forEach(batch -> bytes.writeBytes(frame(batch)));
        return bytes.toByteArray();
    }

    private static byte[] frame(List<Reading> batch) {
        ByteBuffer frame = new Frame(Samples.START, batch.size(), CODEC.encode(batch)).toBytes();
        byte[] bytes = new byte[frame.remaining()];
        frame.get(bytes);
        return bytes;
    }

    private static List<List<Reading>> batches(Contents contents) {
        return contents.frames().stream().map(f -> CODEC.decode(f.data())).toList();
    }

    private static List<List<Reading>> threeBatches() {
        return List.of(Samples.minutes(0, 3), Samples.minutes(3, 1), Samples.mixed(new Random(4), 9));
    }

    @Test
    void a_segment_cut_off_at_any_byte_gives_the_batches_that_are_whole_and_never_counts_as_damaged() {
        List<List<Reading>> batches = threeBatches();
        byte[] whole = segment(batches);
        for (int length = 0; length <= whole.length; length++) {
            Contents contents = Contents.of(Arrays.copyOf(whole, length));
            int good = contents.frames().size();
            assertEquals(batches.subList(0, good), batches(contents));
            boolean atAnEnd = length == 0 || length == segment(batches.subList(0, good)).length;
            assertEquals(atAnEnd ? Contents.Rest.NONE : Contents.Rest.TORN, contents.rest(), "cut at " + length);
            boolean nextFits = good < 3 && length >= segment(batches.subList(0, good + 1)).length;
            assertEquals(false, nextFits, "a whole batch was not read when cut at " + length);
        }
    }

    @Test
    void zeros_after_the_last_batch_are_a_torn_write() {
        byte[] whole = segment(threeBatches());
        Contents contents = Contents.of(Arrays.copyOf(whole, whole.length + 4096));
        assertEquals(threeBatches(), batches(contents));
        assertEquals(Contents.Rest.TORN, contents.rest());
    }

    @Test
    void any_single_bit_that_flips_is_noticed_and_the_batches_before_it_are_read() {
        List<List<Reading>> batches = threeBatches();
        byte[] whole = segment(batches);
        for (int bit = 0; bit < 8 * whole.length; bit++) {
            byte[] damaged = whole.clone();
            damaged[bit / 8] ^= (byte) (1 << bit % 8);
            Contents contents = Contents.of(damaged);
            int good = contents.frames().size();
            assertEquals(batches.subList(0, good), batches(contents));
            assertEquals(true, contents.rest() != Contents.Rest.NONE, "bit " + bit + " was not noticed");
            assertEquals(true, contents.goodBytes() <= bit / 8, "a damaged batch was taken for whole");
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void random_bytes_give_no_batch_and_no_error(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 2_000; i++) {
            byte[] noise = new byte[random.nextInt(200)];
            random.nextBytes(noise);
            System.arraycopy(Contents.MARK, 0, noise, 0, Math.min(noise.length, Contents.MARK.length));
            assertEquals(List.of(), Contents.of(noise).frames());
        }
    }

    @Test
    void unusable_messages_come_back_as_they_were() {
        QuarantineCodec codec = new QuarantineCodec();
        byte[] payload = {0, (byte) 0xff, 10, 'x'};
        Quarantined message = new Quarantined(Samples.START, "haus/über", Payload.of(payload), "not a number: 'ø'");
        Quarantined back = codec.decode(codec.encode(List.of(message, message))).get(1);
        assertEquals(message.arrivedAt(), back.arrivedAt());
        assertEquals(message.topic(), back.topic());
        assertEquals(message.reason(), back.reason());
        assertEquals(ByteBuffer.wrap(payload), ByteBuffer.wrap(back.payload().toBytes()));
    }
}
