package bagward.collector;

/**
 * A user of a broker.
 *
 * @param user name
 * @param password password; never shown
 */
public record Credentials(String user, String password) {
    @Override
    public String toString() {
        return user + " (password not shown)";
    }
}
