package org.misecue.desk.find;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.desk.InBrowser;
import org.misecue.desk.OpenDesk;
import org.misecue.footage.FrameRate;
import org.misecue.footage.Timecode;

/** The page counts frames as {@link Timecode} does, which is held against SMPTE ST 12 in its own tests. */
class TimecodeInBrowserTest {

    private static final FrameRate NTSC = new FrameRate(30000, 1001);
    private static final List<Timecode> STARTS = List.of(
            new Timecode(new FrameRate(25, 1), false, 0),
            Timecode.parse("10:59:58:24", new FrameRate(25, 1)),
            Timecode.parse("23:59:30:00", new FrameRate(24000, 1001)),
            Timecode.parse("00:58:59;29", NTSC),
            Timecode.parse("23:59:59;29", NTSC),
            Timecode.parse("01:09:59;58", new FrameRate(60000, 1001)));

    @TempDir
    Path temp;

    @Test
    void the_cameras_time_code_is_written_as_everywhere_else() {
        try (OpenDesk desk = OpenDesk.over(OpenDesk.sample(temp))) {
            Page page = InBrowser.page(desk);
            for (Timecode start : STARTS) {
                page.route("**/find?*", route -> withFilm(route, start));
                page.navigate(desk.origin() + "/e/sample-project/find?t=0");
                for (double at : new double[] {0, 0.5, 1.25, 29.98, 60.1, 119.9, 301.02, 479.5}) {
                    page.evaluate("at => { place.value = at; place.dispatchEvent(new Event('input')); }", at);
                    double shown = ((Number) page.evaluate("film.currentTime")).doubleValue();
                    assertThat(page.locator("#camera").innerText())
                            .as("%s at %s", start, at)
                            .isEqualTo("camera " + start.plus(Duration.ofNanos(Math.round(shown * 1e9))));
                }
                page.unroute("**/find?*");
            }
            page.context().close();
        }
    }

    /** As if the film of the page were another. */
    private static void withFilm(Route route, Timecode start) {
        APIResponse page = route.fetch();
        route.fulfill(new Route.FulfillOptions()
                .setResponse(page)
                .setBody(page.text()
                        .replaceFirst(
                                "data-frames=\"\\d+\"",
                                "data-frames=\"" + start.rate().frames() + '"')
                        .replaceFirst(
                                "data-seconds=\"\\d+\"",
                                "data-seconds=\"" + start.rate().seconds() + '"')
                        .replaceFirst(
                                "data-length=",
                                "data-starts=\"" + start.frame() + (start.dropFrame() ? "\" data-drops" : "\"")
                                        + " data-length=")));
    }
}
