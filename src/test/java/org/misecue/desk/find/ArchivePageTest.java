package org.misecue.desk.find;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.desk.InBrowser;
import org.misecue.desk.OpenDesk;

class ArchivePageTest {

    private static final Duration PATIENCE = Duration.ofSeconds(20);

    @TempDir
    Path temp;

    @Test
    void a_moment_is_found_in_any_episode_and_leads_to_its_page() throws Exception {
        OpenDesk.sample(temp);
        episode(temp.resolve("season 2/100% rye & more"), "the caraway goes in first");
        try (OpenDesk desk = OpenDesk.over(temp).enter()) {
            indexed(desk);
            Document found = page(desk, "/find/moments?q=caraway");
            assertThat(found.selectFirst(".episode").text()).isEqualTo("season 2/100% rye & more");
            String address = found.selectFirst("ol.moments a").attr("href");
            Document there = page(desk, address.replace("#play", ""));
            assertThat(there.selectFirst("#cues").text()).contains("the caraway goes in first");
            assertThat(there.selectFirst("[data-with-words]").attr("href")).isEqualTo("/find?q=caraway");
            assertThat(page(desk, "/find/moments?q=hollows")
                            .selectFirst(".episode")
                            .text())
                    .isEqualTo("sample-project");
        }
    }

    @Test
    void what_cannot_be_read_of_an_episode_is_told_and_the_others_are_found() throws Exception {
        episode(temp.resolve("good"), "plenty of caraway");
        Path bad = episode(temp.resolve("bad"), "");
        Files.write(bad.resolve("narration/a.vtt"), new byte[] {0, 1, 2, 3});
        try (OpenDesk desk = OpenDesk.over(temp).enter()) {
            Document told = indexed(desk);
            assertThat(told.selectFirst("#indexing details").text()).contains("bad/");
            assertThat(page(desk, "/find/moments?q=caraway").select("ol.moments a"))
                    .hasSize(1);
        }
    }

    @Test
    void a_desk_over_one_episode_has_no_others_to_look_through() {
        try (OpenDesk desk = OpenDesk.over(OpenDesk.sample(temp)).enter()) {
            for (String path : List.of("/find", "/find/moments?q=plum", "/find/indexing")) {
                assertThat(desk.get(path).statusCode()).as(path).isEqualTo(404);
            }
            assertThat(temp.resolve(".misecue")).doesNotExist();
        }
    }

    @Test
    void only_the_owner_finds() {
        OpenDesk.sample(temp);
        try (OpenDesk desk = OpenDesk.over(temp)) {
            for (String path : List.of("/find", "/find/moments?q=a", "/find/indexing", "/e/sample-project/find")) {
                assertThat(desk.get(path).statusCode()).as(path).isEqualTo(403);
            }
        }
    }

    @Test
    void in_a_browser_the_moments_come_when_the_episodes_are_read() throws Exception {
        OpenDesk.sample(temp);
        episode(temp.resolve("rye bread"), "plenty of caraway");
        try (OpenDesk desk = OpenDesk.over(temp)) {
            Page page = InBrowser.phone(desk);
            page.locator("a[href='/find']").tap();
            page.locator("#q").fill("caraway plenty");
            assertThat(page.locator("#moments a").first()).containsText("rye bread");
            assertThat(page.locator("#indexing progress")).hasCount(0);
            InBrowser.assertUsableByAll(page);
            InBrowser.assertNoSidewaysScrolling(page);
            InBrowser.picture(page, "find-archive");
            page.locator("#moments a").first().tap();
            assertThat(page.locator("#cues [aria-current]")).containsText("plenty of caraway");
            page.goBack();
            assertThat(page.locator("#q")).hasValue("caraway plenty");
            page.context().close();
        }
    }

    private static Path episode(Path folder, String said) throws Exception {
        Files.createDirectories(folder.resolve("narration"));
        Files.writeString(
                folder.resolve("recipe.md"),
                "# Bread\n\n## Ingredients\n\n- 500 g rye flour\n\n## Method\n\n1. Mix.\n");
        Files.writeString(folder.resolve("narration/a.vtt"), "WEBVTT\n\n00:01.000 --> 00:04.000\n" + said + "\n");
        return folder;
    }

    /** Waits until everything can be found. */
    private static Document indexed(OpenDesk desk) throws InterruptedException {
        desk.get("/find");
        long until = System.nanoTime() + PATIENCE.toNanos();
        while (System.nanoTime() < until) {
            Document now = page(desk, "/find/indexing");
            if (now.select("progress").isEmpty()) {
                return now;
            }
            Thread.sleep(20);
        }
        throw new AssertionError("still indexing after " + PATIENCE);
    }

    private static Document page(OpenDesk desk, String path) {
        return Jsoup.parse(desk.get(path).body());
    }
}
