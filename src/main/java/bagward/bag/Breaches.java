package bagward.bag;

import java.util.ArrayList;
import java.util.List;

/** The breaches of rules that one fold finds. Confined to one fold. */
final class Breaches {
    private final List<Breach> all = new ArrayList<>();

    /**
     * Notes one.
     *
     * @param against the other change it collides with; the change itself if there is none
     * @param remedy what to do, without its full stop; may be empty
     */
    void add(RegisterChange change, RegisterChange against, String field, Object found, String rule, String remedy) {
        String help = remedy.isEmpty() ? "" : remedy + ".";
        all.add(new Breach(change, against, field, found.toString(), rule, help));
    }

    int count() {
        return all.size();
    }

    List<Breach> all() {
        return List.copyOf(all);
    }
}
