package bagward.store;

import bagward.bag.RegisterChange;
import bagward.bag.RegisterChange.GiveBack;
import bagward.bag.RegisterChange.HangToDry;
import bagward.bag.RegisterChange.Harvest;
import bagward.bag.RegisterChange.Lend;
import bagward.bag.RegisterChange.Lose;
import bagward.bag.RegisterChange.NoteFlowers;
import bagward.bag.RegisterChange.Pack;
import bagward.bag.RegisterChange.PutOn;
import bagward.bag.RegisterChange.Swap;
import bagward.bag.RegisterChange.TakeOff;
import bagward.bag.RegisterChange.WithdrawDrying;
import bagward.bag.RegisterChange.WithdrawFlowers;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Writes register changes as documents; {@link ChangeReading} is its mirror. */
final class ChangeJson {
    private ChangeJson() {}

    /** The document of a change. */
    static String write(RegisterChange change) {
        ObjectNode document;
        if (change instanceof PutOn putOn) {
            document = putOn(putOn);
        } else if (change instanceof Swap swap) {
            document = Json.document("swap").put("material", swap.material().value());
            LotJson.put(document, swap.before());
        } else if (change instanceof TakeOff) {
            document = Json.document("take-off");
        } else if (change instanceof Lend lend) {
            document = Json.document("lend").put("sensor", lend.sensor().value());
        } else if (change instanceof GiveBack back) {
            document = Json.document("give-back").put("sensor", back.sensor().value());
        } else if (change instanceof NoteFlowers note) {
            document = Json.document("note-flowers").put("sign", Words.of(note.sign()));
        } else if (change instanceof WithdrawFlowers withdraw) {
            document = Json.document("withdraw-flowers").put("sign", Words.of(withdraw.sign()));
        } else if (change instanceof Harvest harvest) {
            document = Json.document("harvest").put("note", harvest.note());
        } else if (change instanceof Lose lose) {
            document = Json.document("lose").put("note", lose.note());
        } else if (change instanceof HangToDry hung) {
            document = LotJson.hangToDry(hung);
        } else if (change instanceof Pack pack) {
            document = LotJson.pack(pack);
        } else if (change instanceof WithdrawDrying withdraw) {
            document = Json.document("withdraw-drying").put("step", Words.of(withdraw.step()));
        } else {
            throw new IllegalStateException("no document is known for " + change.getClass());
        }
        return document.put("tag", change.tag().value())
                .put("at", change.at().toString())
                .toString();
    }

    private static ObjectNode putOn(PutOn change) {
        ObjectNode document = Json.document("put-on");
        document.putObject("spot")
                .put("house", change.spot().house().value())
                .put("bay", change.spot().bay().value())
                .put("number", change.spot().number());
        document.put("material", change.material().value())
                .put("seedParent", change.seedParent().name())
                .put("pollenParent", change.pollenParent().name());
        ObjectNode pollination = document.putObject("pollination")
                .put("at", change.pollination().at().toString())
                .put("by", change.pollination().by())
                .put("kind", Words.of(change.pollination().kind()))
                .put("budsOpened", change.pollination().budsOpened());
        change.pollination().score().ifPresent(score -> pollination.put("score", Words.of(score)));
        change.crop().ifPresent(crop -> document.put("crop", crop.value()));
        LotJson.put(document, change.before());
        return document;
    }
}
