package org.misecue.claims;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.narration.Narration;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.spoken.Speech;

/** Claims as somebody else wrote them down, {@code held.yaml}; its head tells how the first hearing went. */
class HeldClaimsTest {

    @TempDir
    private Path folder;

    private int found;
    private int missed;
    private int extra;
    private final List<String> softened = new ArrayList<>();

    @Test
    void finds_nearly_all_and_never_softens_a_claim_that_is_contradicted() throws IOException {
        try (InputStream in = HeldClaimsTest.class.getResourceAsStream("held.yaml")) {
            for (JsonNode row : new YAMLMapper().readTree(in)) {
                hear(row);
            }
        }
        System.out.printf("held claims: found %d, missed %d, false %d%n", found, missed, extra);
        assertThat(softened).isEmpty();
        assertThat(missed).isLessThanOrEqualTo(1);
        assertThat(extra).isLessThanOrEqualTo(4);
    }

    private void hear(JsonNode row) throws IOException {
        StringBuilder text = new StringBuilder("# " + row.path("title").asText("Bake") + "\n\n## Ingredients\n\n");
        row.get("ingredients")
                .forEach(line -> text.append("- ").append(line.asText()).append('\n'));
        text.append("\n## Method\n\n1. Mix everything.\n");
        Recipe recipe =
                RecipeReader.read(Files.writeString(folder.resolve("recipe.md"), text), "recipe.md", Pantry.standard());
        String said = row.path("said").asText("");
        List<Narration> narrations = said.isBlank() ? List.of() : List.of(Speech.narration(said));
        List<Claim> left = new ArrayList<>(Claims.of(recipe, narrations, List.of(), List.of(), Pantry.standard()));
        for (JsonNode wanted : row.get("claims")) {
            Set<String> words = words(wanted.get("words").asText());
            Optional<Claim> best = left.stream()
                    .filter(claim -> shared(claim, words) > 0)
                    .max(Comparator.comparingInt(claim -> shared(claim, words)));
            if (best.isEmpty()) {
                missed++;
                continue;
            }
            found++;
            left.remove(best.get());
            boolean contradicted = wanted.get("ruling").asText().equals("contradicted");
            if (contradicted && best.get().ruling() != Ruling.CONTRADICTED) {
                softened.add(row.get("id").asText() + ": " + best.get().reason());
            }
        }
        extra += left.size();
    }

    private static int shared(Claim claim, Set<String> words) {
        Set<String> own = new HashSet<>(words(claim.words()));
        own.retainAll(words);
        return own.size();
    }

    private static Set<String> words(String text) {
        return new HashSet<>(Arrays.asList(text.toLowerCase(Locale.ROOT).split("[^a-z]+")));
    }
}
