package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** What is published, against the files that show how it should read; {@code -Dgolden.write=true} writes them anew. */
final class Goldens {

    private static final Path FOLDER = Path.of("src/test/resources/org/misecue/publish");

    private Goldens() {}

    static void check(String file, String published) throws IOException {
        Path golden = FOLDER.resolve(file);
        if (Boolean.getBoolean("golden.write")) {
            Files.writeString(golden, published);
        }
        assertThat(published).as(file).isEqualTo(Files.readString(golden));
    }
}
