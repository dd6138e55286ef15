package bagward.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.TagCode;
import bagward.board.Board;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages in a real Chromium. */
class SiteBrowserIT {
    private static final List<String> PAGES = List.of(
            "/",
            "/wall",
            "/bag/L-104",
            "/bag/L-109?days=all",
            "/heads",
            "/put-on",
            "/import",
            "/pollen",
            "/pollen?house=birch",
            "/alarms",
            "/alarms/damp-long/bag%3AL-104",
            "/alarms/journal",
            "/alarms/load",
            "/rehearsal",
            "/deliveries",
            "/answer/" + SampleDeliveries.TOKEN,
            "/season",
            "/drying",
            "/sensors",
            "/quarantine",
            "/health",
            "/sensor/spare-2",
            "/about",
            "/you",
            "/no/such/page");

    private static Playwright playwright;
    private static Browser browser;

    private final OpenSite site = new OpenSite();
    private final List<String> console = new ArrayList<>();
    private BrowserContext context;

    @BeforeAll
    static void open() {
        playwright = Playwright.create();
        browser = SystemChromium.launch(playwright);
    }

    @AfterAll
    static void close() {
        browser.close();
        playwright.close();
    }

    @BeforeEach
    void plainContext() {
        context = browser.newContext();
    }

    @AfterEach
    void closeSite() {
        context.close();
        site.close();
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280, 800", "DARK, 1280, 800", "LIGHT, 390, 844", "DARK, 390, 844"})
    void no_page_breaks_a_rule_of_accessibility(ColorScheme scheme, int width, int height) {
        context.close();
        context = browser.newContext(new Browser.NewContextOptions()
                .setColorScheme(scheme)
                .setBypassCSP(true)
                .setViewportSize(width, height));
        List<String> violations = new ArrayList<>();
        for (String path : PAGES) {
            Page page = visit(path);
            page.evaluate(axe());
            Object found =
                    page.evaluate("async () => (await axe.run({runOnly: ['wcag2a','wcag2aa','wcag21a','wcag21aa',"
                            + "'wcag22aa','best-practice']})).violations.map(v => v.id + ': '"
                            + " + v.nodes.map(n => n.html.slice(0, 160)).slice(0, 2).join(' | '))");
            ((List<?>) found).forEach(v -> violations.add(path + " " + v));
            page.close();
        }
        assertEquals(List.of(), violations);
    }

    @Test
    void no_page_has_anything_that_the_strict_policy_refuses() {
        for (String path : PAGES) {
            Page page = visit(path);
            page.waitForTimeout(200);
            page.close();
        }
        List<String> refused = console.stream().filter(m -> !m.contains("404")).toList();
        assertEquals(List.of(), refused);
    }

    @Test
    void no_page_needs_sideways_scrolling_at_320_pixels() {
        context.close();
        context = browser.newContext(new Browser.NewContextOptions().setViewportSize(320, 640));
        List<String> wide = new ArrayList<>();
        for (String path : PAGES) {
            Page page = visit(path);
            Object width = page.evaluate("() => document.documentElement.scrollWidth");
            if (((Number) width).intValue() > 320) {
                wide.add(path + " is " + width + " wide");
            }
            page.close();
        }
        assertEquals(List.of(), wide);
    }

    @Test
    void an_alarm_is_on_the_wall_within_two_seconds_of_a_new_board() {
        Page page = visit("/wall");
        page.waitForTimeout(1500);
        assertFalse(page.textContent("#round").contains("Long bench · 1D"));
        Board board = site.watch.board();
        site.watch.show(SampleBoard.withAlarm(board, new TagCode("L-128"), SampleStation.DAMP, "damp 5 h"));
        page.waitForFunction(
                "() => document.querySelectorAll('#round li.act').length === 2",
                null,
                new Page.WaitForFunctionOptions().setTimeout(2000));
        assertEquals(2, page.querySelectorAll(".wall-svg .shape.act").size());
    }

    @Test
    void a_lost_link_is_said_plainly() {
        Page page = visit("/wall");
        page.waitForTimeout(500);
        assertFalse(page.isVisible("#link"));
        site.close();
        page.waitForSelector("#link:visible", new Page.WaitForSelectorOptions().setTimeout(25_000));
        assertTrue(page.textContent("#link").startsWith("Link lost"));
        assertEquals(0, linesCut(page));
    }

    @Test
    void a_page_that_is_held_still_does_not_change() {
        Page page = visit("/");
        page.click("button.hold");
        site.wait(Duration.ofMinutes(3));
        site.watch.show(site.watch.board());
        page.waitForTimeout(1500);
        assertTrue(page.textContent("#age").contains("Newest reading 20 s ago"));
        page.click("button.hold");
        page.waitForFunction("() => document.getElementById('age').textContent.includes('Stale')");
    }

    @Test
    void a_person_takes_a_bag_off_with_the_keyboard_alone() {
        Page page = visit("/bag/L-104");
        page.focus("#do-take-off summary");
        page.keyboard().press("Enter");
        page.focus("#take-off-by");
        page.keyboard().type("Ada");
        page.keyboard().press("Enter");
        page.waitForURL("**/bag/L-104?done=take-off");
        assertTrue(page.textContent("main").contains("Taken off"));
        assertEquals(1, site.watch.entries().size());
    }

    @Test
    void letters_of_the_list_on_the_wall_are_as_high_as_the_reading_distance_asks() {
        context.close();
        context = browser.newContext(new Browser.NewContextOptions().setViewportSize(1920, 1080));
        Page page = visit("/wall");
        Object size = page.evaluate(
                "() => parseFloat(getComputedStyle(document.querySelector('.wall-list .where')).fontSize)");
        double least = WallScreen.USUAL.farPercent() / 100 * 1080 * 16 / 20;
        assertTrue(((Number) size).doubleValue() >= least, size + " px, least for 16 minutes of arc is " + least);
    }

    @Test
    void old_data_leaves_whole_lines_on_the_wall_and_counts_those_that_are_not_shown() {
        context.close();
        context = browser.newContext(new Browser.NewContextOptions().setViewportSize(1920, 1080));
        Board board = site.watch.board();
        for (String tag : List.of("L-128", "L-131")) {
            board = SampleBoard.withAlarm(board, new TagCode(tag), SampleStation.DAMP, "damp 5 h");
        }
        site.watch.show(board);
        Page fresh = visit("/wall");
        assertEquals(6, fresh.querySelectorAll("#round li").size());
        assertEquals("and 1 more", fresh.textContent("#round .more"));
        assertEquals(0, linesCut(fresh) + linesOutOfSight(fresh));
        site.wait(Duration.ofMinutes(3));
        Page stale = visit("/wall");
        assertEquals("and 2 more", stale.textContent("#round .more"));
        assertEquals(0, linesCut(stale) + linesOutOfSight(stale));
    }

    /** How many lines of the list, or of what stands under it, are cut off at its lower end. */
    private static int linesCut(Page page) {
        return lines(page, "box.left < list.right && box.bottom > list.bottom + 1");
    }

    private static int linesOutOfSight(Page page) {
        return lines(page, "box.left >= list.right || box.top > list.bottom");
    }

    private static int lines(Page page, String condition) {
        Object lines = page.evaluate("""
                () => {
                  const list = document.querySelector('.wall-list').getBoundingClientRect();
                  return [...document.querySelectorAll('#round li, #round .more')].filter(line => {
                    const box = line.getBoundingClientRect();
                    return %s;
                  }).length;
                }""".formatted(condition));
        return ((Number) lines).intValue();
    }

    private Page visit(String path) {
        Page page = context.newPage();
        page.onConsoleMessage(m -> {
            if (Map.of("error", 1, "warning", 1).containsKey(m.type())) {
                console.add(path + ": " + m.text());
            }
        });
        page.navigate(site.visitor.origin() + path);
        return page;
    }

    private static String axe() {
        try (InputStream script = com.deque.html.axecore.playwright.AxeBuilder.class
                .getClassLoader()
                .getResourceAsStream("axe.min.js")) {
            if (script == null) {
                throw new IllegalStateException("axe.min.js is missing from the class path");
            }
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
