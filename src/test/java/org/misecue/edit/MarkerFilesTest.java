package org.misecue.edit;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.misecue.footage.FilmInfo;
import org.misecue.footage.FrameRate;
import org.misecue.footage.Timecode;
import org.misecue.footage.Track;

class MarkerFilesTest {

    private static final FrameRate NTSC = new FrameRate(30_000, 1_001);

    private static MarkedFilm film() {
        FilmInfo info = new FilmInfo(
                Duration.ofSeconds(120),
                List.of(new Track.Picture("h264", 1920, 1080, NTSC, false)),
                Optional.of(Timecode.parse("00:59:59;00", NTSC)));
        return MarkedFilm.of(
                "Crème buns",
                "footage/take-1.mp4",
                info,
                List.of(
                        new Marker(
                                Duration.ofSeconds(61), Marker.Kind.DIFFERS, "cake: butter", "½ tsp – said as 1 tsp"),
                        new Marker(Duration.ZERO, Marker.Kind.STEP, "Heat the oven to 200 °C", ""),
                        new Marker(Duration.ofSeconds(500), Marker.Kind.STEP, "beyond the end", "")));
    }

    /** Columns and note lines as in the samples of the OTIO cmx3600 adapter (looked up). */
    @Test
    void the_edit_list_has_an_event_and_its_places() {
        assertThat(EdlFile.of(film())).isEqualTo("""
                TITLE: Creme buns
                FCM: DROP FRAME

                001  AX       V     C        00:59:59;00 01:01:58;28 00:59:59;00 01:01:58;28
                * FROM CLIP NAME: take-1.mp4
                * LOC: 00:59:59;00 CYAN    STEP Heat the oven to 200 deg C
                * LOC: 01:00:59;28 RED     DIFFERS cake: butter - 1/2 tsp - said as 1 tsp
                """);
        String event = EdlFile.of(film()).lines().skip(3).findFirst().orElseThrow();
        assertThat(List.of(event.indexOf("AX"), event.indexOf("V"), event.indexOf("C "), event.indexOf("00:59")))
                .containsExactly(5, 14, 20, 29);
    }

    /** Names of schemas by AcademySoftwareFoundation/OpenTimelineIO (looked up). */
    @Test
    void the_timeline_uses_the_public_schemas_only() throws IOException {
        JsonNode timeline = new JsonMapper().readTree(OtioFile.of("Crème buns", List.of(film())));
        assertThat(timeline.findValuesAsText("OTIO_SCHEMA"))
                .isSubsetOf(Set.of(
                        "Timeline.1",
                        "Stack.1",
                        "Track.1",
                        "Clip.2",
                        "Marker.2",
                        "ExternalReference.1",
                        "RationalTime.1",
                        "TimeRange.1"));
        JsonNode clip = timeline.at("/tracks/children/0/children/0");
        JsonNode start = clip.at("/markers/1/marked_range/start_time");
        // 61 s at 30000/1001 is frame 1828; the film begins at frame 107862 of the day.
        assertThat(start.path("value").asLong()).isEqualTo(107_862 + 1_828);
        assertThat(start.path("rate").asDouble()).isBetween(29.97, 29.9701);
        assertThat(clip.at("/source_range/duration/value").asLong()).isEqualTo(3_596);
        assertThat(clip.at("/media_references/DEFAULT_MEDIA/target_url").asText())
                .isEqualTo("footage/take-1.mp4");
    }

    @Test
    void the_table_holds_no_formula() {
        MarkedFilm film = film();
        MarkedFilm nasty = new MarkedFilm(
                "x",
                film.file(),
                film.rate(),
                film.starts(),
                film.length(),
                List.of(new Marker(Duration.ZERO, Marker.Kind.LISTEN, "=1+1", "@SUM(1)\"")));
        assertThat(CsvFile.of(List.of(nasty))).contains("\"'=1+1\"").contains("\"'@SUM(1)\"\"\"");
    }
}
