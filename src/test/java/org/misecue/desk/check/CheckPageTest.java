package org.misecue.desk.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.desk.InBrowser;
import org.misecue.desk.OpenDesk;
import org.misecue.episode.Choice;
import org.misecue.episode.Decision;
import org.misecue.episode.Decisions;
import org.misecue.episode.Episode;

/** The producer at work on the sample, in a real browser. */
class CheckPageTest {

    @TempDir
    Path temp;

    private Path folder;
    private OpenDesk desk;
    private Page page;

    @BeforeEach
    void a_desk_is_open() {
        folder = OpenDesk.sample(temp);
        desk = OpenDesk.over(folder);
    }

    @AfterEach
    void and_closed() {
        page.context().close();
        desk.close();
    }

    private Page open(Page window) {
        page = window;
        page.navigate(desk.origin() + "/e/sample-project/check");
        PlaywrightAssertions.assertThat(page.locator("#count")).containsText("undecided");
        return page;
    }

    private Locator row(String words) {
        return page.locator("article.verdict", new Page.LocatorOptions().setHasText(words));
    }

    private static void says(Locator place, String words) {
        PlaywrightAssertions.assertThat(place).containsText(words);
    }

    @Test
    void decides_by_keyboard_alone() {
        open(InBrowser.page(desk));
        InBrowser.picture(page, "check-laptop");
        InBrowser.assertUsableByAll(page);
        String before = page.locator("#count").innerText();
        page.keyboard().press("ArrowDown");
        assertThat(page.evaluate("document.activeElement.querySelector('h3').textContent"))
                .isEqualTo("175 g unsalted butter, softened");
        page.keyboard().press("p");
        says(row("175 g unsalted butter"), "film a pick-up");
        assertThat(page.locator("#count").innerText()).isNotEqualTo(before);
        assertThat(new Decisions(Episode.open(folder)).read())
                .extracting(Decision::about, Decision::choice)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("cake: unsalted butter", Choice.PICKUP));
        page.waitForFunction("document.activeElement.matches('article.verdict')");
        page.keyboard().press("u");
        says(row("175 g unsalted butter"), "To decide");
        assertThat(new Decisions(Episode.open(folder)).read()).isEmpty();
    }

    @Test
    void a_correction_by_ear_changes_the_verdict() {
        open(InBrowser.dark(desk));
        InBrowser.picture(page, "check-dark");
        InBrowser.assertUsableByAll(page);
        row("175 g unsalted butter").focus();
        page.keyboard().press("w");
        page.keyboard().type("one seventy five grams");
        page.keyboard().press("Enter");
        says(page.locator("#corrected"), "heard “one seventy five grams” where “two hundred grams” was written");
        assertThat(page.locator("#differs").count()).isZero();
    }

    @Test
    void decides_by_touch_on_a_phone_and_nothing_is_too_wide() {
        open(InBrowser.phone(desk));
        InBrowser.assertUsableByAll(page);
        InBrowser.assertNoSidewaysScrolling(page);
        Locator cardamom = row("ground cardamom").first();
        cardamom.locator("input[name=note]").fill("on purpose");
        cardamom.getByText("Keep as filmed").tap();
        says(row("ground cardamom").first(), "on purpose");
        InBrowser.picture(page, "check-phone");
    }

    @Test
    void what_a_colleague_decides_appears_and_is_not_overwritten() {
        open(InBrowser.page(desk));
        // The other one decides while this page has not heard of it yet.
        page.route("**/pulse", route -> route.abort());
        var matter = new org.misecue.episode.Decision(
                "cake: unsalted butter",
                Choice.KEEP,
                "Nell",
                java.time.LocalDateTime.of(2026, 5, 4, 10, 0),
                "fine",
                java.util.List.of());
        new Decisions(Episode.open(folder)).change(java.util.List.of(matter), java.util.List.of());
        row("175 g unsalted butter").focus();
        page.keyboard().press("p");
        says(page.locator("#said"), "it was decided to keep as filmed (Nell, 2026-05-04 10:00: fine)");
        assertThat(new Decisions(Episode.open(folder)).read())
                .extracting(Decision::choice)
                .containsExactly(Choice.KEEP);
        page.unroute("**/pulse");
        new Decisions(Episode.open(folder)).change(java.util.List.of(), java.util.List.of("cake: unsalted butter"));
        says(row("175 g unsalted butter"), "To decide: undecided");
    }
}
