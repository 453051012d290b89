package org.misecue.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Phones and tablets that are let in with a code. */
class GuestTest {

    @TempDir
    Path temp;

    private OpenDesk desk;

    @BeforeEach
    void a_desk_is_open_to_guests() {
        desk = OpenDesk.withGuests(OpenDesk.sample(temp));
    }

    @AfterEach
    void and_closed() {
        desk.close();
    }

    private String newest() {
        return desk.codes.get(desk.codes.size() - 1);
    }

    private HttpResponse<String> tried(String code) {
        return desk.post("/join", Map.of("code", code));
    }

    @Test
    void the_code_lets_one_guest_in_once() {
        String code = newest();
        assertThat(desk.get("/e/sample-project/pulse").statusCode()).isEqualTo(403);
        assertThat(tried(code).statusCode()).isEqualTo(303);
        assertThat(desk.get("/e/sample-project/pulse").statusCode()).isEqualTo(200);
        try (OpenDesk stranger = desk.stranger()) {
            assertThat(stranger.post("/join", Map.of("code", code)).statusCode())
                    .isEqualTo(403);
        }
        assertThat(newest()).isNotEqualTo(code);
    }

    @Test
    void a_code_may_be_typed_as_phones_type() {
        assertThat(tried("  " + newest().toUpperCase() + " ").statusCode()).isEqualTo(303);
    }

    @Test
    void after_a_few_wrong_tries_the_code_is_another() {
        String code = newest();
        for (int i = 0; i < 5; i++) {
            assertThat(tried("wrong" + i).statusCode()).isEqualTo(403);
        }
        assertThat(tried(code).statusCode()).isEqualTo(403);
        assertThat(tried(newest()).statusCode()).isEqualTo(303);
    }

    @Test
    void nothing_and_much_are_wrong_codes() {
        assertThat(tried("").statusCode()).isEqualTo(403);
        assertThat(tried("x".repeat(10_000)).statusCode()).isEqualTo(403);
        assertThat(desk.post("/join", Map.of()).statusCode()).isEqualTo(403);
    }

    @Test
    void a_guest_types_the_code_on_the_phone() {
        Browser.NewContextOptions phone = new Browser.NewContextOptions()
                .setViewportSize(360, 740)
                .setHasTouch(true)
                .setIsMobile(true);
        Page page = InBrowser.stranger(phone);
        BrowserContext context = page.context();
        page.navigate(desk.origin() + "/join");
        InBrowser.assertUsableByAll(page);
        InBrowser.assertNoSidewaysScrolling(page);
        InBrowser.picture(page, "join-phone");
        page.getByLabel("Code").fill("nothing");
        page.getByText("Come in").last().tap();
        assertThat(page.locator("#wrong").innerText()).contains("That is not the code");
        InBrowser.assertUsableByAll(page);
        page.getByLabel("Code").fill(newest());
        page.getByText("Come in").last().tap();
        page.waitForURL(url -> !url.endsWith("/join"));
        assertThat(page.url()).contains("/e/sample-project");
        context.close();
    }
}
