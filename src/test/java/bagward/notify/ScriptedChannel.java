package bagward.notify;

import bagward.message.ChannelName;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/** A channel that fails as a script says, and notes what it has taken. */
final class ScriptedChannel implements Channel {
    private final List<String> taken = new ArrayList<>();
    private BiFunction<Integer, String, @Nullable DeliveryException> script = (call, id) -> null;
    private int calls;

    /** @param failing the failure for the n-th call (from 1) with a parcel; null to take it */
    void script(BiFunction<Integer, String, @Nullable DeliveryException> failing) {
        script = failing;
        calls = 0;
    }

    List<String> taken() {
        return taken;
    }

    int calls() {
        return calls;
    }

    @Override
    public ChannelName name() {
        return Letters.CHANNEL;
    }

    @Override
    public String kind() {
        return "script";
    }

    @Override
    public String address() {
        return "nowhere";
    }

    @Override
    public void hand(Outgoing outgoing) {
        calls++;
        DeliveryException failure = script.apply(calls, outgoing.parcel().id());
        if (failure != null) {
            throw failure;
        }
        taken.add(outgoing.parcel().id());
    }
}
