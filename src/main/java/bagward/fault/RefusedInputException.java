package bagward.fault;

import java.util.List;
import java.util.stream.Collectors;

/** An input (configuration, import file, form) was refused whole; it carries every fault that was found. */
public final class RefusedInputException extends BagwardException {
    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    /** @param faults all faults, at least one, in the order of the input */
    public RefusedInputException(List<Fault> faults) {
        super(faults.stream().map(Fault::sentence).collect(Collectors.joining(System.lineSeparator())), null);
        this.faults = List.copyOf(faults);
    }

    /** Every fault in the order of the input. */
    public List<Fault> faults() {
        return faults;
    }
}
