package org.misecue.publish;

import com.ibm.icu.text.MessageFormat;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.pantry.Allergen;

/** Headings, labels and sentences in one language, from {@code labels.<language>.properties}. */
final class Labels {

    /** Those whose file comes with the program. */
    static final Locale USUAL = Locale.ENGLISH;

    private final Locale language;
    private final Properties words;

    private Labels(Locale language, Properties words) {
        this.language = language;
        this.words = words;
    }

    /** @throws IllegalArgumentException where the program has no labels in that language */
    static Labels in(Locale language) {
        String file = "labels." + language.getLanguage() + ".properties";
        try (InputStream in = Labels.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalArgumentException("there are no labels in " + language.getDisplayLanguage(Locale.UK));
            }
            Properties words = new Properties();
            words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            return new Labels(language, words);
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    Locale language() {
        return language;
    }

    String text(String key) {
        return Objects.requireNonNull(words.getProperty(key), () -> "no label " + key + " in " + language);
    }

    /** A sentence with its blanks filled, plurals chosen as the language does. */
    String text(String key, Map<String, ?> blanks) {
        return new MessageFormat(text(key), language).format(blanks);
    }

    String text(String key, String blank, Object value) {
        return text(key, Map.of(blank, value));
    }

    /** An allergen by its finest English name, such as "wheat"; a name without a translation stays as it is. */
    String allergen(String english) {
        String name =
                words.getProperty("allergen." + english.toLowerCase(Locale.ROOT).replace(' ', '-'));
        return name == null ? english : name;
    }

    /** Short enough for brackets in a line. */
    String allergen(Allergen allergen) {
        return allergen(
                switch (allergen) {
                    case GLUTEN -> "gluten";
                    case SOYBEANS -> "soya";
                    default -> allergen.label();
                });
    }

    /** As the law's list calls it, for the summary. */
    String allergenInFull(Allergen allergen) {
        return allergen(allergen.label());
    }

    /** The labels without blanks, for templates. */
    Map<String, Object> forTemplates() {
        Map<String, Object> all = new LinkedHashMap<>();
        forTemplatesByName().forEach(key -> all.put(key, text(key)));
        return all;
    }

    static Stream<String> forTemplatesByName() {
        return Stream.of(
                "ingredients",
                "allergens",
                "unsaid",
                "offers",
                "offers-allergens",
                "method",
                "chapters",
                "figures",
                "tin",
                "oven",
                "times",
                "cautions",
                "recipe-page");
    }

    /** "wheat and rye", "a, b and c". */
    String and(java.util.Collection<String> names) {
        return names.stream().map(this::allergen).collect(Collectors.joining(" " + text("and") + " "));
    }
}
