package bagward.store;

import java.io.Reader;
import java.io.StringReader;
import org.flywaydb.core.api.resource.LoadableResource;

/** The text of one migration. */
final class Script extends LoadableResource {
    private final String name;
    private final String text;

    Script(String name, String text) {
        this.name = name;
        this.text = text;
    }

    @Override
    public Reader read() {
        return new StringReader(text);
    }

    @Override
    public String getAbsolutePath() {
        return name;
    }

    @Override
    public String getAbsolutePathOnDisk() {
        return name;
    }

    @Override
    public String getFilename() {
        return name;
    }

    @Override
    public String getRelativePath() {
        return name;
    }
}
