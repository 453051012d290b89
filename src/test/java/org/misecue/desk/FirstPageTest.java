package org.misecue.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FirstPageTest {

    @TempDir
    Path temp;

    @Test
    void an_archive_shows_its_episodes() {
        OpenDesk.sample(temp);
        OpenDesk.copy(Path.of("sample-project"), temp.resolve("another & one"));
        try (OpenDesk desk = OpenDesk.over(temp)) {
            Page page = InBrowser.page(desk);
            assertThat(page.locator(".episodes a").allInnerTexts()).containsExactly("another & one", "sample-project");
            InBrowser.assertUsableByAll(page);
            page.context().close();
        }
    }

    @Test
    void a_folder_without_anything_begins_with_an_episode() {
        try (OpenDesk desk = OpenDesk.over(temp).enter()) {
            assertThat(desk.get("/").headers().firstValue("Location")).contains("/new");
        }
    }
}
