package org.misecue.compare;

import java.util.Comparator;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.spoken.Words;

/** The written things that somebody's words mean: all of the words are in the name, in any order and number. */
final class Asked {

    private static final int NEAREST = 3;

    private final String words;
    private final Set<String> wanted;

    Asked(String words) {
        this.words = words.strip();
        this.wanted = Words.content(words);
    }

    boolean means(String name) {
        return !wanted.isEmpty() && Words.content(name).containsAll(wanted);
    }

    boolean means(Setting setting) {
        return means(setting.what()
                + switch (setting.kind()) {
                    case OVEN_TEMPERATURE -> " oven temperature heat";
                    case DURATION -> " time duration";
                    case PAN -> " tin pan";
                    case YIELD -> " yield makes";
                });
    }

    BadInput meantNothing(Recipe recipe) {
        String nearest = recipe.lines().stream()
                .map(line -> line.ingredient())
                .distinct()
                .sorted(Comparator.comparingDouble(name -> -likeness(name)))
                .limit(NEAREST)
                .map(name -> "“" + name + "”")
                .collect(Collectors.joining(", "));
        return new BadInput(
                Place.of(recipe.source()),
                "no ingredient and no setting is called “" + words + "”; the nearest are " + nearest + ".");
    }

    /** The share of letter pairs in common, as Dice counts it: forgives a slip and a word too many. */
    private double likeness(String name) {
        Set<String> own = pairs(String.join(" ", Words.content(name)));
        Set<String> asked = pairs(String.join(" ", wanted));
        double all = own.size() + asked.size();
        own.retainAll(asked);
        return all == 0 ? 0 : 2 * own.size() / all;
    }

    private static Set<String> pairs(String text) {
        Set<String> pairs = new HashSet<>();
        for (int at = 0; at + 2 <= text.length(); at++) {
            pairs.add(text.substring(at, at + 2));
        }
        return pairs;
    }
}
