package bagward.store;

import java.util.Collection;
import java.util.Map;
import java.util.Set;

/**
 * What our clients are subscribed to at brokers, as far as we ever asked. A broker keeps a session and the messages for it
 * until it is told otherwise, whatever the configuration says meanwhile. Safe for use by several threads.
 */
public interface SubscriptionStore {
    /**
     * The filters of each client that has a session at a broker.
     *
     * @param broker what tells this broker from others
     */
    Map<String, Set<String>> held(String broker);

    /**
     * Notes that a client has a session, and filters that are about to be asked for. When it returns, that is on disk.
     *
     * @throws StoreException if it could not be noted
     */
    void hold(String broker, String client, Collection<String> filters);

    /**
     * Forgets filters that were ended at the broker.
     *
     * @throws StoreException if they could not be forgotten
     */
    void letGo(String broker, String client, Collection<String> filters);

    /**
     * Forgets a session that was ended at the broker.
     *
     * @throws StoreException if it could not be forgotten
     */
    void end(String broker, String client);
}
