package bagward.collector.payload;

import bagward.collector.payload.SenMlRecord.Value;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Resolves a SenML pack in JSON (RFC 8428). One use: base fields hold from record to record. */
final class SenMlPack {
    /** Highest version that this reader understands; 10 is that of RFC 8428. */
    static final int VERSION = 10;

    /** Times below 2^28 s count from now, others from 1970 (RFC 8428 section 4.5.3). */
    private static final double FIRST_ABSOLUTE = 1 << 28;

    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9:./_-]*");

    private final Instant now;
    private String baseName = "";
    private double baseTime;
    private Optional<String> baseUnit = Optional.empty();
    private OptionalDouble baseValue = OptionalDouble.empty();
    private OptionalDouble baseSum = OptionalDouble.empty();
    private Optional<Integer> version = Optional.empty();

    private SenMlPack(Instant now) {
        this.now = now;
    }

    /**
     * The resolved records, oldest first; those of the same time in the order of the pack.
     *
     * @param now what relative times count from
     * @throws RefusedPayloadException if the pack breaks a rule of the RFC; none of it may be used then
     */
    static List<SenMlRecord> resolve(JsonNode document, Instant now) {
        if (!document.isArray() || document.isEmpty()) {
            throw new RefusedPayloadException("a SenML pack is a JSON array of records (RFC 8428 section 5)");
        }
        SenMlPack pack = new SenMlPack(now);
        List<SenMlRecord> records = new ArrayList<>();
        int number = 0;
        for (JsonNode object : document) {
            number++;
            pack.take(new SenMlFields(object, number)).ifPresent(records::add);
        }
        records.sort(Comparator.comparing(SenMlRecord::time));
        return records;
    }

    private Optional<SenMlRecord> take(SenMlFields fields) {
        checkVersion(fields);
        baseName = fields.text("bn").orElse(baseName);
        baseTime = fields.number("bt").orElse(baseTime);
        baseUnit = fields.text("bu").or(() -> baseUnit);
        baseValue = newer(fields.number("bv"), baseValue);
        baseSum = newer(fields.number("bs"), baseSum);
        return onlyBase(fields) ? Optional.empty() : Optional.of(record(fields));
    }

    /** A record may carry base fields and nothing else: it sets them for those that follow. */
    private static boolean onlyBase(SenMlFields fields) {
        boolean regular = List.of("n", "u", "v", "vs", "vb", "vd", "s", "t", "ut").stream()
                .anyMatch(fields::has);
        boolean valueBases = fields.has("bv") || fields.has("bs");
        return !regular && !valueBases;
    }

    private void checkVersion(SenMlFields fields) {
        Optional<Integer> stated = fields.version();
        int here = stated.orElse(version.orElse(VERSION));
        if (here > VERSION) {
            throw fields.refusal("has version " + here + ", newer than " + VERSION, "4.4");
        }
        if (version.isPresent() && version.get() != here) {
            throw fields.refusal("changes the version of the pack from " + version.get() + " to " + here, "4.4");
        }
        version = Optional.of(here);
    }

    private SenMlRecord record(SenMlFields fields) {
        String name = baseName + fields.text("n").orElse("");
        if (!NAME.matcher(name).matches()) {
            throw fields.refusal("has the name " + Texts.quoted(name) + " that is empty or not allowed", "4.5.1");
        }
        double time = baseTime + fields.number("t").orElse(0);
        boolean absolute = time >= FIRST_ABSOLUTE;
        return new SenMlRecord(
                name,
                fields.text("u").or(() -> baseUnit),
                value(fields),
                sum(fields),
                absolute ? TimeForm.ofMilliseconds(time * 1000) : fromNow(time),
                absolute,
                fields.number("ut"),
                version.orElse(VERSION));
    }

    private Instant fromNow(double seconds) {
        return TimeForm.ofMilliseconds(now.toEpochMilli() + seconds * 1000);
    }

    private Value value(SenMlFields fields) {
        long given = List.of("v", "vs", "vb", "vd").stream().filter(fields::has).count();
        if (given > 1) {
            throw fields.refusal("has more than one of v, vs, vb, vd", "4.2");
        }
        if (fields.has("vs")) {
            return new Value.Text(fields.text("vs").orElseThrow());
        }
        if (fields.has("vb")) {
            return new Value.Truth(fields.truth("vb"));
        }
        if (fields.has("vd")) {
            return new Value.Data(fields.text("vd").orElseThrow());
        }
        return number(fields);
    }

    private Value number(SenMlFields fields) {
        if (fields.has("v") || baseValue.isPresent()) {
            return new Value.Numeric(total(baseValue, fields.number("v")));
        }
        if (fields.has("s") || baseSum.isPresent()) {
            return new Value.SumOnly();
        }
        throw fields.refusal("has none of v, vs, vb, vd, s", "4.2");
    }

    private OptionalDouble sum(SenMlFields fields) {
        return fields.has("s") || baseSum.isPresent()
                ? OptionalDouble.of(total(baseSum, fields.number("s")))
                : OptionalDouble.empty();
    }

    private static double total(OptionalDouble base, OptionalDouble own) {
        return Numbers.finite(base.orElse(0) + own.orElse(0));
    }

    private static OptionalDouble newer(OptionalDouble here, OptionalDouble before) {
        return here.isPresent() ? here : before;
    }
}
