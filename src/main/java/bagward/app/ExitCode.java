package bagward.app;

/** How the program ends. */
final class ExitCode {
    /** It did what was asked. */
    static final int DONE = 0;

    /** A defect of the program: please report it with the log. */
    static final int DEFECT = 1;

    /** The command line was wrong. */
    static final int USAGE = 2;

    /** A configuration, seed or recorded file was refused; nothing was started or changed. */
    static final int REFUSED = 3;

    /** A part could not start or stopped working: address in use, store locked, broker out of reach. */
    static final int PART_FAILED = 4;

    private ExitCode() {}
}
