package org.misecue.prep;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One row of {@code spares.yaml}.
 *
 * @param techniques keys of which one is at work; empty where any is
 * @param ingredient words of which the name has one; empty where any name will do
 * @param pieces whether it concerns only what is counted
 * @param finish whether it concerns only what goes on last, for the hero shot
 * @param one whether one piece more is enough for the whole day; else the same again
 */
record SpareRule(
        List<String> techniques,
        List<String> ingredient,
        boolean pieces,
        boolean finish,
        boolean one,
        String why,
        String source) {

    SpareRule {
        techniques = orEmpty(techniques);
        ingredient = orEmpty(ingredient);
    }

    private static List<String> orEmpty(@Nullable List<String> list) {
        return list == null ? List.of() : list;
    }

    boolean holdsFor(List<String> atWork) {
        return techniques.isEmpty() || atWork.stream().anyMatch(techniques::contains);
    }

    boolean holdsFor(String name) {
        return ingredient.isEmpty()
                || ingredient.stream()
                        .anyMatch(word -> StepWords.whereNamed(name, word).isPresent());
    }
}
