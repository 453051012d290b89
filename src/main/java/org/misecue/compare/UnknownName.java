package org.misecue.compare;

import java.util.Optional;
import java.util.Set;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;

/** A name that neither the recipe nor the pantry has: "a teaspoon of quandong dust". */
final class UnknownName {

    static final int LONGEST = 3;

    private static final Set<String> NO_FOOD =
            Words.set("it that this those these them the a your my tea wine coffee time way what which everything mine "
                    + "yours each both all mixture mix batter dough ribbon space room overhang depth cake syrup's "
                    + "parchment paper foil you us one two filling topping pastry glaze icing frosting crumble");
    private static final Set<String> ENDS = Words.set(
            "in and on into as to goes go for with that so because then now is at or but i you it just which if "
                    + "well um too please there here from over when we going went not like right okay of the a through "
                    + "round about makes make gives this my your");
    private static final Set<String> ARTICLES = Set.of("the", "my", "your", "some", "this", "that");

    /** What is made of something and bears its name: "tiger nut meal". */
    private static final Set<String> MADE_OF = Words.set(
            "meal powder flour paste seed seeds dust oil essence extract liqueur butter jam leaf leaves flakes");

    private UnknownName() {}

    /** The words behind "of", if they can name food. */
    static Optional<String> behind(SpokenQuantity said, Hearing heard) {
        if (said.manner() != Manner.MEASURED || !heard.words.text(said.end()).equals("of")) {
            return Optional.empty();
        }
        int from = said.end() + 1;
        while (ARTICLES.contains(heard.words.text(from))) {
            from++;
        }
        int to = from;
        while (to - from < LONGEST
                && !ENDS.contains(heard.words.text(to))
                && to < heard.words.size()
                && (to == from || !heard.words.border(to))) {
            to++;
        }
        String name = heard.words.normal(from, to);
        return name.isEmpty() || NO_FOOD.contains(heard.words.text(from)) ? Optional.empty() : Optional.of(name);
    }

    /** The whole name around a part of it that the pantry knows: "nut" of "tiger nut meal". */
    static String whole(NameHit name, SpokenQuantity said, Hearing heard) {
        boolean made = MADE_OF.contains(heard.words.text(name.end())) && !heard.words.border(name.end());
        int end = made ? name.end() + 1 : name.end();
        int from = said.end() + 1;
        boolean behind = heard.words.text(said.end()).equals("of")
                && name.start() > from
                && name.start() - from < LONGEST
                && !ARTICLES.contains(heard.words.text(from));
        return behind ? heard.words.normal(from, end) : made ? heard.words.normal(name.start(), end) : name.name();
    }

    /** Whether the last word of a name names no food. */
    static boolean isNoFood(String name) {
        return NO_FOOD.contains(name.substring(name.lastIndexOf(' ') + 1)) && !name.endsWith("coffee");
    }
}
