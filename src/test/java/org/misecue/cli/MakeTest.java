package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MakeTest {

    @TempDir
    Path temp;

    @Test
    void makes_everything_and_says_what_each_person_needs_to_know() {
        OnStage stage = new OnStage(temp).withSample();
        OnStage.Ran ran = stage.run("make", "sample-project");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains("sample-project/out/prep.html, prep.pdf, prep.txt", "sample-project/out/labels.pdf")
                .contains("Presenter\n", "Take the butter out of the fridge")
                .contains("Editor\n  narration/main.vtt runs 8:00 ", "footage/take-1.mp4 runs 8:01")
                .contains("Producer\n", "Differs: 175 g unsalted butter", "(3:20)", "cardamom (1:37)")
                .contains("Never said with an amount: plain flour, baking powder");
        assertThat(ran.out().substring(ran.out().indexOf("Presenter")).lines().count())
                .isBetween(10L, 20L);
        for (String name : new String[] {
            "prep.html",
            "prep.pdf",
            "prep.txt",
            "labels.pdf",
            "shots.html",
            "shots.csv",
            "shots.txt",
            "compare.json",
            "compare.html",
            "description.txt",
            "recipe.jsonld"
        }) {
            assertThat(stage.path("sample-project/out/" + name)).isNotEmptyFile();
        }
        assertThat(stage.path("sample-project/out/compare.html")).content().contains("src=\"stills/take-1-3.20.png\"");
        assertThat(stage.path("sample-project/out/stills/take-1-3.20.png")).isNotEmptyFile();
        assertThat(stage.path("sample-project/out/clips/take-1-3.20.mp4")).isNotEmptyFile();
    }

    @Test
    void the_same_input_gives_the_same_bytes() throws IOException {
        OnStage stage = new OnStage(temp).withSample();
        stage.run("make", "sample-project");
        var first = stage.contents();
        stage.run("make", "sample-project");
        var second = stage.contents();
        first.keySet().removeIf(name -> name.contains(".misecue/"));
        assertThat(second).containsAllEntriesOf(first);
    }

    @Test
    void works_before_there_is_narration_or_footage() {
        OnStage stage = new OnStage(temp);
        stage.write("episode/recipe.txt", "Buns\n\nIngredients\n\n500 g plain flour\n\nMethod\n\n1. Sift the flour.\n");
        OnStage.Ran ran = stage.run("make", "episode");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains("No narration yet: put .vtt, .srt, .ttml, .xml, .json or .txt files into narration/.")
                .contains("No footage yet: no stills or clips.")
                .contains("Nothing to compare before there is a narration.")
                .doesNotContain("compare.json");
    }

    @Test
    void what_a_recipe_says_stays_text() throws IOException {
        OnStage stage = new OnStage(temp);
        stage.write("episode/recipe.txt", """
                <script>alert(1)</script>

                Ingredients

                500 g <b onclick="x()">flour</b>
                2 eggs & salt

                Method

                1. Sift the flour <img src=x onerror=y()> and beat the eggs.
                """);
        stage.write("episode/narration/main.txt", "[0:05] four hundred grams of flour <script>z()</script> please\n");
        assertThat(stage.run("make", "episode").exit()).isZero();
        try (Stream<Path> pages = Files.list(stage.path("episode/out"))) {
            assertThat(pages.filter(page -> page.toString().matches(".*\\.(html|jsonld)")))
                    .isNotEmpty()
                    .allSatisfy(page -> assertThat(page)
                            .content()
                            .doesNotContain("<script>alert", "<script>z", "<b onclick", "<img src=x"));
        }
    }
}
