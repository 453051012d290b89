package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Documents that people read, kept as files to read; of pages without the style, which all share. {@code
 * -Dgolden.write=true} writes them anew.
 */
public final class Golden {

    private Golden() {}

    /** @param file beside the test's package in the test resources */
    public static void check(Class<?> test, String file, String actual) {
        try {
            if (Boolean.getBoolean("golden.write")) {
                Path path = Path.of("src/test/resources", test.getPackageName().replace('.', '/'), file);
                Files.writeString(path, withoutStyle(actual));
                return;
            }
            try (InputStream in = test.getResourceAsStream(file)) {
                assertThat(in).as("the golden file %s", file).isNotNull();
                assertThat(withoutStyle(actual)).isEqualTo(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String withoutStyle(String page) {
        return page.replaceAll("(?s)<style>.*?</style>", "<style></style>");
    }
}
