package org.misecue.episode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.scale.Batch;
import org.misecue.scale.Sets;

class SettingsReaderTest {

    private static EpisodeSettings read(String yaml) {
        return SettingsReader.read(yaml, "episode.yaml");
    }

    @Test
    void reads_every_setting() {
        EpisodeSettings settings = read("""
                title: "Plum plait: the long cut"
                language: en-GB
                batch:
                  times: 1.5
                takes: 2
                spare: 1
                kitchen:
                  ovens: 2
                  scale: 0.1 g
                  spoons: australia
                  mixer: 4.8 l
                publish:
                  max-length: 4000
                  household: metric
                  first: household
                  case: bold
                  method: no
                  film: narration/main.vtt
                  batch: {makes: 12}
                  language: fr
                  links: keep
                  summary: A plait with plums.
                  url: https://example.org/plum-plait
                  video-url: https://example.org/plum-plait.mp4
                  embed-url: https://example.org/player?film=plum-plait
                  thumbnail: https://example.org/plum-plait.jpg
                  image: https://example.org/whole.jpg
                  date: 2026-05-18
                  author: Somebody
                  publisher: Some kitchen
                first-shot: 2026-05-04 9:30
                spares: {failures: no}
                made-earlier: [8, 3]
                day:
                  presenters: 2
                  cameras: 2
                  end: 17:30
                  line-up: 3 min
                  set-up: 8
                  shelves: 1
                  rings: 2
                  stand-mixer: no
                  breaks:
                    - {from: 12:00, to: 14:00, for: 1 h}
                  daylight: {from: 10:00, to: 15:30, set-ups: [hero table, window]}
                  appointments:
                    - {at: 11:00, for: 20 min, who: presenter, what: delivery}
                    - {at: 15:00, shot: 22}
                  after: ["7: 1, 6", "8:"]
                narration:
                  offsets:
                    part-2.vtt: 0:12:30
                    narration/part-3.vtt: {film: footage/take-1.mp4, begins: "-0:00:02.5"}
                """);
        assertThat(settings)
                .isEqualTo(new EpisodeSettings(
                        Optional.of("Plum plait: the long cut"),
                        Locale.UK,
                        new Batch.Factor(Rationals.of(3, 2)),
                        new Sets(2, 1),
                        new EpisodeSettings.Kitchen(
                                2,
                                Quantity.of(Rationals.of(1, 10), Unit.GRAM),
                                Optional.of(Household.AUSTRALIAN),
                                Optional.of(Quantity.of(Rationals.of("4.8"), Unit.LITRE))),
                        new EpisodeSettings.Publish(
                                OptionalInt.of(4000),
                                Household.METRIC,
                                false,
                                true,
                                false,
                                Optional.of("narration/main.vtt"),
                                new Batch.Makes(Rationals.of(12), ""),
                                Locale.FRENCH,
                                EpisodeSettings.Links.KEEP,
                                new EpisodeSettings.Web(
                                        Optional.of("A plait with plums."),
                                        Optional.of(URI.create("https://example.org/plum-plait")),
                                        Optional.of(URI.create("https://example.org/plum-plait.mp4")),
                                        Optional.of(URI.create("https://example.org/player?film=plum-plait")),
                                        Optional.of(URI.create("https://example.org/plum-plait.jpg")),
                                        Optional.of(URI.create("https://example.org/whole.jpg")),
                                        Optional.of(LocalDate.of(2026, 5, 18)),
                                        Optional.of("Somebody"),
                                        Optional.of("Some kitchen"))),
                        Optional.of(LocalDateTime.of(2026, 5, 4, 9, 30)),
                        new Standby(false, true, Set.of(3, 8)),
                        new FilmingDay(
                                2,
                                2,
                                Optional.of(LocalTime.of(17, 30)),
                                3,
                                8,
                                1,
                                2,
                                false,
                                List.of(new FilmingDay.Break(LocalTime.of(12, 0), LocalTime.of(14, 0), 60)),
                                Optional.of(new FilmingDay.Daylight(
                                        LocalTime.of(10, 0), LocalTime.of(15, 30), List.of("hero table", "window"))),
                                List.of(
                                        new FilmingDay.Appointment(LocalTime.of(11, 0), 20, "presenter", 0, "delivery"),
                                        new FilmingDay.Appointment(LocalTime.of(15, 0), 0, "", 22, "")),
                                Map.of(7, Set.of(1, 6), 8, Set.of())),
                        List.of(
                                new Offset(
                                        "part-2.vtt",
                                        Optional.empty(),
                                        Duration.ofMinutes(12).plusSeconds(30),
                                        new Place("episode.yaml", 52, 5)),
                                new Offset(
                                        "part-3.vtt",
                                        Optional.of("take-1.mp4"),
                                        Duration.ofMillis(-2500),
                                        new Place("episode.yaml", 53, 5)))));
    }

    @Test
    void what_is_left_out_or_left_blank_has_its_usual_value() {
        assertThat(read("")).isEqualTo(EpisodeSettings.DEFAULT);
        assertThat(read("# nothing set\n")).isEqualTo(EpisodeSettings.DEFAULT);
        assertThat(read("title:\nkitchen:\n")).isEqualTo(EpisodeSettings.DEFAULT);
        assertThat(read("kitchen: {ovens: 3}").kitchen().scale()).isEqualTo(Quantity.of(1, Unit.GRAM));
    }

    /** Each case of the file: the settings, a line of four dashes, the whole message; cases apart by four equals signs. */
    static Stream<String[]> damaged() throws IOException {
        try (InputStream in = SettingsReaderTest.class.getResourceAsStream("damaged-settings.txt")) {
            String all = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            return Arrays.stream(all.split("====\n")).map(text -> text.split("----\n"));
        }
    }

    @ParameterizedTest
    @MethodSource("damaged")
    void damaged_settings_are_told_with_place_and_remedy(String yaml, String message) {
        assertThatThrownBy(() -> read(yaml)).isInstanceOf(BadInput.class).hasMessage(message.strip());
    }

    @Test
    void a_file_that_swells_by_aliases_is_refused() {
        StringBuilder yaml = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 30; i++) {
            yaml.append("a%d: &a%d [*a%d, *a%d]%n".formatted(i, i, i - 1, i - 1));
        }
        assertThatThrownBy(() -> read(yaml.toString()))
                .isInstanceOf(BadInput.class)
                .hasMessage("episode.yaml:7:10: this is not YAML that can be read; write “key: value” lines.");
    }
}
