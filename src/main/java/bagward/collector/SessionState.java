package bagward.collector;

/**
 * How one session at the broker is.
 *
 * @param name what it is for
 * @param clientId its name at the broker
 * @param connected whether it is connected
 * @param waiting messages that arrived by it and are not committed yet
 */
public record SessionState(String name, String clientId, boolean connected, int waiting) {}
