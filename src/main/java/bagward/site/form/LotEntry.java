package bagward.site.form;

import bagward.bag.DryingStep;
import bagward.bag.MeasuredMoisture;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.bag.UsedBefore;
import bagward.fault.ImpossibleValueException;
import bagward.station.HouseId;
import java.time.Instant;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Reads what was done to a seed lot, and what is said of a used bag, from forms. */
final class LotEntry {
    private static final String ELSEWHERE = "elsewhere";
    private static final int LONGEST_NOTE = 200;
    private static final int LONGEST_METHOD = 100;

    private LotEntry() {}

    static Optional<RegisterChange> hangToDry(TagCode tag, Instant at, Fields fields) {
        Optional<String> place = fields.needed("place", text -> text);
        Optional<HouseId> house =
                place.filter(text -> !text.equals(ELSEWHERE)).flatMap(text -> fields.needed("place", HouseId::new));
        return Optional.of(new RegisterChange.HangToDry(tag, at, house));
    }

    static Optional<RegisterChange> pack(TagCode tag, Instant at, Fields fields) {
        String note = fields.text("note", LONGEST_NOTE);
        String method = fields.text("method", LONGEST_METHOD);
        if (!method.isEmpty() && fields.sent("moisture").isEmpty()) {
            fields.refuse("moisture", "the method needs the moisture that was measured");
        }
        Optional<MeasuredMoisture> moisture =
                fields.optional("moisture", text -> MeasuredMoisture.of(percent(text), method));
        return Optional.of(new RegisterChange.Pack(tag, at, note, moisture));
    }

    /** An entry is named by its step and the time that it was made for. */
    static Optional<RegisterChange> withdrawn(TagCode tag, Fields fields) {
        Optional<Instant> entered = fields.needed("entered", HeadEntry::instant);
        Optional<DryingStep> step = fields.needed("step", LotEntry::step);
        fields.check();
        return Optional.of(new RegisterChange.WithdrawDrying(tag, entered.orElseThrow(), step.orElseThrow()));
    }

    /** Where a bag was used before; empty if nothing is said of it. */
    static Optional<UsedBefore> before(Fields fields) {
        Optional<TagCode> head = fields.optional("bag_before", text -> new TagCode(text.toUpperCase(Locale.ROOT)));
        Optional<Instant> off =
                fields.sent("bag_before_off").isEmpty() ? Optional.empty() : fields.time("bag_before_off");
        if (off.isPresent() && fields.sent("bag_before").isEmpty()) {
            fields.refuse("bag_before", "name the head from which it came off then");
        }
        return head.map(tag -> new UsedBefore(tag, off));
    }

    private static double percent(String text) {
        try {
            return Double.parseDouble(text.replace(',', '.'));
        } catch (NumberFormatException noNumber) {
            throw new ImpossibleValueException("a number is needed, in percent of the moist seed, such as 7.5");
        }
    }

    private static DryingStep step(String text) {
        return Arrays.stream(DryingStep.values())
                .filter(step -> step.name().equals(text))
                .findFirst()
                .orElseThrow(() -> new ImpossibleValueException("there is no such step"));
    }
}
