package org.misecue.align;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Step;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Phrases;
import org.misecue.spoken.Places;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.WordStream;
import org.misecue.spoken.Words;

/** What each moment of the talk speaks for. */
final class Evidence {

    /** What naming an ingredient is worth that one step uses. */
    private static final double NAME = 2.5;

    /** "In they go", "out it comes": the oven or the fridge. */
    private static final double IN_AND_OUT = 2.5;

    private static final double OPENING_WORD = 1.25;
    private static final double OPENING_CUE = 0.5;

    /** A word that is said again within so many adds nothing. */
    private static final int AGAIN = 12;

    /** An amount that is said so many words from a name may be of it. */
    private static final int NEAR = 6;

    private static final Set<String> OPENERS =
            Words.set("first while once meanwhile finally last now so right okay ok then next anyway alright");
    private static final Set<String> DIRECTIONS = Set.of("in", "out");
    private static final Set<String> BATCH = Words.set("they it that these this she he them everything");
    private static final Set<String> GOING = Words.set("go goes come comes");
    private static final Set<String> BEHIND_A_DOOR = Set.of("bake", "chill");

    private final StepLines lines;
    private final StepWords stepWords;
    private final StepAmounts stepAmounts;
    private final Pace pace;
    private final List<Step> steps;
    private final List<Step> behindADoor;
    private final WordStream words;
    private final Phrases phrases;
    private final Places<NameHit> names;
    private final Places<SpokenQuantity> amounts;
    private final String[] stems;
    private final Map<String, Integer> saidInAll = new HashMap<>();
    private final Map<String, Integer> saidLast = new HashMap<>();

    Evidence(Recipe recipe, WordStream words, List<NameHit> names, List<SpokenQuantity> amounts) {
        this.lines = new StepLines(recipe);
        this.stepWords = new StepWords(recipe, lines);
        this.stepAmounts = new StepAmounts(recipe, lines);
        this.pace = new Pace(recipe);
        this.steps = recipe.steps();
        this.behindADoor = steps.stream()
                .filter(step -> step.techniques().stream().anyMatch(BEHIND_A_DOOR::contains))
                .toList();
        this.words = words;
        this.phrases = new Phrases(words);
        this.names = Places.ofNames(names);
        this.amounts = Places.ofQuantities(amounts);
        this.stems = new String[words.size()];
        for (int at = 0; at < stems.length; at++) {
            stems[at] = Stem.of(words.text(at));
            saidInAll.merge(stems[at], 1, Integer::sum);
        }
    }

    /** All of the stream, in order. */
    List<Moment> moments() {
        List<Moment> moments = new ArrayList<>();
        int start = 0;
        double[] support = new double[steps.size() + 1];
        addAll(support, 0);
        double[] here = new double[support.length];
        for (int at = 1; at < stems.length; at++) {
            if (addAll(here, at) || opening(at) > 0 || takesUp(at)) {
                moments.add(moment(start, at, support));
                start = at;
                support = here;
                here = new double[support.length];
            }
        }
        moments.add(moment(start, stems.length, support));
        return moments;
    }

    private Moment moment(int start, int end, double[] support) {
        double at = start / (double) stems.length;
        for (int step = 0; step < support.length; step++) {
            support[step] -= pace.loss(at, end - start, step);
        }
        return new Moment(start, end - start, opening(start), takesUp(start), support);
    }

    private double opening(int at) {
        return (OPENERS.contains(words.text(at)) ? OPENING_WORD : 0) + (words.border(at) ? OPENING_CUE : 0);
    }

    private boolean takesUp(int at) {
        return phrases.endAt(Phrases.Kind.LATE_REPAIR, at).isPresent();
    }

    /** @return whether the word says anything; where it does not, nothing is added */
    private boolean addAll(double[] support, int at) {
        boolean any = addWord(support, at);
        any |= addInAndOut(support, at);
        for (NameHit name : names.in(at, at + 1)) {
            any |= addName(support, name);
        }
        for (SpokenQuantity amount : amounts.in(at, at + 1)) {
            any |= stepAmounts.addTo(support, amount);
        }
        return any;
    }

    /** What is said all the time tells little. */
    private boolean addWord(double[] support, int at) {
        double[] worth = stepWords.worth(stems[at]);
        Integer last = saidLast.get(stems[at]);
        if (worth.length == 0 || (last != null && at - last < AGAIN)) {
            return false;
        }
        saidLast.put(stems[at], at);
        double share = 1 / (1 + Math.log(saidInAll.getOrDefault(stems[at], 1)));
        for (int step = 0; step < support.length; step++) {
            support[step] += worth[step] * share;
        }
        return true;
    }

    private boolean addInAndOut(double[] support, int at) {
        boolean said = DIRECTIONS.contains(words.text(at))
                && BATCH.contains(words.text(at + 1))
                && GOING.contains(words.text(at + 2));
        if (said) {
            behindADoor.forEach(step -> support[step.number()] += IN_AND_OUT / behindADoor.size());
        }
        return said;
    }

    private boolean addName(double[] support, NameHit name) {
        List<Integer> using = lines.using(meant(name));
        using.forEach(step -> support[step] += NAME / using.size());
        return !using.isEmpty();
    }

    /** Of several lines with one name, those whose amount is said beside it: "a hundred grams of strong white". */
    private Set<Integer> meant(NameHit name) {
        Set<Integer> meant = new HashSet<>();
        if (name.lines().size() > 1) {
            for (SpokenQuantity amount : amounts.in(Math.max(0, name.start() - NEAR), name.end() + NEAR)) {
                name.lines().stream()
                        .filter(line -> stepAmounts.fits(amount, line))
                        .forEach(meant::add);
            }
        }
        return meant.isEmpty() ? name.lines() : meant;
    }
}
