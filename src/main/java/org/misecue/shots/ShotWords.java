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

    /** "steps 3 and 4"; empty for what belongs to no step. */
    public static String step(Shot shot) {
        return shot.step() == 0 ? "" : Wording.steps(steps(shot));
    }

    /** "rub in"; of the default template that it is as the method says. */
    public static String technique(Shot shot) {
        return shot.technique().equals(ShotTemplates.DEFAULT)
                ? "as the method says"
                : shot.technique().replace('-', ' ');
    }

    /** "bowls 1, 2 and 5", "bowls 1 to 15"; empty for none. */
    public static String bowls(Shot shot) {
        return Wording.bowls(shot.bowls());
    }

    /** "2 takes", "1 take, one chance"; of a pickup, that it can wait. */
    public static String takes(Shot shot) {
        if (shot.kind() == ShotKind.PICKUP) {
            return "pickup, if time allows";
        }
        return Wording.count(shot.takes(), "take") + (shot.oneChance() ? ", one chance" : "");
    }

    /** What stands beside a shot: its step and technique, and whether it can wait. */
    public static List<String> side(Shot shot) {
        String wait = shot.kind() == ShotKind.PICKUP ? "if time allows" : "";
        return Stream.of(step(shot), technique(shot), wait)
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** What stands before each box to tick: the slates, without the rest where there are very many. */
    public static List<String> boxes(Shot shot) {
        return shot.kind() == ShotKind.PICKUP
                ? List.of(String.valueOf(shot.number()))
                : shot.slates().stream().limit(MANY).toList();
    }

    /** "shot 3", "shots 3 and 5". */
    static String shots(List<Integer> numbers) {
        return (numbers.size() == 1 ? "shot " : "shots ")
                + Wording.list(numbers.stream().map(String::valueOf).toList());
    }

    /** "worktop overhead: shots 1, 2 and 5", one for each set-up. */
    public static List<String> setups(ShotPlan plan) {
        List<String> out = new ArrayList<>();
        plan.setups().forEach((setup, shots) -> out.add(setup + ": " + shots(shots)));
        return out;
    }
}
