package bagward.site;

import bagward.bag.BagMaterial;
import bagward.bag.Head;
import bagward.bag.HeadState;
import bagward.bag.TagCode;
import bagward.board.BagView;
import bagward.board.Board;
import bagward.board.SensorView;
import bagward.fault.ImpossibleValueException;
import bagward.mould.Crop;
import bagward.site.form.Entered;
import bagward.site.page.BagPage;
import bagward.site.page.BagPage.Choice;
import bagward.site.page.LotActions;
import bagward.site.view.DeletedReadings;
import bagward.site.view.LotSheet;
import bagward.site.view.UsedBagSheet;
import bagward.site.view.Warmth;
import bagward.site.view.Words;
import bagward.watch.LotBook;
import bagward.watch.Seasons;
import bagward.watch.Watch;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The page of a head. */
final class HeadPages {
    private final Pages pages;
    private final SiteSettings settings;
    private final Seasons seasons;
    private final LotBook lots;

    HeadPages(Pages pages, SiteSettings settings, Seasons seasons, LotBook lots) {
        this.pages = pages;
        this.settings = settings;
        this.seasons = seasons;
        this.lots = lots;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/bag/{tag}", this::bag);
        routes.get("/find", this::find);
    }

    private void find(Context ctx) {
        String typed = Optional.ofNullable(ctx.queryParam("tag")).orElse("");
        Optional<Head> head = tag(typed).flatMap(t -> pages.watch().register().find(t));
        ctx.redirect(head.map(h -> "/bag/" + h.tag()).orElse("/heads?done=" + Notice.NO_HEAD.key()));
    }

    private void bag(Context ctx) {
        Head head = head(ctx);
        show(ctx, head, Entered.fresh(Map.of("at", Words.field(pages.now(), board().zone()))));
    }

    /** Answers with the page of a head and what was entered on it. */
    void show(Context ctx, Head head, Entered entered) {
        Watch watch = pages.watch();
        boolean whole = "all".equals(ctx.queryParam("days"));
        BagPage page = BagPage.of(
                board(),
                head,
                crop(head),
                watch.history(head.tag()),
                settings.dampLimitPercent(),
                whole,
                actions(head, entered));
        LocalDate today = pages.now().atZone(board().zone()).toLocalDate();
        BagPage warm =
                Warmth.of(head, seasons, today, board().zone()).map(page::with).orElse(page);
        BagPage told = DeletedReadings.of(head, seasons.keptSince(), board().zone())
                .map(warm::with)
                .orElse(warm);
        Optional<LotSheet> lot = lots.course(head).map(course -> LotSheet.of(head, course, board()));
        Optional<UsedBagSheet> used = lots.usedBag(head).map(b -> UsedBagSheet.of(b, board().zone()));
        pages.show(ctx, "bag", "Head " + head.tag(), told.with(lot, used));
    }

    private Optional<String> crop(Head head) {
        return head.crop()
                .map(id -> settings.crops().stream()
                        .filter(crop -> crop.id().equals(id))
                        .findFirst()
                        .map(Crop::name)
                        .orElse(id.value()));
    }

    /** The head of the address. */
    Head head(Context ctx) {
        return tag(ctx.pathParam("tag"))
                .flatMap(t -> pages.watch().register().find(t))
                .orElseThrow(NotFoundResponse::new);
    }

    private static Optional<TagCode> tag(String typed) {
        try {
            return Optional.of(new TagCode(typed.strip().toUpperCase(Locale.ROOT)));
        } catch (ImpossibleValueException noTag) {
            return Optional.empty();
        }
    }

    private BagPage.Actions actions(Head head, Entered entered) {
        HeadState state = head.stateAt(pages.now());
        Optional<BagView> bag = board().find(head.tag());
        return new BagPage.Actions(
                state == HeadState.BAGGED,
                head.ending().isEmpty(),
                bag.flatMap(BagView::lentSensor),
                spare(),
                materials(settings.materials()),
                BagPage.newestMaterial(head),
                BagPage.FlowerNote.of(head, board().zone()),
                LotActions.of(head, board()),
                entered);
    }

    private List<Choice> spare() {
        return board().sensors().stream()
                .filter(v -> v.sensor().spare() && v.lentTo().isEmpty())
                .map(SensorView::sensor)
                .map(s -> new Choice(s.id().value(), s.name()))
                .toList();
    }

    static List<Choice> materials(List<BagMaterial> materials) {
        return materials.stream().map(m -> Choice.of(m.id(), m.name())).toList();
    }

    private Board board() {
        return pages.watch().board();
    }
}
