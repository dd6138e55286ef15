package bagward.site.api;

import bagward.fault.Fault;
import java.util.List;

/**
 * Why something that was sent was refused.
 *
 * @param faults every fault
 */
public record FaultsAnswer(List<Fault> faults) {
    /** Copies the list. */
    public FaultsAnswer {
        faults = List.copyOf(faults);
    }
}
