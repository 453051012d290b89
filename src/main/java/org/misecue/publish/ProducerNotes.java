package org.misecue.publish;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.misecue.compare.Comparison;
import org.misecue.compare.Evidence;
import org.misecue.compare.LineVerdict;
import org.misecue.compare.Unwritten;
import org.misecue.compare.Verdict;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.recipe.Recipe;

/** Where the text and the film contradict each other: told to the producer, never mended silently. */
final class ProducerNotes {

    private ProducerNotes() {}

    static List<Note> of(Comparison comparison, Recipe recipe) {
        List<Note> notes = new ArrayList<>();
        for (LineVerdict line : comparison.written()) {
            if (line.verdict() == Verdict.DIFFERS) {
                notes.add(new Note(
                        Place.of(recipe.source(), line.line().line()),
                        "the description gives “%s” as written, but the film differs%s: %s"
                                .formatted(
                                        SafeText.line(line.line().text()), moments(line.evidence()), line.reason())));
            }
        }
        for (Unwritten added : comparison.unwritten()) {
            notes.add(new Note(
                    Place.of(recipe.source()),
                    "%s of %s goes in on camera%s and no line of the recipe has it, so the description leaves it out; write it into the recipe if it belongs there"
                            .formatted(
                                    Amounts.ENGLISH.text(added.quantity()),
                                    added.ingredient(),
                                    moments(added.evidence()))));
        }
        return notes;
    }

    private static String moments(List<Evidence> evidence) {
        String all = evidence.stream()
                .map(one ->
                        Chapter.clock(one.moment().at()) + " of " + one.moment().source())
                .distinct()
                .collect(Collectors.joining(", "));
        return all.isEmpty() ? "" : " (" + all + ")";
    }
}
