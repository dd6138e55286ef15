package bagward.site;

import bagward.bag.BagCsv;
import bagward.bag.RegisterChange;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import bagward.site.form.Fields;
import bagward.site.page.ImportPage;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes a file of bags: all of it, or nothing and every fault. */
final class ImportPages {
    private static final Pattern CHANGE = Pattern.compile("change (\\d+), (.*)");

    private final Pages pages;

    ImportPages(Pages pages) {
        this.pages = pages;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/import", ctx -> show(ctx, new ImportPage("", "", List.of())));
        routes.post("/import", this::enter);
    }

    private void enter(Context ctx) {
        Map<String, List<String>> sent = ctx.formParamMap();
        Fields fields = new Fields(sent, pages.watch().board().zone(), pages.now());
        String text =
                UploadedText.of(ctx, "file").orElseGet(() -> String.join("", sent.getOrDefault("text", List.of())));
        List<RegisterChange> changes = new ArrayList<>();
        try {
            String by = Worker.name(ctx, fields);
            fields.check();
            changes.addAll(new BagCsv(pages.watch().board().zone()).read(text));
            checkFuture(changes);
            pages.watch().change(List.copyOf(changes), by);
            ctx.redirect("/heads?done=" + Notice.IMPORT.key(), HttpStatus.SEE_OTHER);
        } catch (RefusedInputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            List<Fault> faults =
                    refused.faults().stream().map(f -> named(f, changes)).toList();
            show(ctx, new ImportPage(text, fields.sent("by"), faults));
        }
    }

    private void checkFuture(List<RegisterChange> changes) {
        List<Fault> faults = changes.stream()
                .filter(c -> c.at().isAfter(pages.now()))
                .map(c -> Fault.of(
                        "head " + c.tag() + ", time",
                        c.at().toString(),
                        "this lies in the future: enter what was done, not what is planned"))
                .toList();
        if (!faults.isEmpty()) {
            throw new RefusedInputException(faults);
        }
    }

    private static Fault named(Fault fault, List<RegisterChange> changes) {
        Matcher change = CHANGE.matcher(fault.place());
        if (!change.matches() || changes.isEmpty()) {
            return fault;
        }
        String tag = changes.get(Integer.parseInt(change.group(1)) - 1).tag().value();
        return new Fault("head " + tag + ", " + change.group(2), fault.found(), fault.rule(), fault.remedy());
    }

    private void show(Context ctx, ImportPage page) {
        pages.show(ctx, "import", "Import bags", page);
    }
}
