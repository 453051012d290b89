package org.misecue.desk.day;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.desk.InBrowser;
import org.misecue.desk.KitchenClock;
import org.misecue.desk.OpenDesk;

/** The filming day in a real browser. */
class DayInBrowserTest {

    private static final String DAY = "/e/oats/day";

    /** Planning is given more time than a page. */
    private static final double LONG = 60_000;

    @TempDir
    Path temp;

    private final KitchenClock clock = KitchenClock.at("2026-05-04T10:02");

    private static void press(Page page, String id) {
        page.locator("#" + id).focus();
        page.keyboard().press("Enter");
    }

    private static void waitFor(Page page, String what) {
        page.locator(what).waitFor(new com.microsoft.playwright.Locator.WaitForOptions().setTimeout(LONG));
    }

    private static Page guest(OpenDesk desk) {
        Page phone = InBrowser.stranger(new Browser.NewContextOptions()
                .setViewportSize(360, 740)
                .setHasTouch(true)
                .setIsMobile(true)
                .setDeviceScaleFactor(2));
        phone.navigate(desk.origin() + "/join");
        phone.getByLabel("Code").fill(desk.codes.get(desk.codes.size() - 1));
        phone.locator("form.join button").tap();
        phone.waitForURL("**/bowls");
        return phone;
    }

    @Test
    void from_the_first_shot_to_a_late_day_and_back() {
        try (OpenDesk desk = OpenDesk.at(clock, OatSquares.in(temp, "first-shot: 2026-05-04 10:00\n"))) {
            Page page = InBrowser.page(desk);
            page.navigate(desk.origin() + DAY);
            waitFor(page, "#hours");
            assertThat(page.locator("#current h3")).hasText("Opening: kitchen");
            assertThat(page.locator("[aria-current=time] .name")).hasText("Opening: kitchen");
            InBrowser.assertUsableByAll(page);
            InBrowser.picture(page, "day-laptop");

            Page phone = guest(desk);
            phone.locator("nav a", new Page.LocatorOptions().setHasText("Day")).tap();
            assertThat(phone.locator("nav a")).hasCount(2);
            press(page, "current-1-done");
            assertThat(page.locator("#undo")).isVisible();
            assertThat(phone.locator("#row-1 .state").first()).hasText("✓ done");

            // “Now” moves on by itself; a page that was hidden looks at once.
            clock.set("2026-05-04T10:40");
            page.evaluate("document.dispatchEvent(new Event('visibilitychange'))");
            assertThat(page.locator("#now")).hasText("10:40");
            assertThat(page.locator(".due")).containsText("By what is ticked the day is 25 min late.");
            assertThat(page.locator("#meanwhile h3")).containsText("The oven heats to 180 °C");

            phone.locator("#rest").tap();
            assertThat(phone.locator("#moved + p"))
                    .containsText(
                            "later than first planned", new LocatorAssertions.ContainsTextOptions().setTimeout(LONG));
            assertThat(page.locator("#moved + p")).containsText("later than first planned");
            InBrowser.assertNoSidewaysScrolling(phone);
            InBrowser.assertUsableByAll(phone);
            InBrowser.picture(phone, "day-phone");

            press(page, "row-1-done");
            assertThat(phone.locator("#row-1 .state")).not().hasText("✓ done");
            press(page, "row-9-timer");
            assertThat(phone.locator(".timer .what")).hasText("bakes at 180 °C");
            InBrowser.picture(page, "day-late");
            page.context().close();
            phone.context().close();

            Page dark = InBrowser.dark(desk);
            dark.navigate(desk.origin() + DAY);
            InBrowser.assertUsableByAll(dark);
            InBrowser.picture(dark, "day-dark");
            dark.context().close();
            Page large = InBrowser.page(
                    desk,
                    new Browser.NewContextOptions().setViewportSize(640, 400).setDeviceScaleFactor(2));
            large.navigate(desk.origin() + DAY);
            InBrowser.assertNoSidewaysScrolling(large);
            InBrowser.picture(large, "day-large");
            large.context().close();
            assertThat(desk.codes).hasSize(2);
        }
    }
}
