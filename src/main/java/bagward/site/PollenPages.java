package bagward.site;

import bagward.bag.Line;
import bagward.board.Board;
import bagward.fault.ImpossibleValueException;
import bagward.fault.RefusedInputException;
import bagward.pollen.PollenEntry;
import bagward.pollen.PollenReport;
import bagward.pollen.Predictor;
import bagward.pollen.Relation;
import bagward.pollen.ScoreRow;
import bagward.pollen.TakenScore;
import bagward.site.form.Entered;
import bagward.site.form.Fields;
import bagward.site.form.PollenForm;
import bagward.site.page.BagPage.Choice;
import bagward.site.page.PollenPage;
import bagward.site.view.Words;
import bagward.station.House;
import bagward.station.HouseId;
import bagward.watch.PollenWatch;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The page on pollen, its table as a file, and what is entered on it. */
final class PollenPages {
    private final Pages pages;
    private final PollenWatch pollen;

    PollenPages(Pages pages, PollenWatch pollen) {
        this.pages = pages;
        this.pollen = pollen;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/pollen", ctx -> show(ctx, fresh()));
        routes.get("/pollen.csv", this::table);
        routes.post("/pollen/score", ctx -> enter(ctx, "score", Notice.POLLEN_SCORE));
        routes.post("/pollen/withdraw", ctx -> enter(ctx, "withdraw", Notice.POLLEN_WITHDRAWN));
    }

    private Entered fresh() {
        return Entered.fresh(Map.of("at", Words.field(pages.now(), board().zone())));
    }

    private void show(Context ctx, Entered entered) {
        House house = house(ctx);
        Optional<Line> line = line(ctx);
        Predictor predictor = Optional.ofNullable(ctx.queryParam("against"))
                .flatMap(Predictor::find)
                .orElse(Predictor.LIGHT_TO_SCORE);
        PollenReport report = report(house.id(), line, predictor);
        Relation light = predictor == Predictor.LIGHT_TO_SCORE
                ? report.relation()
                : report(house.id(), line, Predictor.LIGHT_TO_SCORE).relation();
        PollenView view = new PollenView(report, light);
        PollenPage page = new PollenPage(
                houses(),
                house.id().value(),
                house.name(),
                view.today(),
                view.days(),
                view.together(),
                view.past(),
                view.recent(),
                new PollenPage.Asked(line.map(Line::name).orElse(""), lines(house.id()), predictor.key(), predictors()),
                entered);
        pages.show(ctx, "pollen", "Pollen", page);
    }

    private void table(Context ctx) {
        House house = house(ctx);
        List<ScoreRow> rows =
                report(house.id(), line(ctx), Predictor.LIGHT_TO_SCORE).rows();
        PollenTable.answer(ctx, "pollen-" + house.id() + ".csv", rows);
    }

    private void enter(Context ctx, String form, Notice notice) {
        Fields fields = new Fields(ctx.formParamMap(), board().zone(), pages.now());
        try {
            String by = Worker.name(ctx, fields);
            PollenEntry entry = form.equals("score")
                    ? PollenForm.score(fields, by, pages.now())
                    : PollenForm.withdrawal(fields, by);
            pollen.enter(List.of(entry));
            ctx.redirect("/pollen?house=" + entry.house() + "&done=" + notice.key(), HttpStatus.SEE_OTHER);
        } catch (RefusedInputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, Refusals.entered(form, fields, refused));
        }
    }

    private PollenReport report(HouseId house, Optional<Line> line, Predictor predictor) {
        return pollen.report(house, line, predictor).orElseThrow(NotFoundResponse::new);
    }

    /** The house of the address or of the form that was sent; the first one if none is named. */
    private House house(Context ctx) {
        String named = Optional.ofNullable(ctx.queryParam("house"))
                .or(() -> Optional.ofNullable(ctx.formParam("house")))
                .orElse("");
        List<House> houses = board().houses().stream().map(view -> view.house()).toList();
        return houses.stream()
                .filter(h -> named.isEmpty() || h.id().value().equals(named))
                .findFirst()
                .orElseThrow(NotFoundResponse::new);
    }

    private static Optional<Line> line(Context ctx) {
        try {
            return Optional.ofNullable(ctx.queryParam("line"))
                    .map(String::strip)
                    .filter(name -> !name.isEmpty())
                    .map(Line::new);
        } catch (ImpossibleValueException noLine) {
            throw new NotFoundResponse();
        }
    }

    private List<Choice> houses() {
        return board().houses().stream()
                .map(view -> new Choice(view.house().id().value(), view.house().name()))
                .toList();
    }

    private List<String> lines(HouseId house) {
        return pollen.scores().stream()
                .filter(score -> score.house().equals(house))
                .map(TakenScore::line)
                .flatMap(Optional::stream)
                .map(Line::name)
                .distinct()
                .sorted()
                .toList();
    }

    private static List<Choice> predictors() {
        return Arrays.stream(Predictor.values())
                .map(p -> new Choice(p.key(), p.words() + ", " + p.unit()))
                .toList();
    }

    private Board board() {
        return pages.watch().board();
    }
}
