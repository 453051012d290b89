package org.misecue.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/**
 * A real browser for tests: Debian's Chromium where it is installed. Without it such tests are skipped, and say why; with
 * {@code -Dmisecue.require.browser=true} they fail.
 */
public final class InBrowser {

    private static final List<Path> PLACES = Stream.of(
                    "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
            .map(Path::of)
            .toList();

    private static Playwright playwright;
    private static Browser browser;

    private InBrowser() {}

    private static synchronized Browser browser() {
        if (browser == null) {
            Path program =
                    PLACES.stream().filter(Files::isExecutable).findFirst().orElse(null);
            if (program == null && !Boolean.getBoolean("misecue.require.browser")) {
                Assumptions.abort("skipped: there is no Chromium (Debian: chromium)");
            }
            assertThat(program)
                    .as("Chromium, which -Dmisecue.require.browser asks for")
                    .isNotNull();
            playwright = Playwright.create(
                    new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
            browser = playwright
                    .chromium()
                    .launch(new BrowserType.LaunchOptions()
                            .setExecutablePath(program)
                            .setArgs(List.of("--no-sandbox", "--autoplay-policy=no-user-gesture-required")));
            Runtime.getRuntime().addShutdownHook(new Thread(() -> playwright.close()));
        }
        return browser;
    }

    /** A window of a laptop that has come in with the desk's key. */
    public static Page page(OpenDesk desk) {
        return page(desk, new Browser.NewContextOptions().setViewportSize(1280, 800));
    }

    /** A phone that is 360 px wide and is touched. */
    public static Page phone(OpenDesk desk) {
        return page(
                desk,
                new Browser.NewContextOptions()
                        .setViewportSize(360, 740)
                        .setHasTouch(true)
                        .setIsMobile(true)
                        .setDeviceScaleFactor(2));
    }

    /** In the dark. */
    public static Page dark(OpenDesk desk) {
        return page(
                desk, new Browser.NewContextOptions().setViewportSize(1280, 800).setColorScheme(ColorScheme.DARK));
    }

    /** Close its context when done: {@code page.context().close()}. */
    public static Page page(OpenDesk desk, Browser.NewContextOptions options) {
        Page page = stranger(options);
        page.navigate(desk.address());
        return page;
    }

    /** A browser that has not been at any desk. */
    public static Page stranger(Browser.NewContextOptions options) {
        BrowserContext context = browser().newContext(options);
        context.setDefaultTimeout(30_000);
        return context.newPage();
    }

    /** By axe-core: nothing that is serious or critical under WCAG 2.2 A and AA. */
    public static void assertUsableByAll(Page page) {
        List<String> found = new AxeBuilder(page)
                        .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"))
                        .analyze()
                        .getViolations()
                        .stream()
                        .filter(rule -> Set.of("serious", "critical").contains(rule.getImpact()))
                        .map(InBrowser::line)
                        .toList();
        assertThat(found).isEmpty();
    }

    private static String line(Rule rule) {
        return rule.getId() + ": " + rule.getHelp() + " "
                + rule.getNodes().get(0).getHtml();
    }

    /** Nothing sticks out to the side: people scroll down only. */
    public static void assertNoSidewaysScrolling(Page page) {
        assertThat(page.evaluate("document.documentElement.scrollWidth <= document.documentElement.clientWidth"))
                .as("the page is not wider than the window")
                .isEqualTo(true);
    }

    /** Keeps a picture where {@code -Dmisecue.pictures=FOLDER} says so, to be looked at. */
    public static void picture(Page page, String name) {
        String folder = System.getProperty("misecue.pictures");
        if (folder != null) {
            page.screenshot(new Page.ScreenshotOptions()
                    .setPath(Path.of(folder, name + ".png"))
                    .setFullPage(true));
        }
    }
}
