package org.misecue.compare;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Words;

/**
 * What tells which other amount is meant: "what you did of the sugar", "the butter you had in the pudding", "as last time".
 *
 * @param end behind the last word that tells anything
 * @param name the ingredient that is named
 * @param part the part of the recipe that is named
 * @param doing whether it is told what was done with it or what it was
 * @param earlier whether it is said to have been before
 */
record OtherAmount(int end, Optional<NameHit> name, Optional<Integer> part, boolean doing, boolean earlier) {

    static final Set<String> BEING = Set.of("is", "are", "was", "were", "weighs", "weighed");
    static final Set<String> MEASURES = Words.set("amount weight quantity measure number size volume");

    private static final Set<String> SMALL = Words.set(
            "of as what whatever that the your my our his her this which was were is are amount weight quantity size it in "
                    + "into for on with to we you i they just then there and pan pot bowl tin goes");
    private static final Set<String> DOING = Words.set(
            "did do does had have has got get gets used use put took take went go gave weighed measured said told needed "
                    + "wanted added poured tipped made");
    private static final Set<String> EARLIER = Words.set("before earlier already");
    private static final int LONGEST = 14;

    /** Reads on from the index to the first word that tells nothing of it. */
    static OtherAmount at(int from, Hearing heard) {
        OtherAmount told = new OtherAmount(from, Optional.empty(), Optional.empty(), false, false);
        int at = from;
        while (at < from + LONGEST && !(at > from && heard.words.wall(at))) {
            Optional<NameHit> name = nameAt(at, heard);
            if (name.isPresent() && told.name.isPresent()) {
                return told;
            }
            if (name.isPresent()) {
                at = name.get().end();
                told = new OtherAmount(at, name, told.part, told.doing, told.earlier);
                continue;
            }
            OtherAmount more = told.with(at, heard);
            if (more.end <= at && !SMALL.contains(heard.words.text(at))) {
                return told;
            }
            told = more;
            at = Math.max(at + 1, more.end);
        }
        return told;
    }

    /** The same with what the word at the index tells, if it tells anything. */
    private OtherAmount with(int at, Hearing heard) {
        String word = heard.words.text(at);
        boolean being = name.isPresent() && (BEING.contains(word) || MEASURES.contains(word));
        Optional<Integer> named = part.isEmpty() && !being ? heard.locators.named(at) : Optional.empty();
        if (named.isPresent()) {
            return new OtherAmount(at + 1, name, named, doing, earlier);
        }
        if (being || DOING.contains(word)) {
            return new OtherAmount(at + 1, name, part, true, earlier);
        }
        if (word.equals("last") && heard.words.text(at + 1).equals("time")) {
            return new OtherAmount(at + 2, name, part, doing, true);
        }
        return EARLIER.contains(word) ? new OtherAmount(at + 1, name, part, doing, true) : this;
    }

    private static Optional<NameHit> nameAt(int at, Hearing heard) {
        return heard.namesIn(at, at + 1).stream()
                .filter(name -> name.inRecipe() && name.start() == at)
                .max(Comparator.comparingInt(NameHit::end));
    }
}
