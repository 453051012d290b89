package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ticks and the list with the boxes, with the sample episode. */
class ChecklistTest {

    @TempDir
    Path folder;

    private OnStage stage = new OnStage(Path.of("."));

    @BeforeEach
    void set() {
        stage = new OnStage(folder).withSample();
    }

    private String prep(String... more) {
        String[] args = new String[more.length + 3];
        args[0] = "prep";
        args[1] = "sample-project";
        args[2] = "--quiet";
        System.arraycopy(more, 0, args, 3, more.length);
        OnStage.Ran ran = stage.run(args);
        assertThat(ran.err()).isEmpty();
        return ran.out();
    }

    private String ticked(String... more) {
        StringBuilder out = new StringBuilder();
        prep(more)
                .lines()
                .filter(line -> line.contains("[x]"))
                .map(String::strip)
                .distinct()
                .forEach(line -> out.append(line.substring(4, 6).strip()).append(' '));
        return out.toString().strip();
    }

    private void rewrite(String from, String to) throws IOException {
        Path recipe = folder.resolve("sample-project/recipe.md");
        String text = Files.readString(recipe);
        assertThat(text).contains(from);
        Files.writeString(recipe, text.replace(from, to));
    }

    @Test
    void ticks_are_kept_until_they_are_taken_off() {
        assertThat(ticked("--tick", "3,5-6,b")).isEqualTo("B 3 5 6");
        assertThat(ticked("--tick", "9", "--untick", "5")).isEqualTo("B 3 6 9");
        assertThat(ticked()).isEqualTo("B 3 6 9");
        assertThat(prep("--json")).contains("\"ticked\" : true");
        assertThat(folder.resolve("sample-project/.misecue/ticks.yaml")).isRegularFile();
    }

    @Test
    void a_tick_falls_off_when_its_amount_changes_and_does_not_come_back_by_itself() throws IOException {
        ticked("--tick", "6,7");
        rewrite("100 g (3½ oz) caster", "110 g (4 oz) caster");
        assertThat(ticked()).isEqualTo("7");
        ticked("--tick", "9");
        rewrite("110 g (4 oz) caster", "100 g (3½ oz) caster");
        assertThat(ticked()).isEqualTo("7 9");
    }

    @Test
    void a_tick_goes_with_its_bowl_when_the_numbers_move() throws IOException {
        ticked("--tick", "6");
        rewrite("- 1 tbsp lemon juice\n", "");
        assertThat(ticked()).isEqualTo("5");
    }

    @ParameterizedTest
    @CsvSource({
        "40, 'misecue: --tick: there is no bowl 40; the bowls go from 1 to 16.'",
        "2-99, 'misecue: --tick: there is no bowl 17; the bowls go from 1 to 16.'",
        "6-2, 'misecue: --tick: a run goes upwards; write 2-6.'",
        "Q, 'misecue: --tick: there is no bowl or job “Q”; bowls have numbers from 1 to 16 and jobs letters from A to G.'",
    })
    void what_is_not_on_the_list_is_refused_and_nothing_is_written(String what, String sentence) {
        OnStage.Ran ran = stage.run("prep", "sample-project", "--quiet", "--tick", what);
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err().strip()).isEqualTo(sentence);
        assertThat(folder.resolve("sample-project/.misecue/ticks.yaml")).doesNotExist();
    }

    @Test
    void a_file_of_ticks_that_is_no_list_is_told_with_its_place() {
        stage.write("sample-project/.misecue/ticks.yaml", "bowls: 3\n");
        OnStage.Ran ran = stage.run("prep", "sample-project", "--quiet");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err())
                .contains(".misecue/ticks.yaml:1:1: expected a list of texts; mend it or delete the file.");
    }

    @ParameterizedTest
    @CsvSource({"A4, 595, 842", "Letter, 612, 792"})
    void the_checklist_has_two_pages_at_most_of_the_paper_asked_for(String paper, int width, int height)
            throws IOException {
        prep("--pdf", "--paper", paper);
        byte[] pdf = Files.readAllBytes(folder.resolve("sample-project/out/checklist.pdf"));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isBetween(1, 2);
            assertThat(Math.round(document.getPage(0).getMediaBox().getWidth())).isEqualTo(width);
            assertThat(Math.round(document.getPage(0).getMediaBox().getHeight()))
                    .isEqualTo(height);
        }
    }
}
