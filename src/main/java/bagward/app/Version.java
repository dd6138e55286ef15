package bagward.app;

import java.util.Objects;
import picocli.CommandLine;

/** Version of the program, from its manifest. */
final class Version implements CommandLine.IVersionProvider {
    /** The version; "unpacked" when run from classes. */
    static String text() {
        return Objects.requireNonNullElse(Version.class.getPackage().getImplementationVersion(), "unpacked");
    }

    @Override
    public String[] getVersion() {
        return new String[] {"Bagward " + text(), "Java " + Runtime.version()};
    }
}
