package org.misecue.claims;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.notice.Place;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.shown.Card;
import org.misecue.shown.CardLine;
import org.misecue.spoken.Speech;

/** The table of claims, {@code sentences.yaml}: how many of them are found, and how much is found that is none. */
class ClaimSentencesTest {

    /** A small recipe of {@code recipes.yaml}. */
    record Dish(String title, List<String> lines) {}

    /** What is said, shown or written over a recipe, and the claims in it. */
    record Row(
            String recipe,
            @Nullable String said,
            @Nullable List<String> card,
            @Nullable List<String> written,
            @Nullable List<String> unwritten,
            List<String> claims) {}

    @TempDir
    Path folder;

    /** What is wrong in the second table, which was tried only when the grammar stood, is printed. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"sentences.yaml, 1, 1", "more-sentences.yaml, 0.95, 0.9"})
    void finds_and_rules_on_the_claims_of_the_table_and_nothing_else(
            String table, double leastPrecision, double leastRecall) throws IOException {
        List<String> wrong = new ArrayList<>();
        int right = 0;
        int found = 0;
        int wanted = 0;
        for (Row row : read(table, new TypeReference<List<Row>>() {})) {
            List<String> claims =
                    claims(row).stream().map(ClaimSentencesTest::told).toList();
            List<String> missed = new ArrayList<>(row.claims());
            claims.forEach(missed::remove);
            int here = row.claims().size() - missed.size();
            right += here;
            found += claims.size();
            wanted += row.claims().size();
            if (here != row.claims().size() || here != claims.size()) {
                wrong.add(row + " came to " + claims);
            }
        }
        System.out.printf(
                "claims in %s: %d wanted, %d found, %d right: precision %.3f, recall %.3f%n",
                table, wanted, found, right, right / (double) found, right / (double) wanted);
        wrong.forEach(System.out::println);
        assertThat(right / (double) found).as(wrong::toString).isGreaterThanOrEqualTo(leastPrecision);
        assertThat(right / (double) wanted).as(wrong::toString).isGreaterThanOrEqualTo(leastRecall);
    }

    private static String told(Claim claim) {
        return claim.ruling().code() + ", " + claim.denies() + ", "
                + claim.about().words();
    }

    private List<Claim> claims(Row row) throws IOException {
        return Claims.of(
                recipe(row.recipe()),
                Optional.ofNullable(row.said()).map(Speech::narration).stream().toList(),
                Optional.ofNullable(row.card()).map(ClaimSentencesTest::card).stream()
                        .toList(),
                Optional.ofNullable(row.written()).orElse(List.of()).stream()
                        .map(text -> new Written(Place.of("description.md", 1), text))
                        .toList(),
                Optional.ofNullable(row.unwritten()).orElse(List.of()),
                Pantry.standard());
    }

    private static Card card(List<String> lines) {
        return new Card(
                "footage/take-1.mp4",
                Duration.ofSeconds(3),
                Duration.ofSeconds(8),
                lines.stream().map(line -> new CardLine(line, false)).toList());
    }

    private Recipe recipe(String name) throws IOException {
        Dish dish = Objects.requireNonNull(
                read("recipes.yaml", new TypeReference<Map<String, Dish>>() {}).get(name), name);
        StringBuilder text = new StringBuilder("# " + dish.title() + "\n\n## Ingredients\n\n");
        dish.lines().forEach(line -> text.append(line.startsWith("#") ? "\n##" + line + "\n\n" : "- " + line + "\n"));
        text.append("\n## Method\n\n1. Mix everything and bake.\n");
        return RecipeReader.read(Files.writeString(folder.resolve("recipe.md"), text), "recipe.md");
    }

    private static <T> T read(String file, TypeReference<T> type) throws IOException {
        try (InputStream in = ClaimSentencesTest.class.getResourceAsStream(file)) {
            return new YAMLMapper().readValue(in, type);
        }
    }
}
