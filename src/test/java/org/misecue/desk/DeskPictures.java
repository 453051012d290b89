package org.misecue.desk;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.misecue.desk.counter.Tab;

/**
 * Draws the pages of the desk over a fresh copy of the sample, as the guides show them: one size, in the light. Run by hand;
 * the folder for the pictures may be named.
 */
public final class DeskPictures {

    private static final int PATIENCE = 60_000;

    private DeskPictures() {}

    public static void main(String... arguments) throws IOException {
        Path to = Path.of(arguments.length > 0 ? arguments[0] : "src/docs/pictures");
        System.setProperty("user.name", "producer"); // a page asks who decides and begins with that
        Path temp = Files.createTempDirectory("desk-pictures");
        try (OpenDesk desk = OpenDesk.over(Files.createDirectory(temp.resolve("empty")))) {
            draw(desk, to, List.of("new"));
        }
        OpenDesk.sample(Files.createDirectory(temp.resolve("archive")));
        try (OpenDesk desk = OpenDesk.over(temp.resolve("archive"))) {
            draw(
                    desk,
                    to,
                    Tab.of(org.misecue.desk.door.Who.OWNER).stream()
                            .map(tab -> "e/sample-project/" + tab.path())
                            .toList());
        }
        System.exit(0); // what still simmers need not be waited for
    }

    private static void draw(OpenDesk desk, Path to, List<String> addresses) {
        Page page = InBrowser.page(
                desk, new Browser.NewContextOptions().setViewportSize(1280, 800).setColorScheme(ColorScheme.LIGHT));
        for (String address : addresses) {
            Response answer = page.navigate(desk.origin() + "/" + address);
            if (!answer.ok()) {
                System.err.println("not there yet: " + address);
                continue;
            }
            page.waitForFunction(
                    "() => !document.querySelector('.waiting')",
                    null,
                    new Page.WaitForFunctionOptions().setTimeout(PATIENCE));
            Path file = to.resolve("desk-" + address.substring(address.lastIndexOf('/') + 1) + ".png");
            page.screenshot(new Page.ScreenshotOptions().setPath(file));
            System.out.println(file);
        }
        page.context().close();
    }
}
