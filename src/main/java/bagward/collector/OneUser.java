package bagward.collector;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Set;
import org.apache.activemq.artemis.core.security.CheckType;
import org.apache.activemq.artemis.core.security.Role;
import org.apache.activemq.artemis.spi.core.security.ActiveMQSecurityManager;
import org.jspecify.annotations.Nullable;

/** Lets in whoever knows the one user name and password. */
final class OneUser implements ActiveMQSecurityManager {
    private final Credentials known;

    OneUser(Credentials known) {
        this.known = known;
    }

    /** May do all that MQTT can; nothing of management. */
    static Role role() {
        return new Role("station", true, true, true, true, true, true, false, true, true, true, false, false);
    }

    @Override
    public boolean validateUser(@Nullable String user, @Nullable String password) {
        if (user == null || password == null) {
            return false;
        }
        // both are compared, so that the time tells nothing about which of them is wrong
        boolean rightUser = same(user, known.user());
        boolean rightPassword = same(password, known.password());
        return rightUser && rightPassword;
    }

    @Override
    public boolean validateUserAndRole(
            @Nullable String user, @Nullable String password, Set<Role> roles, CheckType checkType) {
        return checkType != CheckType.MANAGE && validateUser(user, password);
    }

    private static boolean same(String given, String wanted) {
        return MessageDigest.isEqual(given.getBytes(StandardCharsets.UTF_8), wanted.getBytes(StandardCharsets.UTF_8));
    }
}
