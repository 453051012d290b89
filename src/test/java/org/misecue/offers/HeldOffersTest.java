package org.misecue.offers;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.spoken.Speech;
import org.misecue.spoken.Words;

/** Offers as somebody else wrote them down, {@code held.yaml}; its head tells how the first hearing went. */
class HeldOffersTest {

    @TempDir
    private Path folder;

    @Test
    void finds_most_and_hardly_anything_false() throws IOException {
        int found = 0;
        int missed = 0;
        int extra = 0;
        try (InputStream in = HeldOffersTest.class.getResourceAsStream("held.yaml")) {
            for (JsonNode row : new YAMLMapper().readTree(in)) {
                List<Offer> left = new ArrayList<>(heard(row));
                for (JsonNode wanted : row.get("offers")) {
                    Optional<Offer> same = left.stream()
                            .filter(offer ->
                                    alike(offer.use(), wanted.get("use").asText())
                                            && alike(
                                                    offer.instead(),
                                                    wanted.get("instead").asText()))
                            .findFirst();
                    same.ifPresent(left::remove);
                    found += same.isPresent() ? 1 : 0;
                    missed += same.isPresent() ? 0 : 1;
                }
                extra += left.size();
            }
        }
        System.out.printf("held offers: found %d, missed %d, false %d%n", found, missed, extra);
        assertThat(found).isGreaterThanOrEqualTo(40);
        assertThat(extra).isLessThanOrEqualTo(2);
    }

    private List<Offer> heard(JsonNode row) throws IOException {
        StringBuilder text = new StringBuilder("# Bake\n\n## Ingredients\n\n");
        row.get("ingredients")
                .forEach(line -> text.append("- ").append(line.asText()).append('\n'));
        text.append("\n## Method\n\n1. Mix everything.\n");
        Recipe recipe =
                RecipeReader.read(Files.writeString(folder.resolve("recipe.md"), text), "recipe.md", Pantry.standard());
        return Offers.of(recipe, List.of(Speech.narration(row.get("said").asText())), Pantry.standard());
    }

    private static boolean alike(String one, String other) {
        return !Collections.disjoint(Words.content(one), Words.content(other));
    }
}
