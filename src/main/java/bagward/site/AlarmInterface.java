package bagward.site;

import bagward.alarm.AlarmKey;
import bagward.alarm.RuleId;
import bagward.alarm.Subject;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import bagward.site.api.DoneAnswer;
import bagward.site.api.FaultsAnswer;
import bagward.site.form.AlarmActEntry;
import bagward.site.form.Fields;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Lets other programs confirm alarms, put them aside and bring them back. */
final class AlarmInterface {
    private static final String ACTS = "must be seen, shelve, take-off or bring-back";

    private final JsonAnswers json = new JsonAnswers();
    private final JsonMapper mapper = JsonMapper.builder().build();
    private final Pages pages;

    AlarmInterface(Pages pages) {
        this.pages = pages;
    }

    void addTo(RoutesConfig routes) {
        routes.post("/api/alarms", this::enter);
    }

    private void enter(Context ctx) {
        try {
            json.answer(ctx, new DoneAnswer(done(fields(ctx))));
        } catch (RefusedInputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            json.answer(ctx, new FaultsAnswer(refused.faults()));
        }
    }

    private boolean done(Fields fields) {
        Optional<RuleId> rule = fields.needed("rule", RuleId::new);
        Optional<Subject> subject = fields.needed("subject", Subject::parse);
        String by = fields.neededText("by", NameCookie.LONGEST);
        if (by.chars().anyMatch(Character::isISOControl)) {
            fields.refuse("by", "a name has no line breaks");
        }
        String act = fields.sent("do");
        if (act.equals("seen")) {
            fields.check();
            AlarmKey key = new AlarmKey(rule.orElseThrow(), subject.orElseThrow());
            return !pages.watch().acknowledge(Set.of(key), by).isEmpty();
        }
        AlarmKey key = new AlarmKey(
                rule.orElseGet(() -> new RuleId("unknown")), subject.orElseGet(() -> new Subject.OfSystem("")));
        pages.watch().act(AlarmActEntry.read(act, key, by, fields, pages.now()).orElseThrow(() -> unknown(act)));
        return true;
    }

    private static RefusedInputException unknown(String act) {
        return new RefusedInputException(List.of(Fault.of("do", act, ACTS)));
    }

    private Fields fields(Context ctx) {
        Map<String, List<String>> sent = new HashMap<>();
        object(ctx.body())
                .properties()
                .forEach(field ->
                        sent.put(field.getKey(), List.of(field.getValue().asText())));
        return new Fields(sent, pages.watch().board().zone(), pages.now());
    }

    private JsonNode object(String text) {
        try {
            JsonNode tree = mapper.readTree(text);
            if (tree.isObject()) {
                return tree;
            }
        } catch (JsonProcessingException noJson) {
            throw new RefusedInputException(
                    List.of(Fault.of("body", "", "is no JSON: " + noJson.getOriginalMessage())));
        }
        throw new RefusedInputException(List.of(Fault.of("body", "", "must be a JSON object")));
    }
}
