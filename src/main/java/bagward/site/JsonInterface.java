package bagward.site;

import bagward.site.api.BoardAnswer;
import bagward.site.api.HealthAnswer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** What other programs may read: board and health as JSON. Safe for use by several threads. */
final class JsonInterface {
    private static final String JSON = "application/json; charset=utf-8";

    private final JsonMapper mapper = JsonMapper.builder()
            .addModule(new JavaTimeModule())
            .addModule(new SimpleModule().addSerializer(new OptionalWriter()))
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            .build();
    private final Pages pages;

    JsonInterface(Pages pages) {
        this.pages = pages;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/api/board", ctx -> answer(ctx, BoardAnswer.of(pages.watch().board(), pages.now())));
        routes.get("/health", this::health);
    }

    private void health(Context ctx) {
        HealthAnswer health = HealthAnswer.of(pages.watch().health(), pages.now());
        ctx.status(health.well() ? 200 : 503);
        answer(ctx, health);
    }

    private void answer(Context ctx, Object body) {
        try {
            ctx.contentType(JSON).header("Cache-Control", "no-store").result(mapper.writeValueAsBytes(body));
        } catch (JsonProcessingException defect) {
            throw new IllegalStateException("an answer record cannot be written", defect);
        }
    }
}
