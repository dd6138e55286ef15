package bagward.site;

import bagward.site.form.Fields;
import io.javalin.http.Context;
import java.util.Optional;

/** Finds out who makes an entry: the name in the form, else the name that the device keeps. */
final class Worker {
    private Worker() {}

    /** The name, kept on the device from now on if it was typed; a missing one is noted as a fault. */
    static String name(Context ctx, Fields fields) {
        String typed = fields.text("by", NameCookie.LONGEST);
        boolean fits = typed.length() <= NameCookie.LONGEST && typed.chars().noneMatch(Character::isISOControl);
        if (!typed.isEmpty() && fits) {
            NameCookie.write(ctx, typed);
            return typed;
        }
        Optional<String> kept = NameCookie.read(ctx);
        if (typed.isEmpty() && kept.isEmpty()) {
            fields.refuse("by", "say who you are");
        } else if (!fits) {
            fields.refuse("by", "a name is needed, without line breaks");
        }
        return kept.orElse("");
    }
}
