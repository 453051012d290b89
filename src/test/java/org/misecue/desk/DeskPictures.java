package org.misecue.desk;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/**
 * Draws the pages of the desk at work over a fresh copy of the sample, as README and guides show them. Run by hand; the folder
 * for the pictures may be named.
 */
public final class DeskPictures {

    private static final int PATIENCE = 120_000;

    /** @param act what somebody does on the page before it is drawn */
    private record Picture(String name, String address, Consumer<Page> act) {}

    private static final String SAMPLE = "e/sample-project/";

    private static final List<Picture> OF_THE_SAMPLE = List.of(
            new Picture("bowls", SAMPLE + "bowls", DeskPictures::weigh),
            new Picture("day", SAMPLE + "day", page -> {}),
            new Picture("find", SAMPLE + "find", DeskPictures::find),
            new Picture("check", SAMPLE + "check", DeskPictures::listen),
            new Picture("text", SAMPLE + "text", page -> {}));

    private DeskPictures() {}

    public static void main(String... arguments) throws IOException {
        Path to = Path.of(arguments.length > 0 ? arguments[0] : "src/docs/pictures");
        System.setProperty("user.name", "producer"); // a page asks who decides and begins with that
        Path temp = Files.createTempDirectory("desk-pictures");
        Path sample = OpenDesk.sample(Files.createDirectory(temp.resolve("laptop")));
        draw(sample, OF_THE_SAMPLE, laptop(), to);
        Path other = OpenDesk.sample(Files.createDirectory(temp.resolve("phone")));
        draw(other, List.of(new Picture("bowls-phone", SAMPLE + "bowls", DeskPictures::weigh)), phone(), to);
        System.exit(0); // what still simmers need not be waited for
    }

    private static Browser.NewContextOptions laptop() {
        return new Browser.NewContextOptions().setViewportSize(1280, 800).setColorScheme(ColorScheme.LIGHT);
    }

    private static Browser.NewContextOptions phone() {
        return new Browser.NewContextOptions()
                .setViewportSize(390, 800)
                .setHasTouch(true)
                .setIsMobile(true)
                .setColorScheme(ColorScheme.DARK);
    }

    private static void draw(Path folder, List<Picture> pictures, Browser.NewContextOptions options, Path to) {
        try (OpenDesk desk = OpenDesk.over(folder)) {
            Page page = InBrowser.page(desk, options);
            for (Picture picture : pictures) {
                page.navigate(desk.origin() + "/" + picture.address());
                page.waitForFunction(
                        "() => !document.querySelector('.waiting')",
                        null,
                        new Page.WaitForFunctionOptions().setTimeout(PATIENCE));
                picture.act().accept(page);
                Path file = to.resolve("desk-" + picture.name() + ".png");
                page.screenshot(new Page.ScreenshotOptions().setPath(file));
                System.out.println(file);
            }
            page.context().close();
        }
    }

    private static void weigh(Page page) {
        for (String bowl : List.of("bowl-1", "bowl-2")) {
            page.locator("#" + bowl + " button.tick").click();
            page.locator("#" + bowl).getByText("Untick").waitFor();
        }
        page.getByText("Timer, 2 h").first().click();
        page.locator("[role=timer]").first().waitFor();
        page.evaluate("() => scrollTo(0, 0)");
    }

    private static void find(Page page) {
        page.locator("#q").pressSequentially("muscovado");
        page.locator("#moments li").first().waitFor();
        page.keyboard().press("ArrowDown");
        page.keyboard().press("Enter");
        standStill(page);
    }

    private static void listen(Page page) {
        Locator row = page.locator("article.verdict").first();
        row.focus();
        page.keyboard().press("m");
        standStill(page);
    }

    /** Once it has played for a moment: only then is the picture that of the time. */
    private static void standStill(Page page) {
        page.waitForFunction("() => [...Array(film.played.length).keys()]"
                + ".some(one => film.played.end(one) - film.played.start(one) > 0.5)");
        page.evaluate("() => film.pause()");
        page.waitForFunction("() => film.paused && !film.seeking && film.readyState >= 2");
        page.evaluate("() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)))");
    }
}
