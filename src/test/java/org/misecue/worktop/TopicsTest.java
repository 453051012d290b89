package org.misecue.worktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ingredients and allergens over an archive, also where nobody speaks of them; the episodes are invented. */
class TopicsTest {

    @TempDir
    Path archive;

    private ArchiveShelf shelf;

    @BeforeEach
    void index() throws Exception {
        episode(
                "oat-bars",
                "- 100 g tahini\n- 200 g rolled oats\n- 2 tbsp honey",
                "[0:05] stir the honey into the oats");
        episode(
                "plum-cake",
                "- 150 g unsalted butter\n- 2 eggs",
                "[0:05] so the butter is soft\n[0:30] crack the eggs");
        episode("soda-bread", "- 300 ml buttermilk\n- 400 g plain flour", "[0:05] pour in the buttermilk");
        shelf = ArchiveShelf.open(archive, Optional.empty());
        shelf.freshen((done, of, name) -> {});
    }

    @AfterEach
    void close() {
        shelf.close();
    }

    @ParameterizedTest
    @CsvSource({
        "allergen:sesame, oat-bars",
        "allergen:milk, plum-cake soda-bread",
        "allergen:dairy, plum-cake soda-bread",
        "allergen:eggs, plum-cake",
        "allergen:wheat, soda-bread",
        "ingredient:butter, plum-cake",
        "ingredient:tahini, oat-bars",
        "ingredient:honey stir, oat-bars",
    })
    void each_episode_that_has_it_is_found_once_at_least(String query, String episodes) {
        List<String> found = shelf.find(query, 20).hits().stream()
                .map(hit -> hit.episodeName())
                .distinct()
                .sorted()
                .toList();
        assertThat(found.stream().collect(Collectors.joining(" "))).isEqualTo(episodes);
    }

    private void episode(String name, String list, String talk) throws Exception {
        Path folder = Files.createDirectories(archive.resolve(name).resolve("narration"));
        Files.writeString(folder.resolveSibling("recipe.md"), "# " + name + "\n\n" + list + "\n\n1. Mix all of it.\n");
        Files.writeString(folder.resolve("main.txt"), talk + "\n");
    }
}
