package bagward.site;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.util.Optional;

/** Writes what may be missing as its value or as null. */
final class OptionalWriter extends StdSerializer<Optional<?>> {
    private static final long serialVersionUID = 1L;

    OptionalWriter() {
        super(Optional.class, true);
    }

    @Override
    public void serialize(Optional<?> value, JsonGenerator json, SerializerProvider provider) throws IOException {
        if (value.isPresent()) {
            provider.defaultSerializeValue(value.get(), json);
        } else {
            json.writeNull();
        }
    }
}
