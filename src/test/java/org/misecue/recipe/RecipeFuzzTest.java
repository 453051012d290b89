package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.notice.BadInput;

/** Whatever the bytes: a recipe, or one sentence that says what is wrong. The first byte chooses the kind of file. */
class RecipeFuzzTest {

    private static final List<String> KINDS = List.of("md", "txt", "html", "docx", "odt", "pdf", "rtf");

    @TempDir
    Path folder;

    @FuzzTest
    void any_bytes_make_a_recipe_or_a_sentence(byte[] bytes) throws IOException {
        int kind = bytes.length == 0 ? 0 : Math.floorMod(bytes[0] - '0', KINDS.size());
        Path file = folder.resolve("r." + KINDS.get(kind));
        Files.write(file, bytes.length == 0 ? bytes : Arrays.copyOfRange(bytes, 1, bytes.length));
        try {
            Recipe recipe = RecipeReader.read(file, "r");
            assertThat(RecipeText.of(recipe)).endsWith("\n");
            assertThat(RecipeJson.of(recipe)).startsWith("{");
        } catch (BadInput refused) {
            assertThat(refused).hasMessageStartingWith("r: ").message().endsWith(".");
        }
    }
}
