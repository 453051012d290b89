package org.misecue.pantry;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;

/**
 * What is known about ingredients, by name. A name that is not here is no error: the ingredient is merely unknown, and
 * nothing follows from that, least of all that it is free of an allergen.
 */
public final class Pantry {

    private final List<Ingredient> ingredients;
    private final List<LeadTimeRule> leadTimeRules;
    private final Optional<EggMarket> eggs;
    private final List<Note> notes;
    private final NameIndex written = new NameIndex();
    private final NameIndex heard = new NameIndex();
    private final Map<Class<?>, Object> kept = new ConcurrentHashMap<>();

    Pantry(List<Ingredient> ingredients, List<LeadTimeRule> leadTimeRules) {
        this(ingredients, leadTimeRules, Optional.empty(), List.of());
    }

    /** Of two rows that claim one name the first keeps it. */
    private Pantry(
            List<Ingredient> ingredients,
            List<LeadTimeRule> leadTimeRules,
            Optional<EggMarket> eggs,
            List<Note> notes) {
        this.ingredients = List.copyOf(ingredients);
        this.leadTimeRules = List.copyOf(leadTimeRules);
        this.eggs = eggs;
        this.notes = List.copyOf(notes);
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

    /**
     * This pantry with a person's own rows over it; see {@code src/docs/pantry.md} for what they may say. What they moved
     * or dropped is told by {@link #notes}.
     *
     * @param file as the person knows it, such as {@code pantry.yaml}
     * @param in its contents; left open
     * @throws BadInput with file and line at the first bad row
     */
    public Pantry with(String file, InputStream in) {
        return OwnRows.over(this, file, in);
    }

    /** @throws BadInput with file and line at the first bad row */
    public Pantry with(String file, String yaml) {
        return with(file, new ByteArrayInputStream(yaml.getBytes(StandardCharsets.UTF_8)));
    }

    Pantry with(List<Ingredient> other, List<Note> more) {
        return new Pantry(
                other,
                leadTimeRules,
                eggs,
                Stream.concat(notes.stream(), more.stream()).toList());
    }

    /**
     * This pantry with the eggs of a language's country: {@link #find} then weighs an egg, its white and its yolk by the
     * size on the line, "3 large eggs", or by the size that is usual there. Without it, an egg weighs what its row says:
     * a large one of the US.
     */
    public Pantry speaking(Locale language) {
        return new Pantry(ingredients, leadTimeRules, Optional.of(EggMarket.of(language)), notes);
    }

    /** What somebody works out from this pantry once and wants again: a table of its names in another form. */
    public <T> T keeps(Class<T> kind, Supplier<T> made) {
        return kind.cast(kept.computeIfAbsent(kind, none -> made.get()));
    }

    /** What own rows moved or dropped, in their order. */
    public List<Note> notes() {
        return notes;
    }

    /** In the order of the data file, own rows first. */
    public List<Ingredient> all() {
        return ingredients;
    }

    /**
     * The ingredient that a recipe line names, such as "unsalted butter", "walnuts, chopped" or "zest of 2 lemons": the
     * longest known name in it by whole words, in singular or plural and any case. What stands before a comma, a bracket
     * or "or" comes first; of two equally long names the later counts, as in "vanilla yoghurt".
     */
    public Optional<Ingredient> find(String name) {
        return written.within(name)
                .map(NameIndex.Match::ingredient)
                .map(found -> eggs.map(market -> market.weighed(found, name)).orElse(found));
    }

    /** The ingredient that has exactly this name. */
    Optional<Ingredient> named(String name) {
        return written.exactly(name);
    }

    /** What a list of allergens says about a name on a recipe line; a name that is not known is never clean. */
    public Declared declared(String name, AllergenList list) {
        return find(name).<Declared>map(one -> Declared.of(one, list)).orElse(new Declared.Unknown(name));
    }

    /** One sentence where the name on a recipe line means something else to others: "cornflour" in the US. */
    public Optional<String> beware(String name) {
        return written.within(name).flatMap(match -> match.ingredient().beware().entrySet().stream()
                .filter(entry -> Names.words(entry.getKey()).equals(match.name()))
                .map(entry -> entry.getValue())
                .findFirst());
    }

    /**
     * Whether some name begins with this word, or with the word that two pieces make: a quick no for the many words of
     * talk that name nothing.
     */
    public boolean mayBegin(String word, String joined) {
        return begins(word) || written.begins(joined) || heard.begins(joined);
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
        static final Pantry PANTRY = new Pantry(
                Resources.read("pantry.yaml", PantryFile::read), Resources.read("lead-times.yaml", LeadTimeRule::read));
    }
}
