package bagward.site;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.time.Duration;

/** Looks at a page in a real Chromium, for tests of other rooms. */
public final class WallVisitor implements AutoCloseable {
    private final Playwright playwright;
    private final Browser browser;
    private final Page page;

    private WallVisitor(Playwright playwright, Browser browser, Page page) {
        this.playwright = playwright;
        this.browser = browser;
        this.page = page;
    }

    /** Opens a page and waits until it is there. */
    public static WallVisitor open(String address) {
        Playwright playwright = Playwright.create();
        Browser browser = SystemChromium.launch(playwright);
        Page page = browser.newPage();
        page.navigate(address);
        page.waitForSelector("#round");
        return new WallVisitor(playwright, browser, page);
    }

    /** Waits until the list of things to do has something to act on now. */
    public void awaitAct(Duration patience) {
        page.waitForSelector(
                "#round li.act", new Page.WaitForSelectorOptions().setTimeout((double) patience.toMillis()));
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
