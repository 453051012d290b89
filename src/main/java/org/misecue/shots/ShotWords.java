package org.misecue.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.prep.Wording;

/** Pieces of a shot in words, the same in every document. */
public final class ShotWords {

    private static final int MANY = 8;

    private ShotWords() {}

    static String stepNumbers(Shot shot) {
        return steps(shot).stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    private static List<Integer> steps(Shot shot) {
        return Stream.concat(Stream.of(shot.step()), shot.laterSteps().stream()).toList();
    }

    /** "steps 3 and 4"; the technique's name for the line-up and the reveal. */
    public static String step(Shot shot) {
        return shot.step() == 0 ? shot.technique().replace('-', ' ') : Wording.steps(steps(shot));
    }

    /** "bowls 1, 2 and 5", "bowls 1 to 15" where they are many in a row; empty for none. */
    public static String bowls(Shot shot) {
        List<Integer> bowls = shot.bowls();
        boolean inARow = bowls.size() >= MANY && bowls.get(bowls.size() - 1) - bowls.get(0) == bowls.size() - 1;
        return inARow ? "bowls " + bowls.get(0) + " to " + bowls.get(bowls.size() - 1) : Wording.bowls(bowls);
    }

    /** "2 takes", "1 take, one chance". */
    public static String takes(Shot shot) {
        return Wording.count(shot.takes(), "take") + (shot.oneChance() ? ", one chance" : "");
    }

    /** "worktop overhead: shots 1, 2 and 5", one for each set-up. */
    public static List<String> setups(ShotPlan plan) {
        List<String> out = new ArrayList<>();
        plan.setups()
                .forEach((setup, shots) -> out.add(setup + ": " + (shots.size() == 1 ? "shot " : "shots ")
                        + Wording.list(shots.stream().map(String::valueOf).toList())));
        return out;
    }
}
