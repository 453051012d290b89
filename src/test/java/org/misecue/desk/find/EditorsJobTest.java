package org.misecue.desk.find;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.desk.InBrowser;
import org.misecue.desk.OpenDesk;

/** The editor's job in a browser, from half-remembered words to what goes into the edit. */
class EditorsJobTest {

    /** Half remembered, and when it was said. */
    private static final List<List<String>> MOMENTS = List.of(
            List.of("vanila spoon", "4:18"),
            List.of("little hollows", "1:19"),
            List.of("juice away", "1:57"),
            List.of("skewer", "5:53"),
            List.of("apricots", "7:51"));

    @TempDir
    Path temp;

    private Path episode;
    private OpenDesk desk;
    private Page page;
    private Projector films;

    @BeforeEach
    void open() {
        episode = OpenDesk.sample(temp);
        desk = OpenDesk.over(episode);
    }

    @AfterEach
    void close() {
        page.context().close();
        desk.close();
    }

    private void sit(Page at) {
        page = at;
        films = Projector.watching(page);
        page.navigate(desk.origin() + "/e/sample-project/find");
    }

    @Test
    void all_of_it_by_keyboard() {
        sit(InBrowser.page(desk));
        page.context().grantPermissions(List.of("clipboard-read", "clipboard-write"));
        InBrowser.assertUsableByAll(page);
        for (List<String> moment : MOMENTS) {
            page.keyboard().type(moment.get(0));
            assertThat(best()).containsText(moment.get(1));
            page.keyboard().press("ArrowDown");
            page.keyboard().press("Enter");
            assertThat(page.locator("#play")).hasText("Pause");
            assertThat(page.locator("#cues [aria-current]")).isInViewport();
            page.keyboard().press("p");
            assertThat(page.locator("#play")).hasText("Play");
            page.keyboard().press("Escape");
            assertThat(page.locator("#q")).isFocused();
        }
        page.keyboard().type("skewer");
        assertThat(best()).containsText("5:53");
        page.keyboard().press("Enter");
        assertThat(page.locator("#play")).hasText("Pause");
        page.keyboard().press("p");
        assertThat(page.locator("#play")).hasText("Play");
        markAndTake(key -> page.keyboard().press(key));
        assertThat((String) page.evaluate("navigator.clipboard.readText()"))
                .isEqualTo(page.locator("#code").innerText());
        // Said once, and written once in step 7, as the command finds too.
        assertThat(page.locator("#counted")).hasText("2 moments");
        InBrowser.assertUsableByAll(page);
        InBrowser.picture(page, "find-laptop");
    }

    @Test
    void all_of_it_by_touch() {
        sit(InBrowser.phone(desk));
        for (List<String> moment : MOMENTS) {
            page.locator("#q").tap();
            page.locator("#q").fill(moment.get(0));
            assertThat(best()).containsText(moment.get(1));
            best().tap();
            assertThat(page.locator("#play")).hasText("Pause");
            assertThat(page.locator("#film")).isInViewport();
            page.locator("[data-key=p]").tap();
            assertThat(page.locator("#play")).hasText("Play");
        }
        assertThat(page.locator("kbd").first()).isHidden();
        markAndTake(key -> page.locator("[data-key=" + key + "]").tap());
        page.locator("#cues a").nth(3).tap();
        assertThat(page.locator("#code")).hasText(Pattern.compile("00:00:35:.*"));
        InBrowser.assertNoSidewaysScrolling(page);
        InBrowser.assertUsableByAll(page);
        InBrowser.picture(page, "find-phone");
    }

    private interface Doing {
        void press(String key);
    }

    /** From a film that stands still: a clip of eleven frames of a fifth of a second, and the last of them as a still. */
    private void markAndTake(Doing doing) {
        String begin = page.locator("#code").innerText();
        doing.press("f");
        assertThat(page.locator("#marks")).hasText("In " + begin);
        for (int frame = 0; frame < 10; frame++) {
            doing.press("n");
        }
        doing.press("t");
        assertThat(page.locator("#marks")).containsText("2.2\u00a0s");
        doing.press("x");
        assertThat(page.locator("#told")).hasText(Pattern.compile("Clip kept as out/clips/take-1-.*\\.mp4\\."));
        doing.press("s");
        assertThat(page.locator("#told")).hasText(Pattern.compile("Still kept as out/stills/take-1-.*\\.png\\."));
        doing.press("c");
        assertThat(films.taken).hasSize(2);
        double[] clip = numbers(films.taken.get(0));
        assertThat(clip[1] - clip[0]).isBetween(2.19, 2.21);
        assertThat(numbers(films.taken.get(1))[0]).isBetween(clip[1] - 0.201, clip[1] - 0.199);
        assertThat(page.locator("#taken a")).hasCount(2);
    }

    private static double[] numbers(String form) {
        return Pattern.compile("[0-9.]+")
                .matcher(form)
                .results()
                .mapToDouble(found -> Double.parseDouble(found.group()))
                .toArray();
    }

    @Test
    void an_older_answer_never_takes_the_place_of_a_newer_one() {
        sit(InBrowser.page(desk));
        List<Route> held = new ArrayList<>();
        page.route("**/moments?q=plum", held::add);
        page.locator("#q").pressSequentially("plum");
        page.waitForCondition(() -> !held.isEmpty());
        page.locator("#q").pressSequentially("s cold");
        assertThat(page.locator("#moments .tally")).hasAttribute("data-words", "plums cold");
        String newer = page.locator("#moments").innerText();
        held.forEach(Route::resume);
        page.waitForTimeout(200);
        assertThat(page.locator("#moments").innerText()).isEqualTo(newer);
    }

    @Test
    void a_link_leads_to_the_moment_and_back_leads_to_the_one_before() {
        sit(InBrowser.page(desk));
        page.navigate(desk.origin() + "/e/sample-project/find?q=skewer&of=narration%2Fmain.vtt&t=353.8");
        assertThat(page.locator("#code")).hasText("00:05:53:04");
        assertThat(page.locator("#play")).hasText("Play");
        page.locator("#q").fill("little hollows");
        assertThat(best()).containsText("1:19");
        best().click();
        assertThat(page.locator("#cues [aria-current]")).containsText("little hollows");
        page.goBack();
        assertThat(page.locator("#q")).hasValue("skewer");
        assertThat(best()).containsText("skewer");
        assertThat(page.locator("#cues [aria-current]")).containsText("skewer");
    }

    @Test
    void without_a_film_the_moment_is_shown_in_the_text() throws IOException {
        Files.delete(episode.resolve("footage/take-1.mp4"));
        page = InBrowser.page(desk);
        page.navigate(desk.origin() + "/e/sample-project/find");
        page.locator("#q").fill("little hollows");
        assertThat(best()).containsText("no picture");
        best().click();
        assertThat(page.locator("#cues [aria-current]")).containsText("little hollows");
        assertThat(page.locator("#cues [aria-current]")).isInViewport();
        page.keyboard().press("p");
        InBrowser.assertUsableByAll(page);
    }

    @Test
    void keys_do_nothing_while_somebody_types_or_when_they_are_switched_off() {
        sit(InBrowser.page(desk));
        page.locator("#q").fill("");
        page.keyboard().type("flat spoon next");
        assertThat(page.locator("#play")).hasText("Play");
        assertThat(page.locator("#marks")).isEmpty();
        page.locator("#keys").uncheck();
        page.keyboard().press("f");
        assertThat(page.locator("#marks")).isEmpty();
        page.locator("#keys").check();
        page.keyboard().press("Control+f");
        assertThat(page.locator("#marks")).isEmpty();
        page.keyboard().press("f");
        assertThat(page.locator("#marks")).containsText("In 00:00:00:00");
        page.keyboard().press("x");
        assertThat(page.locator("#told"))
                .hasText("Mark in and mark out first; the clip goes from the one to the other.");
        assertThat(films.taken).isEmpty();
    }

    @Test
    void for_a_film_that_cannot_be_played_a_copy_is_offered() {
        sit(InBrowser.page(desk));
        films.cannotPlay();
        page.reload();
        assertThat(page.locator("#why")).hasText("No browser plays this kind.");
        page.locator("[data-key=proxy]").click();
        assertThat(page.locator("#making")).hasAttribute("value", "40");
        assertThat(page.locator("#unplayable")).isHidden();
        assertThat(page.locator("#film")).hasAttribute("src", Pattern.compile(".*take-1.mp4"));
    }

    @Test
    void twice_as_large_and_in_the_dark_nothing_is_lost() {
        sit(InBrowser.dark(desk));
        page.locator("#q").fill("plums");
        assertThat(page.locator("#moments li").first()).isVisible();
        InBrowser.assertUsableByAll(page);
        InBrowser.picture(page, "find-dark");
        page.setViewportSize(640, 400);
        InBrowser.assertNoSidewaysScrolling(page);
        InBrowser.picture(page, "find-zoomed");
    }

    private Locator best() {
        return page.locator("#moments a").first();
    }
}
