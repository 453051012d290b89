package org.misecue.desk.media;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.misecue.desk.InBrowser;
import org.misecue.episode.Episode;
import org.misecue.footage.Browsers;
import org.misecue.footage.CameraFile;
import org.misecue.worktop.Proxies;

/** What a real browser makes of films and their copies. */
class FilmsInBrowserTest {

    /** Plays a source a little, then tells the clock and how it ended. */
    private static final String PLAY = """
            async src => {
              const video = document.createElement("video");
              video.muted = true;
              document.body.append(video);
              const loaded = new Promise(done => {
                video.onloadeddata = () => done("plays");
                video.onerror = () => done("refused");
              });
              video.src = src;
              const how = await loaded;
              if (how === "plays") {
                await video.play();
                await new Promise(done => { video.ontimeupdate = () => video.currentTime > 0.2 && done(); });
                video.pause();
              }
              window.video = video;
              return how === "plays" && video.videoWidth === 0 ? "is heard only" : how;
            }""";

    /** Goes to a moment and reads the number in the picture there: eight bars, dark or light. */
    private static final String SEEK = """
            async at => {
              const video = window.video;
              const there = new Promise(done => { video.onseeked = done; });
              video.currentTime = at;
              await there;
              await new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)));
              const canvas = document.createElement("canvas");
              canvas.width = video.videoWidth;
              canvas.height = video.videoHeight;
              const pen = canvas.getContext("2d");
              pen.drawImage(video, 0, 0);
              let number = 0;
              for (let bar = 0; bar < 8; bar++) {
                const x = Math.floor((2 * bar + 1) * canvas.width / 16);
                const pixel = pen.getImageData(x, Math.floor(canvas.height / 2), 1, 1).data;
                number = number * 2 + (pixel[1] > 128 ? 1 : 0);
              }
              return {number: number, at: video.currentTime};
            }""";

    @TempDir
    static Path temp;

    private static FilmDesk films;
    private static Page page;

    @BeforeAll
    static void a_desk_is_open() throws IOException {
        films = new FilmDesk(temp);
        page = InBrowser.page(films.desk);
    }

    @AfterAll
    static void and_closed() {
        if (page != null) {
            page.context().close();
        }
        films.close();
    }

    private static String play(String src) {
        return String.valueOf(page.evaluate(PLAY, src));
    }

    @ParameterizedTest
    @EnumSource
    void what_is_said_to_play_does(CameraFile kind) {
        Path film = kind.shoot(films.footage());
        boolean plays = Browsers.objection(film).isEmpty();

        String here = play(FilmDesk.MEDIA + film.getFileName());

        if (plays) {
            assertThat(here).isEqualTo(kind == CameraFile.SOUND_ONLY_MP4 ? "is heard only" : "plays");
        }
        // What this browser plays beyond that, others do not; this it does not either.
        if (kind == CameraFile.PRORES_PCM_MOV) {
            assertThat(here).isNotEqualTo("plays");
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"H264_AAC_MP4", "PRORES_PCM_MOV", "LATE_PICTURE", "H264_AAC_MKV", "VP9_OPUS_WEBM"})
    void the_frame_of_a_moment_is_on_screen_in_film_and_copy(CameraFile kind) {
        Path film = kind.shoot(films.footage());
        String src = FilmDesk.MEDIA + film.getFileName();
        new Proxies().make(Episode.open(films.folder), film, at -> true);
        if (Browsers.objection(film).isEmpty()) {
            assertShows(src);
        }
        assertShows(src + "/proxy");
    }

    private static void assertShows(String src) {
        assertThat(play(src)).as(src).isEqualTo("plays");
        for (int frame : new int[] {50, 3, 74, 0, 25, 24, 26}) {
            for (double within : new double[] {0.001, 0.039}) {
                double at = frame * 0.04 + within;
                Map<?, ?> seen = (Map<?, ?>) page.evaluate(SEEK, at);
                assertThat(seen.get("number")).as("%s at %s", src, at).isEqualTo(frame);
                assertThat(((Number) seen.get("at")).doubleValue())
                        .isCloseTo(at, org.assertj.core.data.Offset.offset(1e-6));
            }
        }
    }

    @Test
    void a_player_seeks_by_ranges() throws IOException {
        // Of a name that this page has not played: browsers ask for no part of a film twice.
        Path film = Files.move(
                CameraFile.H264_AAC_MP4.shoot(films.footage()), films.footage().resolve("not played yet.mp4"));
        java.util.List<Integer> statuses = new java.util.concurrent.CopyOnWriteArrayList<>();
        page.onResponse(answer -> {
            if (answer.url().contains("/media/")) {
                statuses.add(answer.status());
            }
        });

        // What the browser tells of its requests may come later than what the player does.
        page.waitForResponse(
                answer -> answer.url().contains("/media/"), () -> play(FilmDesk.MEDIA + "not%20played%20yet.mp4"));

        assertThat(statuses).isNotEmpty().containsOnly(206);
    }
}
