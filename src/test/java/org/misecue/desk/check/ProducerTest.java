package org.misecue.desk.check;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.desk.InBrowser;
import org.misecue.desk.OpenDesk;
import org.misecue.episode.Choice;
import org.misecue.episode.Decision;
import org.misecue.episode.Decisions;
import org.misecue.episode.Episode;
import org.misecue.episode.Publications;

/** The producer at work on the sample, in a real browser. */
class ProducerTest {

    private static final String BUTTER = "175 g unsalted butter";

    @TempDir
    Path temp;

    private Path folder;
    private OpenDesk desk;
    private Page page;

    @BeforeAll
    static void there_may_be_others_at_work_on_this_machine() {
        PlaywrightAssertions.setDefaultAssertionTimeout(30_000);
    }

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

    private void open(Page window) {
        page = window;
        page.navigate(desk.origin() + "/e/sample-project/check");
        assertThat(count()).hasText("6 of 6 undecided.");
    }

    private Locator count() {
        return page.locator("#count");
    }

    private Locator row(String words) {
        return page.locator(
                "article.verdict",
                new Page.LocatorOptions().setHas(page.locator("h3", new Page.LocatorOptions().setHasText(words))));
    }

    private List<Decision> decisions() {
        return new Decisions(Episode.open(folder)).read();
    }

    private void press(String... keys) {
        List.of(keys).forEach(key -> page.keyboard().press(key));
    }

    private void tabTo(String selector) {
        for (int i = 0; i < 60 && !(boolean) page.evaluate("s => document.activeElement.matches(s)", selector); i++) {
            page.keyboard().press("Tab");
        }
        assertThat(page.locator(selector).first()).isFocused();
    }

    private void playsUntil(String condition) {
        page.waitForCondition(
                () -> (boolean) page.evaluate(condition), new Page.WaitForConditionOptions().setTimeout(60_000));
    }

    /** As somebody does who puts other words in the place of these. */
    private void mend(Locator words, String was, String heard) {
        words.evaluate(
                "(field, was) => field.setSelectionRange(field.value.indexOf(was), field.value.indexOf(was) + was.length)",
                was);
        page.keyboard().type(heard);
    }

    @Test
    void does_the_whole_job_by_keyboard_alone() {
        open(InBrowser.page(desk));
        page.context().grantPermissions(List.of("clipboard-read", "clipboard-write"));
        InBrowser.picture(page, "check-laptop");
        InBrowser.assertUsableByAll(page);

        page.evaluate("window.drawn = 'once'");
        press("ArrowDown");
        assertThat(row(BUTTER)).isFocused();
        press("m");
        assertThat(page.locator("#film")).hasAttribute("src", "/e/sample-project/media/take-1.mp4");
        playsUntil("film.currentTime > 197.9 && film.currentTime < 207"); // 3:20 less two seconds
        InBrowser.picture(page, "check-film");
        page.evaluate("film.currentTime = 205.9");
        playsUntil("film.paused"); // a little after it
        press("y");
        page.keyboard().type("said from memory, c k f u"); // keys are letters while one types
        press("Enter"); // decides nothing
        press("Escape");
        assertThat(row(BUTTER)).isFocused();
        assertThat(count()).hasText("6 of 6 undecided.");
        press("p");
        assertThat(count()).hasText("5 of 6 undecided, 1 to be done.");
        assertThat(row(BUTTER)).isFocused();
        assertThat(row(BUTTER).locator(".standing")).containsText("said from memory, c k f u");
        press("u");
        assertThat(count()).hasText("6 of 6 undecided.");

        press("w");
        mend(row(BUTTER).locator("textarea"), "two hundred", "one seventy five");
        press("Tab", "Enter");
        assertThat(page.locator("#corrected .heard")).containsText("heard “one seventy five”");
        assertThat(count()).hasText("5 of 5 undecided.");
        assertThat(row("¼ tsp ground cardamom")).isFocused();
        for (int left = 4; left > 0; left--) {
            press("k");
            assertThat(count()).hasText(left + " of 5 undecided.");
            press("n");
        }
        press("k");
        assertThat(count()).hasText("✓ All 5 decided.");
        InBrowser.picture(page, "check-done");
        assertThat(page.evaluate("window.drawn")).isEqualTo("once"); // quick keys never load the page anew

        tabTo("nav a[href$='/text']");
        press("Enter");
        page.waitForURL("**/text");
        InBrowser.picture(page, "text-laptop");
        InBrowser.assertUsableByAll(page);
        tabTo("button[data-copy=description]");
        press("Enter");
        assertThat(page.locator("#said")).hasText("Copied.");
        assertThat(page.evaluate("navigator.clipboard.readText()"))
                .isEqualTo(page.locator("#description").textContent());
        tabTo("#publish form button");
        press("Enter");
        assertThat(page.locator("#publish-head")).hasText("Does it go out like this?");
        assertThat(page.locator("#publish-head")).isFocused();
        InBrowser.picture(page, "text-sure");
        press("Tab", "Enter");
        assertThat(page.locator("#said")).containsText("It counts as published on");
        assertThat(new Publications(Episode.open(folder)).read()).hasSize(1);
    }

    @Test
    void does_the_job_by_touch_on_a_phone_and_nothing_is_too_wide() {
        open(InBrowser.phone(desk));
        page.getByLabel("Who decides").fill("Nell");
        row("ground cardamom").getByLabel("Why").fill("on purpose");
        row("ground cardamom").getByText("Keep as filmed").tap();
        assertThat(count()).hasText("5 of 6 undecided.");
        assertThat(row("ground cardamom").locator(".standing")).containsText("keep as filmed (Nell, ");
        page.getByLabel("Undecided", new Page.GetByLabelOptions().setExact(true))
                .tap();
        assertThat(row("ground cardamom")).isHidden();
        assertThat(row("150 g plain flour")).isHidden();
        assertThat(row(BUTTER)).isVisible();
        row(BUTTER).locator("button.play").tap();
        assertThat(page.locator("#film")).isVisible();
        row(BUTTER).getByText("Misheard?").tap();
        InBrowser.picture(page, "check-phone-film");
        InBrowser.assertNoSidewaysScrolling(page);
        page.getByText("Put the film away").tap();
        InBrowser.picture(page, "check-phone");
        InBrowser.assertUsableByAll(page);
        row(BUTTER).locator("textarea").tap();
        mend(row(BUTTER).locator("textarea"), "two hundred", "one seventy five");
        row(BUTTER)
                .getByText("Correct", new Locator.GetByTextOptions().setExact(true))
                .tap();
        assertThat(page.locator("#corrected .heard")).containsText("Nell heard");
        assertThat(count()).hasText("4 of 5 undecided.");

        page.locator("nav").getByText("Text").tap();
        assertThat(page.locator("#sheet")).containsText("Nothing keeps this from being published.");
        assertThat(page.getByLabel("Who publishes")).hasValue("Nell");
        InBrowser.picture(page, "text-phone");
        InBrowser.assertNoSidewaysScrolling(page);
        page.getByText("Make the files").tap();
        assertThat(page.locator("#said")).containsText("Made out/description.txt");
        page.getByText("It goes out …").tap();
        page.getByText("Yes, it is published").tap();
        assertThat(page.locator("#said")).containsText("It counts as published on");
        assertThat(new Publications(Episode.open(folder)).read())
                .extracting(one -> one.who())
                .containsExactly("Nell");
    }

    @Test
    void what_a_colleague_decides_appears_and_is_not_overwritten_and_what_is_typed_stays() throws IOException {
        open(InBrowser.page(
                desk, new Browser.NewContextOptions().setViewportSize(640, 400).setColorScheme(ColorScheme.DARK)));
        InBrowser.picture(page, "check-zoomed-dark");
        InBrowser.assertUsableByAll(page);
        InBrowser.assertNoSidewaysScrolling(page);
        page.route(
                "**/pulse",
                route -> route.fulfill(new Route.FulfillOptions()
                        .setStatus(503))); // the other one decides while this page has not heard of it yet
        decide(new Decision(
                "cake: unsalted butter", Choice.KEEP, "Nell", LocalDateTime.of(2026, 5, 4, 10, 0), "fine", List.of()));
        row(BUTTER).focus();
        press("p");
        assertThat(page.locator("#said"))
                .containsText("meanwhile it was decided: keep as filmed (Nell, 2026-05-04 10:00: fine)");
        assertThat(decisions()).extracting(Decision::choice).containsExactly(Choice.KEEP);
        assertThat(row(BUTTER)).isFocused();

        row("60 g tahini").focus();
        press("w");
        mend(row("60 g tahini").locator("textarea"), "four tablespoons", "sixty");
        row("ground cardamom").focus();
        press("y");
        page.keyboard().type("half a sen");
        page.unroute("**/pulse");
        new Decisions(Episode.open(folder)).change(List.of(), List.of("cake: unsalted butter"));
        assertThat(row(BUTTER).locator(".standing")).hasText("To decide: undecided");
        Path recipe = folder.resolve("recipe.md");
        Files.writeString(recipe, Files.readString(recipe).replace("175 g unsalted", "185 g unsalted"));
        assertThat(row("185 g unsalted butter")).isVisible();
        page.keyboard().type("tence");
        assertThat(row("ground cardamom").getByLabel("Why")).hasValue("half a sentence");
        assertThat(row("60 g tahini").locator("textarea")).isVisible();
        assertThat((String) row("60 g tahini").locator("textarea").inputValue()).contains("sixty of tahini");
    }

    private void decide(Decision decision) {
        new Decisions(Episode.open(folder)).change(List.of(decision), List.of());
    }
}
