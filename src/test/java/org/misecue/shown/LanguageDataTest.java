package org.misecue.shown;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LanguageDataTest {

    @TempDir
    Path root;

    private Path data(String folder) throws IOException {
        Path data = Files.createDirectories(root.resolve(folder));
        Files.writeString(data.resolve("eng.traineddata"), "data");
        return data;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "usr/share/tesseract-ocr/5/tessdata",
                "usr/share/tessdata",
                "usr/local/share/tessdata",
                "opt/homebrew/share/tessdata"
            })
    void it_is_found_in_the_usual_places(String folder) throws IOException {
        Path data = data(folder);

        assertThat(LanguageData.find(Map.of(), root)).contains(new LanguageData(data));
    }

    @Test
    void the_environment_comes_first() throws IOException {
        data("usr/share/tessdata");
        Path own = data("own");

        assertThat(LanguageData.find(Map.of("TESSDATA_PREFIX", own.toString()), root))
                .contains(new LanguageData(own));
    }

    @Test
    void a_prefix_may_name_the_folder_above() throws IOException {
        Path own = data("own/tessdata");

        assertThat(LanguageData.find(
                        Map.of("TESSDATA_PREFIX", root.resolve("own").toString()), root))
                .contains(new LanguageData(own));
    }

    @Test
    void the_newest_version_is_taken() throws IOException {
        data("usr/share/tesseract-ocr/4.00/tessdata");
        Path newer = data("usr/share/tesseract-ocr/5/tessdata");

        assertThat(LanguageData.find(Map.of(), root)).contains(new LanguageData(newer));
    }

    @Test
    void where_there_is_none_one_sentence_says_how_to_get_it() {
        assertThat(LanguageData.find(Map.of(), root)).isEmpty();
        assertThat(LanguageData.missing("footage/take-1.mp4"))
                .hasToString("footage/take-1.mp4: text in the picture is not read, because Tesseract's language data"
                        + " (eng.traineddata) is not found; install it (Debian: tesseract-ocr-eng) or name its folder"
                        + " in TESSDATA_PREFIX");
    }
}
