package org.misecue.pantry;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;

/**
 * What is known about ingredients, by name. A name that is not here is no error: the ingredient is merely unknown, and
 * nothing follows from that, least of all that it is free of an allergen.
 */
public final class Pantry {

    private final List<Ingredient> ingredients;
    private final List<LeadTimeRule> leadTimeRules;
    private final NameIndex written = new NameIndex();
    private final NameIndex heard = new NameIndex();
    private final Map<String, Boolean> beginnings = new ConcurrentHashMap<>();

    Pantry(List<Ingredient> ingredients, List<LeadTimeRule> leadTimeRules) {
        this.ingredients = List.copyOf(ingredients);
        this.leadTimeRules = List.copyOf(leadTimeRules);
        for (Ingredient ingredient : ingredients) {
            written.add(ingredient.name(), ingredient);
            ingredient.names().forEach(name -> written.add(name, ingredient));
        }
        for (Ingredient ingredient : ingredients) {
            ingredient.heard().forEach(name -> heard.add(name, ingredient));
        }
    }

    /** The pantry that comes with the program; read on first use and kept. */
    public static Pantry standard() {
        return Standard.PANTRY;
    }

    /** In the order of the data file. */
    public List<Ingredient> all() {
        return ingredients;
    }

    /**
     * The ingredient that a recipe line names, such as "unsalted butter", "walnuts, chopped" or "zest of 2 lemons": the
     * longest known name in it by whole words, in singular or plural and any case. What stands before a comma, a bracket
     * or "or" comes first; of two equally long names the later counts, as in "vanilla yoghurt".
     */
    public Optional<Ingredient> find(String name) {
        return written.within(name).map(NameIndex.Match::ingredient);
    }

    /**
     * Whether some name begins with this word, or with the word that two pieces make: a quick no for the many words of
     * talk that name nothing.
     */
    public boolean mayBegin(String word, String joined) {
        return beginnings.computeIfAbsent(word, this::begins) || written.begins(joined) || heard.begins(joined);
    }

    private boolean begins(String word) {
        List<String> comparable = Names.words(word);
        return !comparable.isEmpty() && (written.begins(comparable.get(0)) || heard.begins(comparable.get(0)));
    }

    /** The ingredient that these words name in full, as written or as a speech recogniser hears it: "strong white flower". */
    public Optional<Ingredient> heardAs(String words) {
        return written.exactly(words).or(() -> heard.exactly(words));
    }

    /**
     * What the words of an ingredient line ask to be started ahead: at most one job of each kind.
     *
     * @param ingredient the name on the line, such as "unsalted butter"
     * @param preparation what follows it, such as "softened"; may be empty
     */
    public List<LeadTime> leadTimes(String ingredient, String preparation) {
        Optional<NameIndex.Match> match = written.within(ingredient);
        Optional<Ingredient> known = match.map(NameIndex.Match::ingredient);
        List<String> said = new ArrayList<>(Names.words(preparation));
        said.add(",");
        said.addAll(without(
                Names.words(ingredient), match.map(NameIndex.Match::name).orElse(List.of())));
        Set<String> jobs = new HashSet<>();
        List<LeadTime> found = new ArrayList<>();
        for (LeadTimeRule rule : leadTimeRules) {
            if (!jobs.contains(rule.job()) && rule.fits(known, said)) {
                jobs.add(rule.job());
                found.add(rule.leadTime(known.map(Ingredient::name).orElse(ingredient)));
            }
        }
        return List.copyOf(found);
    }

    /** The words around a name: the "soft" of soft cheese asks for nothing. */
    private static List<String> without(List<String> words, List<String> name) {
        int at = Collections.indexOfSubList(words, name);
        List<String> rest = new ArrayList<>(words);
        if (at >= 0) {
            rest.subList(at, at + name.size()).clear();
        }
        return rest;
    }

    /** Read on first use: most commands need no pantry. */
    private static final class Standard {
        static final Pantry PANTRY =
                new Pantry(resource("pantry.yaml", PantryFile::read), resource("lead-times.yaml", LeadTimeRule::read));

        private static <T> T resource(String file, BiFunction<String, InputStream, T> reader) {
            try (InputStream in = Objects.requireNonNull(Pantry.class.getResourceAsStream(file), file)) {
                return reader.apply(file, in);
            } catch (IOException e) {
                throw new UncheckedIOException(file, e);
            }
        }
    }
}
