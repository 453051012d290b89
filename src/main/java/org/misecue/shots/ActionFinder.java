package org.misecue.shots;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import org.misecue.recipe.MethodActions;
import org.misecue.recipe.MethodActions.Sighted;
import org.misecue.recipe.Step;

/** Finds the actions in a step's text: the techniques that the step lists, and what the words of templates tell. */
final class ActionFinder {

    private static final Pattern THING = Pattern.compile(
            "\\h+(?:dish|tin|tray|pan|sheet|paper|rack|bowl|pin|board|bag|beans|chocolate|attachment)s?\\b");

    private ActionFinder() {}

    /** In the order of the text. */
    static List<Action> find(Step step, ShotTemplates templates) {
        List<Sighted> listed = MethodActions.in(step.text()).stream()
                .filter(sighted -> step.techniques().contains(sighted.technique()))
                .toList();
        List<Action> found = new ArrayList<>();
        for (String technique : step.techniques()) {
            List<Sighted> places = listed.stream()
                    .filter(sighted -> sighted.technique().equals(technique) && !isThing(sighted, step.text()))
                    .toList();
            for (Sighted place : places) {
                found.add(Action.of(templates.of(technique), place.start(), place.end()));
            }
            if (places.isEmpty()) {
                int last = step.text().length();
                found.add(Action.of(templates.of(technique), last, last));
            }
        }
        addToldByWords(step, templates, listed, found);
        found.sort(Comparator.comparingInt(Action::place));
        return found;
    }

    /** A "roasting dish" stands there before anything is roasted. */
    private static boolean isThing(Sighted sighted, String text) {
        return THING.matcher(text).region(sighted.end(), text.length()).lookingAt();
    }

    private static void addToldByWords(Step step, ShotTemplates templates, List<Sighted> listed, List<Action> found) {
        for (ShotTemplate template : templates.toldByWords()) {
            if (step.techniques().contains(template.technique())) {
                continue;
            }
            for (MethodPhrase phrase : template.words()) {
                for (MethodPhrase.Found place : phrase.in(step.text())) {
                    boolean taken = listed.stream()
                            .anyMatch(other -> other.start() <= place.start() && place.start() < other.end());
                    if (!taken) {
                        found.add(Action.of(template, place.start(), place.end()));
                    }
                }
            }
        }
    }
}
