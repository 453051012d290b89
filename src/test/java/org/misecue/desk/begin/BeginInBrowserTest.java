package org.misecue.desk.begin;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.desk.InBrowser;
import org.misecue.desk.OpenDesk;

/** From an empty folder to the bowls, in a browser. */
class BeginInBrowserTest {

    private static final Path SAMPLE = Path.of("sample-project");
    private static final String DISH = "/e/roasted-plum-and-hazelnut-cake-with-tahini-cream";

    /** Puts files with these names and texts onto the page, as a hand that drops them does. */
    private static final String DROP = """
            files => {
              const held = new DataTransfer();
              for (const [name, text] of files) held.items.add(new File([text], name));
              document.querySelector("main").dispatchEvent(
                  new DragEvent("drop", { dataTransfer: held, bubbles: true, cancelable: true }));
            }
            """;

    @TempDir
    Path temp;

    private OpenDesk desk;

    @BeforeEach
    void a_desk_is_open_over_an_empty_folder() {
        desk = OpenDesk.over(temp).enter();
    }

    @AfterEach
    void and_closed() {
        desk.close();
    }

    private static Path[] sampleFiles() {
        return new Path[] {
            SAMPLE.resolve("recipe.md"), SAMPLE.resolve("narration/main.vtt"), SAMPLE.resolve("footage/take-1.mp4")
        };
    }

    private static void waitFor(Page page, String selector) {
        page.locator(selector).first().waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.VISIBLE));
    }

    @Test
    void chosen_files_become_an_episode() {
        Page page = InBrowser.page(desk);
        InBrowser.picture(page, "new-empty");
        InBrowser.assertUsableByAll(page);
        page.locator("#files").setInputFiles(sampleFiles());
        waitFor(page, "button.first:not([disabled])");
        InBrowser.picture(page, "new-ready");
        InBrowser.assertUsableByAll(page);
        page.locator("button.first").click();
        page.waitForURL("**" + DISH + "/recipe");
        InBrowser.picture(page, "recipe");
        InBrowser.assertUsableByAll(page);
        page.locator("#takes").fill("2");
        page.locator("button.first").click();
        page.waitForURL("**" + DISH + "/bowls");
        assertThat(temp.resolve(DISH.substring(3)).resolve("footage/take-1.mp4"))
                .hasSameBinaryContentAs(SAMPLE.resolve("footage/take-1.mp4"));
        page.context().close();
    }

    @Test
    void dropped_files_are_told_apart_and_one_that_is_no_use_is_refused() throws IOException {
        Page page = InBrowser.page(desk);
        page.evaluate(
                DROP,
                List.of(
                        List.of("plums.txt", Files.readString(SAMPLE.resolve("recipe.md"))),
                        List.of("talk.txt", "[0:01] five hundred grams of plums"),
                        List.of("talk.txt", "[0:02] and once more"),
                        List.of("take.mp4", "no film at all"),
                        List.of("photo.raw", "x")));
        page.locator(".coming li.refused").nth(2).waitFor();
        InBrowser.picture(page, "new-refused");
        InBrowser.assertUsableByAll(page);
        assertThat(page.locator(".coming li").allInnerTexts().toString())
                .contains("holds something else", "none of them", "Another file here has this name");
        page.getByText("Add as talk-2.txt").click();
        page.locator(".coming li.ready").nth(2).waitFor();
        page.locator("button.first").click();
        waitFor(page, "text=Go on with what was added");
        page.keyboard().press("Enter");
        page.waitForURL("**" + DISH + "/recipe");
        assertThat(temp.resolve(DISH.substring(3)).resolve("narration").toFile().list())
                .containsExactlyInAnyOrder("talk.txt", "talk-2.txt");
        page.context().close();
    }

    @Test
    void a_recipe_that_cannot_be_read_is_said_and_can_be_taken_away() {
        Page page = InBrowser.page(desk);
        page.evaluate(DROP, List.of(List.of("plums.md", "just a few words")));
        waitFor(page, "button.first:not([disabled])");
        page.locator("button.first").click();
        waitFor(page, ".coming li.refused");
        assertThat(page.locator(".coming li").innerText()).contains("no ingredients were found");
        assertThat(temp).isEmptyDirectory();
        page.getByText("Take away").click();
        assertThat(page.locator(".coming li").count()).isZero();
        page.context().close();
    }

    @Test
    void the_keyboard_is_enough() {
        Page page = InBrowser.page(desk);
        // Asked for before any key is pressed: a chooser that opens sooner than it is awaited is lost.
        page.onFileChooser(chooser -> chooser.setFiles(SAMPLE.resolve("recipe.md")));
        page.keyboard().press("Tab");
        page.keyboard().press("Tab");
        assertThat(page.evaluate("document.activeElement.id")).isEqualTo("files");
        page.keyboard().press("Space");
        waitFor(page, "button.first:not([disabled])");
        for (int i = 0; i < 6 && !"first".equals(page.evaluate("document.activeElement.className")); i++) {
            page.keyboard().press("Tab");
        }
        page.keyboard().press("Enter");
        page.waitForURL("**" + DISH + "/recipe");
        page.context().close();
    }

    @Test
    void on_a_phone_the_sample_opens_with_one_touch() {
        Page page = InBrowser.phone(desk);
        InBrowser.assertNoSidewaysScrolling(page);
        InBrowser.picture(page, "new-phone");
        page.getByText("Open the sample").tap();
        page.waitForURL("**/e/sample-plum-cake/bowls");
        for (String one : List.of("files", "recipe")) {
            page.navigate(desk.origin() + "/e/sample-plum-cake/" + one);
            InBrowser.assertNoSidewaysScrolling(page);
            InBrowser.picture(page, one + "-phone");
        }
        page.context().close();
    }

    @Test
    void the_files_page_follows_what_others_put_there_and_takes_more() throws IOException {
        Path episode = OpenDesk.sample(temp);
        Page page = InBrowser.dark(desk);
        page.navigate(desk.origin() + "/e/sample-project/files");
        InBrowser.picture(page, "files-dark");
        InBrowser.assertUsableByAll(page);
        Files.writeString(episode.resolve("narration/more.txt"), "[0:01] and a pinch of salt");
        page.locator("text=narration/more.txt").waitFor(new Locator.WaitForOptions().setTimeout(5_000));
        page.evaluate(DROP, List.of(List.of("late.txt", "[0:02] twelve slices")));
        page.locator(".made-of >> text=narration/late.txt").waitFor();
        page.evaluate(DROP, List.of(List.of("late.txt", "[0:02] twelve slices")));
        waitFor(page, ".coming li.refused");
        InBrowser.picture(page, "files-refused-dark");
        InBrowser.assertUsableByAll(page);
        page.context().close();
    }
}
