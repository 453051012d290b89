package org.misecue.worktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResultNamesTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            footage/main.mp4 footage/close.mp4            | main close
            footage/A001.mov footage/A001.mp4             | A001.mov A001.mp4
            footage/A001.mov footage/a001.MP4             | A001.mov a001.MP4
            footage/A001.mov footage/A001.mov.mp4         | A001 A001.mov.mp4
            footage/A001.mov footage/A001.mp4 footage/A001.mov.mkv | A001.mov A001.mp4 A001.mov.mkv
            narration/main.vtt narration/main.srt         | main.vtt main.srt
            narration/talk footage/talk.mp4               | talk talk.mp4
            """)
    void files_of_one_stem_keep_their_endings(String files, String names) {
        List<String> all = List.of(files.split(" "));
        assertThat(all.stream().map(new ResultNames(all)::of).collect(Collectors.joining(" ")))
                .isEqualTo(names);
    }

    /** Names that are stems and endings of each other, in every mixture. */
    @Test
    void no_two_files_share_a_name() {
        List<String> parts = List.of("a", "A", "a.mov", "b");
        List<String> endings = List.of(".mov", ".MOV", ".mp4", ".mov.mp4", "");
        Random random = new Random(5);
        for (int round = 0; round < 2000; round++) {
            List<String> files = new ArrayList<>();
            Stream.generate(() -> parts.get(random.nextInt(4)) + endings.get(random.nextInt(5)))
                    .limit(1 + random.nextInt(6))
                    .filter(file -> files.stream().noneMatch(file::equalsIgnoreCase))
                    .forEach(files::add);
            ResultNames names = new ResultNames(files);
            assertThat(files.stream()
                            .map(file -> names.of(file).toLowerCase(Locale.ROOT))
                            .toList())
                    .as("%s", files)
                    .doesNotHaveDuplicates();
        }
    }
}
