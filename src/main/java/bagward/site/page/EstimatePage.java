package bagward.site.page;

import bagward.alarm.Rule;
import bagward.bag.BagFit;
import bagward.bag.BagMaterial;
import bagward.board.BagView;
import bagward.climate.Climate;
import bagward.site.view.Estimate;
import bagward.site.view.Fact;
import java.util.List;
import java.util.Optional;

/**
 * How the climate in a bag comes to be known.
 *
 * @param tag code of the head
 * @param lines house, sun, material, what was learnt, how sure
 * @param fit how its sensor finds it to sit; empty without one
 */
public record EstimatePage(String tag, List<Fact> lines, String fit) {
    /** Copies the list. */
    public EstimatePage {
        lines = List.copyOf(lines);
    }

    /** The page of a bag that is on. */
    public static EstimatePage of(BagView bag, List<BagMaterial> materials, Climate house, List<Rule> rules) {
        Optional<BagMaterial> material = materials.stream()
                .filter(known -> known.id().equals(bag.material()))
                .findFirst();
        return new EstimatePage(
                bag.head().tag().value(),
                Estimate.lines(bag, material, house, rules),
                bag.insight().fit().map(EstimatePage::words).orElse(""));
    }

    private static String words(BagFit fit) {
        String sits = switch (fit.verdict()) {
            case FITS -> "Sits as it should. ";
            case SHUT -> "Has probably fallen shut. ";
            case OFF -> "Is probably off or torn. ";
            case UNKNOWN -> "";
        };
        return sits + fit.because();
    }
}
