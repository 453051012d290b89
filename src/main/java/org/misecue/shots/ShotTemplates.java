package org.misecue.shots;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.recipe.MethodActions;

/**
 * The templates by technique. Those that come with the program are read when asked for; an episode's own, in its folder
 * {@code shot-templates/}, take their place.
 */
public final class ShotTemplates {

    /** The first shots of every list. */
    static final String KITCHEN = "kitchen";

    static final String WELCOME = "welcome";
    static final String LINE_UP = "ingredients-line-up";

    /** The last shots of every list. */
    static final String REVEAL = "reveal";

    /** Stands in for every technique without a template. */
    static final String DEFAULT = "default";

    /** Those of the program that have words; a test holds this against the files. */
    private static final List<String> WITH_WORDS = List.of("arrange", "fill-tin", "pour");

    /** Those of the program: what steps may list, what words tell, and what belongs to no step. */
    private static final List<String> TECHNIQUES = Stream.of(
                    MethodActions.techniques().stream(),
                    WITH_WORDS.stream(),
                    Stream.of(KITCHEN, WELCOME, LINE_UP, REVEAL, DEFAULT, "rest"))
            .flatMap(each -> each)
            .distinct()
            .sorted()
            .toList();

    private static final long LARGEST_FILE = 64 * 1024;

    private final Map<String, ShotTemplate> own;
    private final Map<String, Optional<ShotTemplate>> supplied = new ConcurrentHashMap<>();

    private ShotTemplates(Map<String, ShotTemplate> own) {
        this.own = own;
    }

    /** Those that come with the program. */
    public static ShotTemplates standard() {
        return new ShotTemplates(Map.of());
    }

    /**
     * Those of the program, with an episode's own before them.
     *
     * @param folder need not exist
     * @throws BadInput if a file in it is not a shot template, or is one that no method would ever call, or two are for one
     *     technique
     */
    public static ShotTemplates withOwn(Path folder) {
        if (!Files.exists(folder)) {
            return standard();
        }
        if (!Files.isDirectory(folder)) {
            throw new BadInput(
                    Place.of(Objects.requireNonNull(folder.getFileName()).toString()),
                    "this is a file where the folder of the episode's own templates is looked for; rename it.");
        }
        Map<String, ShotTemplate> own = new HashMap<>();
        Map<String, String> files = new HashMap<>();
        try (Stream<Path> entries = Files.list(folder)) {
            for (Path file : entries.filter(ShotTemplates::isTemplate).sorted().toList()) {
                String name = folder.getFileName() + "/" + file.getFileName();
                ShotTemplate template = TemplateReader.readOwn(name, text(file, name), TECHNIQUES);
                own.put(template.technique(), template);
                String other = files.put(template.technique(), name);
                if (other != null) {
                    throw new BadInput(
                            Place.of(name),
                            "“" + template.technique() + "” has a template in " + other + " already; keep one.");
                }
            }
        } catch (IOException e) {
            throw new BadInput(
                    Place.of(folder.getFileName().toString()), "the folder cannot be read; check its permissions.", e);
        }
        return new ShotTemplates(Map.copyOf(own));
    }

    /** The template of a technique, or the default one where it has none. */
    public ShotTemplate of(String technique) {
        return find(technique).or(() -> find(DEFAULT)).orElseThrow();
    }

    /** Whether the technique has a template of its own. */
    public boolean has(String technique) {
        return find(technique).isPresent();
    }

    /** Those that are found by their words, because the reading of recipes does not list their technique. */
    List<ShotTemplate> toldByWords() {
        return Stream.concat(WITH_WORDS.stream(), own.keySet().stream().sorted())
                .distinct()
                .map(this::of)
                .filter(template -> !template.words().isEmpty())
                .toList();
    }

    private Optional<ShotTemplate> find(String technique) {
        ShotTemplate first = own.get(technique);
        return first != null ? Optional.of(first) : supplied.computeIfAbsent(technique, ShotTemplates::supplied);
    }

    private static Optional<ShotTemplate> supplied(String technique) {
        String file = "shot-templates/" + technique + ".yaml";
        try (InputStream in = ShotTemplates.class.getResourceAsStream("/" + file)) {
            return in == null
                    ? Optional.empty()
                    : Optional.of(TemplateReader.read(file, new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    private static boolean isTemplate(Path file) {
        String name = Objects.requireNonNull(file.getFileName()).toString().toLowerCase(Locale.ROOT);
        return (name.endsWith(".yaml") || name.endsWith(".yml")) && !name.startsWith(".");
    }

    private static String text(Path file, String name) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new BadInput(
                    Place.of(name), "this is a folder or a broken link, not a template; rename it or take it out.");
        }
        if (Files.size(file) > LARGEST_FILE) {
            throw new BadInput(Place.of(name), "the file is over 64 KB, which no shot template is; take it out.");
        }
        try {
            return Files.readString(file);
        } catch (CharacterCodingException e) {
            throw new BadInput(Place.of(name), "the file is not UTF-8 text; save it as UTF-8.", e);
        }
    }
}
