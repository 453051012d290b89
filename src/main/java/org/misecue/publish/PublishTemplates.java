package org.misecue.publish;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.misecue.notice.BadInput;
import org.misecue.notice.NearestWord;
import org.misecue.notice.Place;

/** The templates of what is published: those that come with the program, and a person's own in their place. */
public final class PublishTemplates {

    static final String DESCRIPTION = "description.txt";
    static final String PAGE = "recipe.html";

    private static final List<String> FILES = List.of(DESCRIPTION, PAGE);
    private static final long LARGEST_FILE = 256 * 1024;

    private final Map<String, Template> own;

    private PublishTemplates(Map<String, Template> own) {
        this.own = own;
    }

    /** Those that come with the program. */
    public static PublishTemplates standard() {
        return new PublishTemplates(Map.of());
    }

    /**
     * With a person's own, a later folder before an earlier one.
     *
     * @param folders by the name under which the person knows them; need not exist
     * @throws BadInput with file and line where one of them is wrong
     */
    public static PublishTemplates withOwn(Map<String, Path> folders) {
        Map<String, Template> own = new LinkedHashMap<>();
        folders.forEach((name, folder) -> {
            if (Files.exists(folder)) {
                own.putAll(read(name, folder));
            }
        });
        return new PublishTemplates(own);
    }

    private static Map<String, Template> read(String name, Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new BadInput(Place.of(name), "this is a file where a folder of templates is looked for; rename it.");
        }
        Map<String, Template> own = new LinkedHashMap<>();
        try (Stream<Path> entries = Files.list(folder)) {
            for (Path file :
                    entries.filter(PublishTemplates::isTemplate).sorted().toList()) {
                String kind = Objects.requireNonNull(file.getFileName()).toString();
                String known = name + "/" + kind;
                if (!FILES.contains(kind)) {
                    throw new BadInput(
                            Place.of(known), "no template has this name; " + NearestWord.remedy(kind, FILES));
                }
                own.put(kind, Template.of(known, text(file, known)));
            }
        } catch (IOException e) {
            throw new BadInput(Place.of(name), "the folder cannot be read; check its permissions.", e);
        }
        return own;
    }

    private static boolean isTemplate(Path file) {
        String name = Objects.requireNonNull(file.getFileName()).toString().toLowerCase(Locale.ROOT);
        return !name.startsWith(".") && (name.endsWith(".txt") || name.endsWith(".html") || name.endsWith(".htm"));
    }

    private static String text(Path file, String name) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new BadInput(Place.of(name), "this is a folder or a broken link, not a template; rename it.");
        }
        if (Files.size(file) > LARGEST_FILE) {
            throw new BadInput(Place.of(name), "the file is over 256 KB, which no template is; take it out.");
        }
        try {
            return Files.readString(file);
        } catch (CharacterCodingException e) {
            throw new BadInput(Place.of(name), "the file is not UTF-8 text; save it as UTF-8.", e);
        }
    }

    Template description() {
        return find(DESCRIPTION);
    }

    Template page() {
        return find(PAGE);
    }

    private Template find(String file) {
        Template first = own.get(file);
        return first != null ? first : supplied(file);
    }

    /** As it comes with the program. */
    static String text(String file) {
        String resource = "templates/" + file;
        try (InputStream in = PublishTemplates.class.getResourceAsStream(resource)) {
            return new String(Objects.requireNonNull(in, resource).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(resource, e);
        }
    }

    private static Template supplied(String file) {
        return Template.of(file, text(file));
    }
}
