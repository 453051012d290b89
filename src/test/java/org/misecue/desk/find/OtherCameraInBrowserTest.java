package org.misecue.desk.find;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.desk.InBrowser;
import org.misecue.desk.OpenDesk;
import org.misecue.footage.Take;

/** A shoot with two cameras: the close-up began 5.48 s after the film in which is told what is done; and another day's film. */
class OtherCameraInBrowserTest {

    @TempDir
    Path folder;

    private OpenDesk desk;
    private Page page;

    @BeforeEach
    void open() throws IOException {
        Files.writeString(folder.resolve("recipe.md"), """
                # Oat slice

                - 200 g oats
                - 100 g butter

                1. Melt the butter.
                2. Stir the oats into the melted butter.
                """);
        Path narration = Files.createDirectories(folder.resolve("narration"));
        Files.writeString(narration.resolve("main.vtt"), """
                WEBVTT

                00:01.000 --> 00:02.000
                We melt the butter, a hundred grams.

                00:08.000 --> 00:07.000
                Backwards.

                00:08.000 --> 00:11.000
                And stir in the oats, two hundred grams.
                """);
        Files.writeString(folder.resolve("episode.yaml"), """
                narration:
                  offsets:
                    main.vtt: {film: main.mp4, begins: "0:00:01"}
                """);
        Path footage = Files.createDirectories(folder.resolve("footage"));
        Take take = new Take(4, 40);
        take.film(footage.resolve("main.mp4"), 2, 500, "10:00:00:00");
        take.film(footage.resolve("close-up.mp4"), 7.48, 450, "10:00:05:12");
        new Take(8, 40).film(footage.resolve("monday.mp4"), 2, 500, "10:00:04:00");
        desk = OpenDesk.over(folder);
        page = InBrowser.page(desk);
        page.navigate(desk.origin() + "/e/" + folder.getFileName() + "/find?of=footage/main.mp4&t=9.5");
    }

    @AfterEach
    void close() {
        page.context().close();
        desk.close();
    }

    @Test
    void the_same_moment_is_one_key_away_and_back() {
        Locator across = page.locator("#cameras a");
        assertThat(across).hasText("The same in footage/close-up.mp4 0:04");
        assertThat(page.locator("#cameras .caution"))
                .hasText("footage/monday.mp4: by time code this ran beside footage/main.mp4,"
                        + " but the two sound different, so they are not laid together.");
        InBrowser.assertUsableByAll(page);
        InBrowser.assertNoSidewaysScrolling(page);
        InBrowser.picture(page, "find-cameras");

        page.locator("h1").click();
        page.keyboard().press("o");
        assertThat(page.locator("#playing")).hasText("footage/close-up.mp4");
        assertThat(page.locator("#code")).hasText("00:00:04:00"); // 9.5 s are frame 237, and 5.48 s are 137
        page.locator("#cameras a").first().click();
        assertThat(page.locator("#playing")).hasText("footage/main.mp4");
        assertThat(page.locator("#code")).hasText("00:00:09:12");
    }

    @Test
    void a_moment_that_the_other_camera_missed_leads_nowhere() {
        assertThat(page.locator("#cameras a")).containsText("close-up.mp4");
        page.locator("#cues a").first().click();
        assertThat(page.locator("#cameras a")).containsText("did not run");
        assertThat(page.locator("#other")).isHidden();
    }

    @Test
    void what_is_to_know_about_the_words_stands_beside_them() {
        Locator notes = page.locator("#notes");
        assertThat(notes.locator("summary")).hasText("2 things to know about these words");
        notes.locator("summary").click();
        assertThat(notes.getByRole(AriaRole.LISTITEM).first())
                .hasText("narration/main.vtt: episode.yaml puts it 0:01 later.");
        assertThat(notes.getByRole(AriaRole.LISTITEM).nth(1)).hasText(Pattern.compile("narration/main.vtt:6: .*"));
        InBrowser.assertUsableByAll(page);
        InBrowser.picture(page, "find-notes");
    }
}
