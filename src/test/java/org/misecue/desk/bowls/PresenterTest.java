package org.misecue.desk.bowls;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.desk.InBrowser;
import org.misecue.desk.KitchenClock;
import org.misecue.desk.OpenDesk;

/** The presenter's morning in a real browser: everything is weighed, ticked and timed. */
class PresenterTest {

    private static final String BOWLS = "/e/sample-project/bowls";

    @TempDir
    Path temp;

    private final KitchenClock clock = KitchenClock.at("2026-05-04T08:55");
    private final List<Page> open = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();
    private Path folder;
    private OpenDesk desk;

    @BeforeEach
    void a_desk_is_open() {
        folder = OpenDesk.sample(temp);
        desk = OpenDesk.at(clock, folder);
    }

    @AfterEach
    void and_closed() {
        open.forEach(page -> page.context().close());
        desk.close();
        assertThat(faults).as("what the browser complained about").isEmpty();
    }

    private Page at(Page page, String path) {
        open.add(page);
        page.onPageError(faults::add);
        page.onConsoleMessage(message -> {
            if (message.type().equals("error") && !message.text().contains("409")) {
                faults.add(message.text());
            }
        });
        page.navigate(desk.origin() + path);
        return page;
    }

    private static Locator left(Page page) {
        return page.locator(".left");
    }

    private static String focused(Page page) {
        return String.valueOf(page.evaluate("document.activeElement.id"));
    }

    private static void tabTo(Page page, String id) {
        for (int i = 0; i < 200 && !focused(page).equals(id); i++) {
            page.keyboard().press("Tab");
        }
        assertThat(focused(page)).isEqualTo(id);
    }

    @Test
    void by_keyboard_alone_from_the_first_bowl_to_the_last_job() {
        Page page = at(InBrowser.page(desk), BOWLS);
        InBrowser.assertUsableByAll(page);
        InBrowser.picture(page, "bowls-laptop");
        tabTo(page, "filter");
        page.keyboard().press("Enter");
        assertThat(page.locator("#filter")).hasText("Show all");
        tabTo(page, "bowl-1-tick");
        for (int bowl = 1; bowl <= 16; bowl++) {
            assertThat(focused(page)).as("the next bowl is at hand").isEqualTo("bowl-" + bowl + "-tick");
            page.keyboard().press("Enter");
            assertThat(page.locator("#bowl-" + bowl)).hasCount(0);
        }
        assertThat(left(page)).containsText("7 jobs and 3 besides left");
        tabTo(page, "job-A-timer");
        page.keyboard().press("Enter");
        assertThat(page.locator(".timer .countdown")).containsText(":");
        assertThat(focused(page))
                .as("the timer’s button gave way to when it rings")
                .isEqualTo("job-A-tick");
        for (String job : List.of("A", "B", "C", "D", "E", "F", "G")) {
            assertThat(focused(page)).isEqualTo("job-" + job + "-tick");
            page.keyboard().press("Enter");
            assertThat(page.locator("#job-" + job)).hasCount(0);
        }
        for (int spare = 1; spare <= 3; spare++) {
            page.keyboard().press("Enter");
            assertThat(page.locator("#spare-" + spare)).hasCount(0);
        }
        assertThat(left(page)).containsText("Nothing left");
        assertThat(page.locator("#the-bowls + p, #the-bowls ~ p").last()).hasText("All bowls are ticked.");
        InBrowser.assertUsableByAll(page);
        page.reload();
        assertThat(left(page)).containsText("Nothing left");
        page.locator("#undo").focus();
        page.keyboard().press("Enter");
        assertThat(left(page)).containsText("1 besides left");
    }

    @Test
    void by_touch_on_the_phone_with_a_timer_that_rings() {
        Page phone = at(InBrowser.phone(desk), BOWLS);
        assertThat(phone.locator(".due")).containsText("Take the butter out of the fridge");
        phone.locator(".on-top a[href='#the-jobs']").tap();
        phone.locator("#job-A-timer").tap();
        assertThat(phone.locator(".timer")).containsText("used or back in the fridge by 10:55");
        assertThat(phone.locator("#sound")).hasText("Timers ring on this device.");
        phone.locator("#bowl-1-tick").tap();
        assertThat(left(phone)).containsText("3.35 kg to weigh");
        phone.locator("#bowl-2 summary").tap();
        InBrowser.assertNoSidewaysScrolling(phone);
        InBrowser.picture(phone, "bowls-phone");
        phone.locator("#undo").tap();
        assertThat(left(phone)).containsText("4.35 kg to weigh");
        assertThat(phone.locator("#bowl-2 details")).hasAttribute("open", "");
        clock.turn(Duration.ofMinutes(119).plusSeconds(59));
        phone.reload();
        assertThat(phone.locator("#alarm")).hasText("Time is up: Take the butter out of the fridge");
        assertThat(phone.title()).startsWith("Time is up");
        InBrowser.assertUsableByAll(phone);
        InBrowser.picture(phone, "timer-phone");
        phone.locator(".timer button").tap();
        assertThat(phone.locator(".timer")).hasCount(0);
        phone.locator("#timer-go-on").tap();
        assertThat(phone.locator(".timer")).hasCount(1);
    }

    @Test
    void two_devices_see_the_same_and_neither_is_disturbed() throws IOException {
        Page one = at(InBrowser.page(desk), BOWLS);
        Page other = at(InBrowser.page(desk), BOWLS);
        other.locator("#bowl-9-tick").focus();
        // A finger is down on bowl 9 while the other device ticks bowl 2.
        other.locator("#bowl-9-tick").hover();
        other.mouse().down();
        one.locator("#bowl-2-tick").click();
        assertThat(one.locator("#bowl-2 .state")).hasText("✓ ticked");
        other.waitForTimeout(1500);
        assertThat(other.locator("#bowl-2 .state")).hasCount(0);
        other.mouse().up();
        assertThat(other.locator("#bowl-2 .state")).hasText("✓ ticked");
        assertThat(other.locator("#bowl-9 .state")).hasText("✓ ticked");
        assertThat(focused(other)).isEqualTo("bowl-9-tick");
        assertThat(one.locator("#bowl-9 .state")).hasText("✓ ticked");

        Path recipe = folder.resolve("recipe.md");
        String text = Files.readString(recipe);
        // This device has not noticed yet: its form still says 60 g.
        String pulse = String.valueOf(one.evaluate("fetch(document.body.dataset.pulse).then(answer => answer.text())"));
        one.route(
                "**/pulse",
                route -> route.fulfill(new Route.FulfillOptions()
                        .setContentType("application/json")
                        .setBody(pulse)));
        Files.writeString(recipe, text.replace("60 g tahini", "75 g tahini"));
        one.locator("#bowl-15-tick").click();
        assertThat(one.locator("#bowl-15 .sentence")).containsText("Bowl 15 changed meanwhile and was not ticked");
        assertThat(one.locator("#bowl-15 .amount")).hasText("75 g");
        one.unroute("**/pulse");
        one.waitForResponse(answer -> answer.url().contains("/bowls"), () -> {});
        assertThat(one.locator("#bowl-15 .sentence")).hasCount(1);
        assertThat(other.locator("#bowl-15 .amount")).hasText("75 g");
        one.locator("#bowl-15-tick").click();
        assertThat(one.locator("#bowl-15 .state")).hasText("✓ ticked");
        assertThat(one.locator("#bowl-15 .sentence")).hasCount(0);
    }

    @Test
    void in_the_dark_and_at_twice_the_size() {
        Page dark = at(InBrowser.dark(desk), BOWLS);
        InBrowser.assertUsableByAll(dark);
        InBrowser.picture(dark, "bowls-dark");
        // Zoomed to 200 %, a window of 1280 px has room for 640.
        Page large = at(
                InBrowser.page(
                        desk,
                        new Browser.NewContextOptions()
                                .setViewportSize(640, 400)
                                .setDeviceScaleFactor(2)),
                BOWLS);
        InBrowser.assertNoSidewaysScrolling(large);
        InBrowser.picture(large, "bowls-large");
    }
}
