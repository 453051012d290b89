package org.misecue.spoken;

import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/** Bare numbers that say how hot or when. Asked last: whose oven it was matters more to the settings. */
final class Levels implements Asides.AsideRule {

    private static final Set<String> THERMAL = Words.set("oil syrup thermometer temperature boil degrees heat probe");
    private static final Set<String> HEATED = Set.of("to", "at", "hits", "reaches", "reads", "about", "on");

    private static final Set<String> WEATHER_IS = Words.set("was is be been hit");
    private static final Set<String> OUT_THERE = Words.set("outside outdoors yesterday shade sunshine weekend");
    private static final int WEATHER_REACH = 4;
    private static final int BODY_REACH = 5;

    /** Colder than any weather that is talked of. Common practice, no source. */
    private static final RationalNumber COLDEST = Rationals.of(50);

    /** "on the nose". */
    private static final Set<String> EXACTLY = Set.of("nose", "dot", "button", "money", "head", "line");

    private final WordStream words;
    private final Places<NameHit> names;

    Levels(WordStream words, Places<NameHit> names) {
        this.words = words;
        this.names = names;
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.LEVELS;
    }

    @Override
    public Optional<Aside> of(SpokenQuantity said) {
        return said.manner() == Manner.BARE && (isLevel(said) || isWeather(said))
                ? Optional.of(Aside.of(Aside.Kind.LEVEL, "a temperature or a time"))
                : Optional.empty();
    }

    /** "it was thirty eight here yesterday", "minus twenty outside". */
    private boolean isWeather(SpokenQuantity said) {
        String before = words.text(said.start() - 1);
        if (before.equals("minus")) {
            // What is taken out of a bowl counts below zero, too.
            return said.isBelow(COLDEST);
        }
        for (int at = said.end(); at < said.end() + WEATHER_REACH && !words.wall(at); at++) {
            if (OUT_THERE.contains(words.text(at))) {
                return WEATHER_IS.contains(before);
            }
        }
        return false;
    }

    /** "one eighteen on the syrup", not "two hundred on the nose". */
    private boolean isOnThing(int at) {
        return words.text(at).equals("on") && !EXACTLY.contains(words.text(at + 2));
    }

    /** "which puts the water at three fifty". */
    private boolean isNamed(int end) {
        return names.before(end)
                .filter(name -> name.inRecipe() && name.end() == end)
                .isPresent();
    }

    /** "at seven this morning", "one eighteen on the syrup", "get the oil to one ninety". */
    private boolean isLevel(SpokenQuantity said) {
        String before = words.text(said.start() - 1);
        if (before.equals("at") && !words.text(said.end()).equals("of") && !isNamed(said.start() - 1)) {
            return true;
        }
        boolean hot = said.amount()
                .least()
                .filter(value -> value.compareTo(Rationals.of(30)) >= 0 && value.compareTo(Rationals.of(260)) <= 0)
                .isPresent();
        if (!hot) {
            return false;
        }
        if (words.normal(said.start() - BODY_REACH, said.start()).contains("body temperature")) {
            return true;
        }
        for (int at = said.start() - 7; at < said.end() + 5; at++) {
            if (THERMAL.contains(words.text(at)) && !words.wall(at)) {
                return HEATED.contains(before)
                        || isOnThing(said.end())
                        || words.text(at).equals("thermometer");
            }
        }
        return false;
    }
}
