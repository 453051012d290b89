package org.misecue.publish;

import java.net.URI;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.misecue.compare.Comparison;
import org.misecue.compare.Unwritten;
import org.misecue.offers.Offer;
import org.misecue.pantry.Ingredient;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.Step;

/**
 * Everything that is published, by the names under which a template finds it: texts, lists and maps of texts, and flags.
 * What there is nothing of is an empty text or {@code false}, so that a section of it stays away.
 */
final class PublishedNames {

    private final Edition edition;
    private final DescriptionSettings settings;
    private final Labels labels;
    private final IngredientList list;
    private final Chapters chapters;

    PublishedNames(Edition edition, DescriptionSettings settings) {
        this.edition = edition;
        this.settings = settings;
        this.labels = Labels.in(settings.language());
        this.list = IngredientList.of(edition.batch(), edition.pantry(), settings, labels);
        this.chapters = edition.chapters();
    }

    IngredientList list() {
        return list;
    }

    Chapters chapters() {
        return chapters;
    }

    Labels labels() {
        return labels;
    }

    Map<String, Object> all() {
        FigureText figures = new FigureText(edition.batch(), labels);
        Map<String, Object> names = new LinkedHashMap<>();
        names.put("title", SafeText.line(edition.recipe().title()));
        names.put("draft", edition.draft().map(SafeText::line).orElse(""));
        names.put("makes", figures.makes());
        names.put("summary", edition.web().summary().map(SafeText::line).orElse(""));
        names.put("figures", figures(figures));
        names.put("ingredients", ingredients(IngredientList.Entry::amount));
        names.put("allergens", Map.of("sentences", sentences(allergens())));
        names.put("cautions", some("sentences", sentences(cautions())));
        names.put(
                "unsaid",
                some(
                        "lines",
                        edition.comparison()
                                .map(known -> lines(list.unsaid(known), IngredientList.Entry::shorter))
                                .orElse(List.of())));
        names.put("offers", some("lines", offers()));
        names.put("method", settings.method() ? method(Step::text) : false);
        names.put("chapters", some("entries", entries()));
        names.put("url", edition.web().page().map(URI::toASCIIString).orElse(""));
        names.put("video-url", edition.web().video().map(URI::toASCIIString).orElse(""));
        names.put("language", labels.language().toLanguageTag());
        names.put("recipe-language", edition.web().language().toLanguageTag());
        names.put("label", labels.forTemplates());
        names.put("json-ld", "");
        return names;
    }

    private static Object figures(FigureText figures) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("tin", figures.tin());
        all.put("oven", figures.oven());
        all.put("times", figures.times());
        all.put("other-batch", figures.otherBatch());
        return all.values().stream().allMatch(""::equals) ? false : all;
    }

    /** The list with one measure each, where room is short. */
    Object shorterIngredients() {
        return ingredients(IngredientList.Entry::shorter);
    }

    private Object ingredients(Function<IngredientList.Entry, String> amount) {
        List<Map<String, Object>> parts = new ArrayList<>();
        List<IngredientList.Entry> part = new ArrayList<>();
        for (int at = 0; at < list.entries().size(); at++) {
            IngredientList.Entry entry = list.entries().get(at);
            part.add(entry);
            boolean last = at + 1 == list.entries().size()
                    || !component(entry).equals(component(list.entries().get(at + 1)));
            if (last) {
                parts.add(Map.of("heading", IngredientList.named(component(entry)), "lines", lines(part, amount)));
                part.clear();
            }
        }
        return parts.isEmpty() ? false : Map.of("parts", parts, "goes-on", "");
    }

    private static String component(IngredientList.Entry entry) {
        return SafeText.line(entry.line().component());
    }

    private List<Map<String, Object>> lines(
            List<IngredientList.Entry> entries, Function<IngredientList.Entry, String> amount) {
        List<Map<String, Object>> lines = new ArrayList<>();
        for (IngredientList.Entry entry : entries) {
            lines.add(Map.of(
                    "line", entry.rest().behind(amount.apply(entry)).with(settings.emphasis()),
                    "amount", amount.apply(entry),
                    "pieces", entry.rest().pieces()));
        }
        return lines;
    }

    /** What was offered on camera; the allergens in it stand out here too, for the summary does not count them. */
    private List<Map<String, Object>> offers() {
        List<Map<String, Object>> offers = new ArrayList<>();
        for (Offer offer : edition.offers()) {
            String use = SafeText.line(offer.use());
            Optional<Ingredient> known = edition.pantry().find(offer.use());
            Marked marked = new Marked(AllergenLine.of(use, use, known, Marked::mark, labels)
                            .text())
                    .behind(offer.amount().map(Amounts.in(labels)::text).orElse(""));
            String instead = SafeText.line(offer.instead());
            String line = labels.text("offer", Map.of("instead", instead, "use", marked.with(settings.emphasis())));
            String time = onTheFilm(offer) ? Chapter.clock(offer.moment().at()) : "";
            offers.add(Map.of(
                    "line",
                    time.isEmpty() ? line : line + " (" + time + ")",
                    "instead",
                    instead,
                    "pieces",
                    marked.pieces(),
                    "time",
                    time));
        }
        return offers;
    }

    /** Whether the moment is one of the clock that viewers see. */
    private boolean onTheFilm(Offer offer) {
        return edition.film().isEmpty()
                || edition.film().contains(offer.moment().source());
    }

    /** The method with each step in its first sentence, where room is short. */
    Object shorterMethod() {
        return settings.method() ? method(step -> Sentences.first(SafeText.line(step.text()))) : false;
    }

    private Object method(Function<Step, String> text) {
        List<Map<String, Object>> steps = new ArrayList<>();
        for (Step step : edition.recipe().steps()) {
            steps.add(Map.of("number", String.valueOf(step.number()), "text", SafeText.line(text.apply(step))));
        }
        return steps.isEmpty() ? false : Map.of("steps", steps, "other-batch", otherAmounts());
    }

    /** Said where the method names amounts that are not those of this batch. */
    private String otherAmounts() {
        boolean any = edition.recipe().steps().stream()
                .flatMap(step -> step.uses().stream())
                .anyMatch(use -> use.part().isPresent());
        return any && !edition.batch().factor().equals(Rationals.ONE) ? labels.text("other-amounts") : "";
    }

    private List<Map<String, Object>> entries() {
        List<Map<String, Object>> entries = new ArrayList<>();
        for (Chapter chapter : chapters.chapters()) {
            entries.add(Map.of("time", Chapter.clock(chapter.start()), "name", chapter.title()));
        }
        return entries;
    }

    /** Of the list, and of what goes in on camera without being in it: a viewer may bake as the film does. */
    private List<String> allergens() {
        List<String> sentences = new ArrayList<>(list.allergens());
        edition.comparison().map(Comparison::unwritten).orElse(List.of()).stream()
                .flatMap(added -> ofAdded(added).stream())
                .distinct()
                .forEach(sentences::add);
        return sentences;
    }

    /** Empty where nothing is known of it that anybody must avoid; that says nothing about there being none. */
    private Optional<String> ofAdded(Unwritten added) {
        String what = SafeText.line(added.ingredient());
        Optional<Ingredient> known = edition.pantry().find(added.ingredient()).or(() -> edition.pantry()
                .heardAs(added.ingredient()));
        List<String> contains = known.stream()
                .flatMap(one -> one.allergens().stream().sorted())
                .map(labels::allergenInFull)
                .toList();
        if (!contains.isEmpty()) {
            return Optional.of(
                    labels.text("added-contains", Map.of("what", what, "names", String.join(", ", contains))));
        }
        boolean mayBeAnything = known.map(one -> !one.checkLabel().isEmpty()).orElse(true);
        return mayBeAnything ? Optional.of(labels.text("added-check", "what", what)) : Optional.empty();
    }

    private List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        if (holds("egg|egg yolk|egg white")) {
            cautions.add(labels.text("raw-egg"));
        }
        if (holds("(?:.* )?flour")) {
            cautions.add(labels.text("raw-flour"));
        }
        return cautions;
    }

    private boolean holds(String names) {
        return list.entries().stream()
                .flatMap(entry -> edition.pantry().find(entry.line().written().ingredient()).stream())
                .anyMatch(known -> known.name().matches(names));
    }

    private static List<Map<String, Object>> sentences(List<String> sentences) {
        return sentences.stream()
                .map(sentence -> Map.<String, Object>of("sentence", sentence))
                .toList();
    }

    private static Object some(String name, List<?> values) {
        return values.isEmpty() ? false : Map.of(name, values);
    }
}
