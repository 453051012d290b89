package org.misecue.narration;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShiftTest {

    private static final String THREE = "[0:05] weigh the flour\n[0:09] fold\n[0:15] bake\n";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0:10|15.0-19.0 weigh the flour, 19.0-25.0 fold, 25.0-27.0 bake",
                "-0:05|0.0-4.0 weigh the flour, 4.0-10.0 fold, 10.0-12.0 bake",
                "-0:07|0.0-2.0 weigh the flour, 2.0-8.0 fold, 8.0-10.0 bake",
                "-0:09|0.0-6.0 fold, 6.0-8.0 bake",
                "-1:00|''"
            })
    void every_time_is_moved_and_what_is_before_the_film_is_left_out(String offset, String cues) {
        Narration shifted =
                Shift.by(TestCues.read(THREE), Clock.parseSigned(offset).orElseThrow());
        assertThat(String.join(", ", TestCues.lines(shifted))).isEqualTo(cues);
    }

    @Test
    void what_is_left_out_is_counted() {
        assertThat(Shift.by(TestCues.read(THREE), Duration.ofSeconds(-15)).notes())
                .extracting(Object::toString)
                .containsExactly(
                        "main: with its offset of -0:15 2 of its 3 cues end before the film begins and were left out; correct the offset in episode.yaml");
    }

    @Property
    void there_and_back_is_where_it_was(
            @ForAll("narrations") Narration narration, @ForAll @LongRange(max = 400_000_000_000_000L) long nanos) {
        Duration offset = Duration.ofNanos(nanos);
        assertThat(Shift.by(Shift.by(narration, offset), offset.negated())).isEqualTo(narration);
    }

    @Property
    void back_and_there_is_where_it_was_if_nothing_was_before_the_film(
            @ForAll("narrations") Narration narration, @ForAll @LongRange(max = 400_000_000_000_000L) long nanos) {
        Duration room = narration.start();
        Duration offset = Duration.ofNanos(Math.min(nanos, room.toNanos())).negated();
        assertThat(Shift.by(Shift.by(narration, offset), offset.negated())).isEqualTo(narration);
    }

    @Provide
    Arbitrary<Narration> narrations() {
        return Arbitraries.longs()
                .between(1, 600_000_000_000L)
                .list()
                .ofMaxSize(20)
                .map(lengths -> {
                    List<Cue> cues = new ArrayList<>();
                    Duration at = Duration.ZERO;
                    for (long length : lengths) {
                        Duration start = at.plusNanos(length / 3);
                        Duration end = at.plusNanos(length);
                        List<Word> words =
                                List.of(new Word("weigh", start), new Word("it", start.plusNanos(length / 4)));
                        cues.add(new Cue(start, end, Optional.empty(), "weigh it", words));
                        at = end;
                    }
                    return new Narration("main.vtt", List.copyOf(cues), List.of());
                });
    }
}
