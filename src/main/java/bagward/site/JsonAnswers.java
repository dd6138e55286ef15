package bagward.site;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import io.javalin.http.Context;

/** Answers for other programs. Safe for use by several threads. */
final class JsonAnswers {
    private static final String JSON = "application/json; charset=utf-8";

    private final JsonMapper mapper = JsonMapper.builder()
            .addModule(new JavaTimeModule())
            .addModule(new SimpleModule().addSerializer(new OptionalWriter()))
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            .build();

    /** Answers with a record, or a list of them. */
    void answer(Context ctx, Object body) {
        try {
            ctx.contentType(JSON).header("Cache-Control", "no-store").result(mapper.writeValueAsBytes(body));
        } catch (JsonProcessingException defect) {
            throw new IllegalStateException("an answer record cannot be written", defect);
        }
    }
}
