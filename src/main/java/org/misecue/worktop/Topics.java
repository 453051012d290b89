package org.misecue.worktop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.misecue.narration.Narration;
import org.misecue.pantry.AllergenList;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.pantry.Substance;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Step;
import org.misecue.recipe.Use;
import org.misecue.search.Topic;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.NameListener;
import org.misecue.spoken.WordStream;

/** Which ingredients and allergens lines, steps and cues are about, as far as the pantry knows. */
final class Topics {

    /** Words that people use besides those of the lists. */
    private static final Map<Substance, String> ALSO = Map.of(Substance.MILK, "dairy", Substance.SOYBEANS, "soya");

    private final Recipe recipe;
    private final Pantry pantry;
    private final List<Set<Topic>> ofLines;

    Topics(Recipe recipe, Pantry pantry) {
        this.recipe = recipe;
        this.pantry = pantry;
        this.ofLines = recipe.lines().stream().map(this::topics).toList();
    }

    Set<Topic> ofLine(int line) {
        return ofLines.get(line);
    }

    Set<Topic> ofStep(Step step) {
        Set<Topic> topics = new LinkedHashSet<>();
        for (Use use : step.uses()) {
            topics.addAll(ofLines.get(recipe.lines().indexOf(use.in(recipe))));
        }
        return topics;
    }

    /** By the cue's place in the narration; also of ingredients that the recipe does not have. */
    Map<Integer, Set<Topic>> in(Narration narration) {
        WordStream words = WordStream.of(List.of(narration));
        Map<Integer, Set<Topic>> byCue = new HashMap<>();
        for (NameHit hit : new NameListener(words, recipe, pantry).all()) {
            Set<Topic> topics = byCue.computeIfAbsent(words.at(hit.start()).cue(), cue -> new LinkedHashSet<>());
            if (hit.inRecipe()) {
                hit.lines().forEach(line -> topics.addAll(ofLines.get(line)));
            } else {
                topics.addAll(topics(List.of(hit.name())));
            }
        }
        return byCue;
    }

    private Set<Topic> topics(IngredientLine line) {
        List<String> names = new ArrayList<>(List.of(line.ingredient()));
        names.addAll(line.alternatives());
        return topics(names);
    }

    private Set<Topic> topics(List<String> names) {
        Set<Topic> topics = new LinkedHashSet<>();
        for (String name : names) {
            topics.add(new Topic(Topic.Kind.INGREDIENT, name));
            pantry.find(name).ifPresent(known -> addKnown(known, topics));
        }
        return topics;
    }

    private static void addKnown(Ingredient known, Set<Topic> topics) {
        Stream.concat(Stream.of(known.name()), known.names().stream())
                .forEach(name -> topics.add(new Topic(Topic.Kind.INGREDIENT, name)));
        Stream.concat(known.contains().stream(), known.check().stream())
                .flatMap(Topics::words)
                .forEach(word -> topics.add(new Topic(Topic.Kind.ALLERGEN, word)));
    }

    private static Stream<String> words(Substance substance) {
        List<String> words = new ArrayList<>(List.of(substance.key()));
        substance.allergen().ifPresent(allergen -> words.add(allergen.label()));
        for (AllergenList list : AllergenList.values()) {
            words.addAll(substance.named(list));
        }
        words.add(ALSO.getOrDefault(substance, ""));
        return words.stream();
    }
}
