package bagward.site;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The Chromium of the system; nothing is downloaded. */
final class SystemChromium {
    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");

    private SystemChromium() {}

    static Browser launch(Playwright playwright) {
        if (!Files.isExecutable(CHROMIUM)) {
            throw new AssertionError(CHROMIUM + " is missing: install the Debian package chromium");
        }
        return playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(CHROMIUM)
                        .setArgs(List.of("--no-sandbox", "--headless")));
    }
}
