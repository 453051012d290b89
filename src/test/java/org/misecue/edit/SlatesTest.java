package org.misecue.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.spoken.Speech;

class SlatesTest {

    private static List<Slates.Call> called(String words) {
        return Slates.called(Speech.stream(words));
    }

    @ParameterizedTest
    @CsvSource({
        "shot seven take two, 7, 2",
        "okay um shot 12 take 1 and go, 12, 1",
        "shot number three take one, 3, 1",
        "slate nineteen, 19, 0",
        "slate twenty one take four, 21, 4",
        "shot one hundred and two take three, 102, 3",
    })
    void a_called_slate_tells_shot_and_take(String words, int shot, int take) {
        assertThat(called(words)).singleElement().satisfies(call -> {
            assertThat(call.shot()).isEqualTo(shot);
            assertThat(call.take()).isEqualTo(take);
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a shot of espresso",
                "a shot two if you like it strong",
                "take two eggs",
                "shot half take one",
                "slate",
                "the slate is cold",
                "one shot seven minutes"
            })
    void talk_calls_nothing(String words) {
        assertThat(called(words)).isEmpty();
    }

    @Test
    void each_call_is_kept_in_order() {
        assertThat(called("shot one take one now the flour shot one take two again shot two take one"))
                .extracting(call -> call.shot() + "/" + call.take())
                .containsExactly("1/1", "1/2", "2/1");
    }

    @ParameterizedTest
    @CsvSource({
        "footage/shot-7.mp4, 7, 0",
        "footage/shot-7_take-2.mp4, 7, 2",
        "footage/Slate 012 Take 3.MOV, 12, 3",
        "footage/cam-b_SHOT4take1.mkv, 4, 1",
    })
    void a_films_name_tells_shot_and_take(String file, int shot, int take) {
        assertThat(Slates.named(file)).contains(new Slates.Call(shot, take, Duration.ZERO));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "footage/take-1.mp4",
                "footage/snapshot-3.mp4",
                "footage/shot 2026-05-04.mp4",
                "shot-7/main.mp4",
                "footage/slate.mp4"
            })
    void other_names_tell_nothing(String file) {
        assertThat(Slates.named(file)).isEmpty();
    }
}
