package bagward.site;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** A file that came with a form. */
final class UploadedText {
    private UploadedText() {}

    /** Its text, read as UTF-8; empty if none was chosen, or an empty one. */
    static Optional<String> of(Context ctx, String field) {
        UploadedFile file = ctx.isMultipartFormData() ? ctx.uploadedFile(field) : null;
        if (file == null || file.size() == 0) {
            return Optional.empty();
        }
        try (InputStream stream = file.content()) {
            return Optional.of(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
