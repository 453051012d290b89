package org.misecue.compare;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.api.SoftAssertions;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.misecue.narration.Narration;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.shown.Card;
import org.misecue.shown.CardLine;
import org.misecue.spoken.Speech;

/** What the picture shows against what is written: {@code cards.yaml}. */
class CardsTest {

    /**
     * Cards over a small recipe.
     *
     * @param shown the cards, their lines parted by " / ", a doubtful line with "~" before it
     * @param verdicts of the ingredient lines; not looked at where there are none
     * @param settings the verdicts of oven and times
     * @param unwritten the ingredients that no line has
     * @param unplaced the lines of cards that fit nothing
     */
    record Case(
            String about,
            List<String> lines,
            @Nullable List<String> steps,
            @Nullable String said,
            List<String> shown,
            @Nullable List<String> verdicts,
            @Nullable List<String> settings,
            @Nullable List<String> unwritten,
            @Nullable List<String> unplaced) {

        private SentencesTest.Case recipe() {
            return new SentencesTest.Case(
                    about, lines.isEmpty() ? null : lines, steps, null, null, "", null, null, null);
        }

        @Override
        public String toString() {
            return about + ": " + String.join(" | ", shown);
        }
    }

    @TempDir
    private Path folder;

    static List<Case> cases() throws IOException {
        try (InputStream in = CardsTest.class.getResourceAsStream("cards.yaml")) {
            return new YAMLMapper().readValue(in, new TypeReference<List<Case>>() {});
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void a_card_is_held_against_the_recipe(Case row) throws IOException {
        Path file = Files.writeString(folder.resolve("recipe.md"), row.recipe().markdown());
        Recipe recipe = RecipeReader.read(file, "recipe.md", Pantry.standard());
        List<Narration> narrations = row.said() == null ? List.of() : List.of(Speech.narration(row.said()));

        Comparison found = Comparer.compare(
                recipe, narrations, new Picture(cards(row.shown()), Map.of()), Pantry.standard(), Optional.empty());

        SoftAssertions all = new SoftAssertions();
        Optional.ofNullable(row.verdicts()).ifPresent(wanted -> all.assertThat(found.written().stream()
                        .map(line -> line.verdict().code())
                        .toList())
                .as("lines of %s", found.written())
                .isEqualTo(wanted));
        Optional.ofNullable(row.settings()).ifPresent(wanted -> all.assertThat(found.settings().stream()
                        .map(setting -> setting.verdict().code())
                        .toList())
                .as("settings of %s", found.settings())
                .isEqualTo(wanted));
        all.assertThat(found.unwritten().stream().map(Unwritten::ingredient))
                .as("unwritten")
                .isEqualTo(Optional.ofNullable(row.unwritten()).orElse(List.of()));
        all.assertThat(found.unplaced().stream().map(Evidence::quote))
                .as("unplaced")
                .isEqualTo(Optional.ofNullable(row.unplaced()).orElse(List.of()));
        all.assertAll();
    }

    private static List<Card> cards(List<String> shown) {
        List<Card> cards = new ArrayList<>();
        for (String text : shown) {
            Duration from = Duration.ofSeconds(10L + 20 * cards.size());
            List<CardLine> lines = Arrays.stream(text.split(" / "))
                    .map(line -> new CardLine(line.replace("~", ""), line.startsWith("~")))
                    .toList();
            cards.add(new Card("footage/take-1.mp4", from, from.plusSeconds(4), lines));
        }
        return cards;
    }
}
