package org.misecue.prep;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a tick is kept under: the thing in words, with all that makes it another thing when it changes. */
final class TickKeys {

    private TickKeys() {}

    /** Not its number: a bowl set before it changes nothing about it. A tick means that every set has it. */
    static String of(Bowl bowl, int sets) {
        String contents = bowl.contents().stream().map(PrepWords::content).collect(Collectors.joining(" + "));
        return clean("bowl: %s, %s (%d ×): %s".formatted(bowl.name(), PrepWords.where(bowl), sets, contents));
    }

    /** Not its time on the clock: a tick survives that the first shot moves. */
    static String of(Job job) {
        return clean("job: %s, %s, for %s".formatted(job.what(), Wording.duration(job.before()), job.forWhat()));
    }

    static String of(Spare spare) {
        return clean("spare: " + PrepWords.spare(spare));
    }

    /** All its bowls together: they are its own set. */
    static String of(SwapOut swapOut) {
        String contents = swapOut.bowls().stream()
                .flatMap(bowl -> bowl.contents().stream())
                .map(PrepWords::content)
                .collect(Collectors.joining(" + "));
        return clean("made earlier: %s, %s: %s".formatted(swapOut.state(), Wording.steps(swapOut.steps()), contents));
    }

    private static String clean(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    static List<String> all(PrepPlan plan) {
        List<String> keys = new ArrayList<>();
        plan.bowls().forEach(bowl -> keys.add(of(bowl, plan.sets().all())));
        plan.jobs().forEach(job -> keys.add(of(job)));
        plan.spares().forEach(spare -> keys.add(of(spare)));
        plan.swapOuts().forEach(swapOut -> keys.add(of(swapOut)));
        return keys.stream().distinct().toList();
    }
}
