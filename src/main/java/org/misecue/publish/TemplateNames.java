package org.misecue.publish;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Stream;

/** The names that a template may use, and which stand inside which section. {@link PublishedNames} fills them. */
record TemplateNames(Map<String, TemplateNames> inner) {

    private static final TemplateNames TEXT = new TemplateNames(Map.of());
    private static final TemplateNames LINE = named("line", "amount").and("pieces", named("text", "allergen"));

    static final TemplateNames ALL = named(
                    "title", "draft", "makes", "summary", "url", "video-url", "language", "recipe-language", "json-ld")
            .and("figures", named("tin", "oven", "times", "other-batch"))
            .and("ingredients", named("goes-on").and("parts", named("heading").and("lines", LINE)))
            .and("allergens", named().and("sentences", named("sentence")))
            .and("cautions", named().and("sentences", named("sentence")))
            .and("unsaid", named().and("lines", LINE))
            .and(
                    "offers",
                    named().and("lines", named("line", "instead", "time").and("pieces", named("text", "allergen"))))
            .and("method", named("other-batch").and("steps", named("number", "text")))
            .and("chapters", named().and("entries", named("time", "name")))
            .and("label", named(Labels.forTemplatesByName().toArray(String[]::new)));

    private static TemplateNames named(String... texts) {
        Map<String, TemplateNames> inner = new LinkedHashMap<>();
        Stream.of(texts).forEach(text -> inner.put(text, TEXT));
        return new TemplateNames(inner);
    }

    private TemplateNames and(String name, TemplateNames section) {
        Map<String, TemplateNames> more = new LinkedHashMap<>(inner);
        more.put(name, section);
        return new TemplateNames(more);
    }

    /** What a name means here, or the two names of "label.tin". */
    Optional<TemplateNames> find(String name) {
        int dot = name.indexOf('.');
        return dot < 0
                ? Optional.ofNullable(inner.get(name))
                : find(name.substring(0, dot)).flatMap(first -> first.find(name.substring(dot + 1)));
    }

    /** Every name in full, such as "ingredients.parts.heading", with whether others stand inside it. */
    void forEach(BiConsumer<String, Boolean> each) {
        walk("", each);
    }

    private void walk(String before, BiConsumer<String, Boolean> each) {
        inner.forEach((name, names) -> {
            each.accept(before + name, !names.inner.isEmpty());
            names.walk(before + name + ".", each);
        });
    }

    /** Those that may be written here: the own ones, and "label.…" in full. */
    List<String> known() {
        List<String> known = new ArrayList<>(inner.keySet());
        Optional.ofNullable(inner.get("label"))
                .ifPresent(label -> label.inner.keySet().forEach(name -> known.add("label." + name)));
        return known;
    }
}
