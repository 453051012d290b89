package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.misecue.notice.Note;

class RecipeChecksTest {

    /** The method of every row begins on this line, whatever its list holds. */
    private static final int METHOD = 13;

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0} – {1}")
    @CsvFileSource(resources = "recipe-checks.csv", delimiter = '|', quoteCharacter = '\0', emptyValue = "")
    void what_does_not_fit_is_noted_with_its_line_and_nothing_else_is(
            String lines, String steps, int line, String words) throws IOException {
        List<Note> notes = read(lines, steps).notes();
        if (line == 0) {
            assertThat(notes).isEmpty();
        } else {
            assertThat(notes).singleElement().satisfies(note -> {
                assertThat(note.place().line()).isEqualTo(line);
                assertThat(note.sentence()).contains(words);
            });
        }
    }

    private Recipe read(String lines, String steps) throws IOException {
        StringBuilder text = new StringBuilder("# Trial\n\nMakes 1 cake\n\n## Ingredients\n\n");
        List<String> list = List.of(lines.split(";", -1));
        list.forEach(each -> text.append("- ").append(each).append('\n'));
        text.append("\n".repeat(METHOD - 8 - list.size())).append("## Method\n");
        int number = 1;
        for (String step : steps.split(";", -1)) {
            text.append(number++).append(". ").append(step.strip()).append('\n');
        }
        Path file = Files.writeString(folder.resolve("recipe.md"), text);
        return RecipeReader.read(file, "recipe.md");
    }
}
