package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FootageTextTest {

    private static final FrameRate NTSC = new FrameRate(30000, 1001);

    private static final List<FilmReport> FILMS = List.of(
            new FilmReport(
                    "footage/side.mov",
                    new FilmInfo(
                            Duration.ofMillis(3_725_040),
                            List.of(
                                    new Track.Picture("prores", 1920, 1080, NTSC, false),
                                    new Track.Sound("pcm_s24le", 48_000, 2),
                                    new Track.Other("none", "data"),
                                    new Track.Sound("pcm_s24le", 48_000, 1),
                                    new Track.Sound("none", 48_000, 4)),
                            Optional.of(Timecode.parse("10:00:00;00", NTSC))),
                    List.of(
                            Optional.of(new TrackSound(
                                    new Loudness(number("-16.449"), number("5.25"), number("0.04")),
                                    List.of(new Silence(Duration.ZERO, Duration.ofMillis(2_040))))),
                            Optional.of(new TrackSound(
                                    new Loudness(Optional.empty(), Optional.empty(), Optional.empty()), List.of())),
                            Optional.empty())),
            new FilmReport(
                    "footage/phone.mp4",
                    new FilmInfo(
                            Duration.ofSeconds(9),
                            List.of(new Track.Picture("h264", 1080, 1920, new FrameRate(2997, 100), true)),
                            Optional.empty()),
                    List.of()));

    private static Optional<BigDecimal> number(String value) {
        return Optional.of(new BigDecimal(value));
    }

    @Test
    void people_read_what_is_there_and_how_far_it_is_from_what_they_want() {
        assertThat(FootageText.of(FILMS, number("-14.0"), Together.UNASKED)).isEqualTo("""
                        footage/side.mov
                          length     1:02:05.040
                          picture    1920 × 1080, prores, 29.97 frames a second
                          time code  10:00:00;00
                          sound 1    pcm_s24le, 48000 Hz, 2 channels
                                     −16.4 LUFS, range 5.3 LU, true peak 0.0 dBTP
                                     2.4 LU below the target of −14 LUFS
                                     silent from 0:00.000 to 0:02.040, 2.0 s
                          sound 2    pcm_s24le, 48000 Hz, 1 channel
                                     no loudness: nothing lasts 0.4 s above −70 LUFS
                          sound 3    none, 48000 Hz, 4 channels
                                     not heard, because this build cannot decode it

                        footage/phone.mp4
                          length     0:09.000
                          picture    1080 × 1920, h264, 29.97 frames a second on average, because they last differently long
                          time code  none
                          sound      none
                        """);
    }

    @Test
    void without_a_target_nothing_is_judged() {
        assertThat(FootageText.of(FILMS, Optional.empty(), Together.UNASKED)).doesNotContain("target", "below");
        assertThat(FootageText.of(FILMS, number("-16.4"), Together.UNASKED)).contains("at the target of −16.4 LUFS");
        assertThat(FootageText.of(FILMS, number("-23"), Together.UNASKED))
                .contains("6.6 LU above the target of −23 LUFS");
        assertThat(FootageText.of(FILMS, number("-20"), Together.UNASKED)).contains("the target of −20 LUFS");
    }

    @Test
    void programs_read_the_same() throws IOException {
        JsonNode json = new ObjectMapper().readTree(FootageJson.of(FILMS, number("-23"), Together.UNASKED));
        JsonNode film = json.at("/films/0");
        assertThat(json.at("/target").asInt()).isEqualTo(-23);
        assertThat(film.at("/length").decimalValue()).isEqualByComparingTo("3725.040");
        assertThat(film.at("/picture").toString())
                .isEqualTo(
                        "{\"codec\":\"prores\",\"width\":1920,\"height\":1080,\"rate\":\"30000/1001\",\"variableRate\":false}");
        assertThat(film.at("/timecode").asText()).isEqualTo("10:00:00;00");
        assertThat(film.at("/sounds/0").toString())
                .isEqualTo(
                        "{\"codec\":\"pcm_s24le\",\"sampleRate\":48000,\"channels\":2,\"lufs\":-16.4,\"rangeLu\":5.3,"
                                + "\"truePeakDbtp\":0.0,\"aboveTargetLu\":6.6,\"silences\":[{\"from\":0.0,\"to\":2.04}]}");
        assertThat(film.at("/sounds/1").has("lufs")).isFalse();
        assertThat(film.at("/sounds/2").toString())
                .isEqualTo("{\"codec\":\"none\",\"sampleRate\":48000,\"channels\":4}");
        assertThat(json.at("/films/1/timecode").isMissingNode()).isTrue();
        assertThat(json.at("/films/1/sounds").isEmpty()).isTrue();
    }
}
