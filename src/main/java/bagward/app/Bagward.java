package bagward.app;

/** Entry point. */
public final class Bagward {
    private Bagward() {}

    /** Runs the command line and ends with its exit code. */
    public static void main(String[] args) {
        System.exit(0);
    }
}
