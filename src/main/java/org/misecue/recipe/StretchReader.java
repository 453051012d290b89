package org.misecue.recipe;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.misecue.quantity.Quantity;

/** Cuts the steps of a method into stretches, in order; it remembers how hot the oven was left. */
final class StretchReader {

    private static final long LEAST_MINUTES = 1;

    /** What a stretch is made of. */
    private static final class Piece {
        private int start;
        private int end;
        private long hands;
        private final Set<String> techniques = new java.util.LinkedHashSet<>();
        private final List<Wait> waits = new ArrayList<>();
    }

    private Optional<Quantity> oven = Optional.empty();

    /** All stretches of a method. */
    static List<Stretch> read(Recipe recipe) {
        StretchReader reader = new StretchReader();
        return recipe.steps().stream()
                .flatMap(step -> reader.step(step, recipe).stream())
                .toList();
    }

    private List<Stretch> step(Step step, Recipe recipe) {
        WaitReader waits = WaitReader.of(step, oven);
        List<Piece> pieces = new ArrayList<>();
        Set<String> seen = new java.util.HashSet<>();
        for (Clause clause : Clause.in(step.text())) {
            List<Wait> waiting = waits.in(clause);
            List<Sightings.Sighting> hands = waits.hands(clause);
            Piece last = pieces.isEmpty() ? null : pieces.get(pieces.size() - 1);
            boolean onlyWaits = !waiting.isEmpty() && hands.isEmpty();
            if (last == null || (!last.waits.isEmpty() && !onlyWaits && clause.asks(step.text()))) {
                last = new Piece();
                last.start = clause.start();
                pieces.add(last);
            }
            last.end = clause.end();
            last.waits.addAll(waiting);
            last.hands += waits.handsMinutes(clause);
            for (String key : waits.techniques(clause)) {
                if (seen.add(key)) {
                    last.techniques.add(key);
                }
            }
        }
        oven = waits.ovenAfter();
        return stretches(step, recipe, pieces);
    }

    private static List<Stretch> stretches(Step step, Recipe recipe, List<Piece> pieces) {
        long all = step.handsOn().toMinutes();
        long weights = pieces.stream()
                .mapToLong(piece -> Math.max(LEAST_MINUTES, piece.hands))
                .sum();
        List<List<Use>> uses = uses(step, recipe, pieces);
        List<Stretch> stretches = new ArrayList<>();
        for (int at = 0; at < pieces.size(); at++) {
            Piece piece = pieces.get(at);
            long minutes = Math.round((double) all * Math.max(LEAST_MINUTES, piece.hands) / Math.max(1, weights));
            stretches.add(new Stretch(
                    step.number(),
                    at + 1,
                    step.text().substring(piece.start, piece.end).strip(),
                    uses.get(at),
                    step.techniques().stream()
                            .filter(piece.techniques::contains)
                            .toList(),
                    Duration.ofMinutes(Math.max(LEAST_MINUTES, minutes)),
                    List.copyOf(piece.waits)));
        }
        return stretches;
    }

    /** Each ingredient goes in where it is named first; what is not named goes in at the start. */
    private static List<List<Use>> uses(Step step, Recipe recipe, List<Piece> pieces) {
        List<List<Use>> uses = new ArrayList<>();
        pieces.forEach(piece -> uses.add(new ArrayList<>()));
        for (Use use : step.uses()) {
            Set<String> names = words(use.in(recipe).ingredient());
            int where = 0;
            for (int at = 0; at < pieces.size(); at++) {
                Piece piece = pieces.get(at);
                if (words(step.text().substring(piece.start, piece.end)).stream()
                        .anyMatch(names::contains)) {
                    where = at;
                    break;
                }
            }
            uses.get(where).add(use);
        }
        return uses;
    }

    private static Set<String> words(String text) {
        return Words.of(text.toLowerCase(Locale.ROOT)).list().stream()
                .map(Words.Word::singular)
                .filter(word -> !IngredientNames.isAdjective(word))
                .collect(Collectors.toSet());
    }
}
