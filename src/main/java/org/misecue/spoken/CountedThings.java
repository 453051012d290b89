package org.misecue.spoken;

import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/**
 * Bare numbers that count something that is no ingredient: "three bowls", "four old friends", "over two additions". A
 * plural that names nothing in the recipe, right behind the number or behind one adjective, is what is counted.
 */
final class CountedThings implements Asides.AsideRule {

    private static final Set<String> TIME_SPANS =
            Words.set("year years day days week weeks month months second seconds o'clock am pm night nights century "
                    + "morning evening decades");
    /** "four a day". */
    private static final Set<String> RATES = Words.set("day week month year night minute");

    private static final Set<String> PEOPLE =
            Words.set("people children grandchildren women men folk guests feet mice geese persons");

    /** Words in s, and words before a plural, that say that no counted thing follows. */
    private static final Set<String> NO_PLURAL = Words.set(
            "this is was has as us yes its it's goes does plus thus always perhaps makes gives looks needs weighs comes "
                    + "cups gets says takes keeps works tastes smells means less unless across grams ounces pounds mils "
                    + "mills teaspoons tablespoons litres degrees ones yours ours hers his theirs halves quarters thirds "
                    + "pieces slices squares numbers");

    private static final Set<String> CLOSED = Words.set(
            "of and in into on onto to for is are was so then that this these those them it i we you they he she the a "
                    + "an at with by from but or if when while because please just each more all altogether together now "
                    + "here there goes go going went straight right okay yes no sorry um uh er like about roughly maybe "
                    + "my your our his her their its which who what be not out up down over off under until till than "
                    + "again too also only even still once one two three four five six seven eight nine ten");

    private static final Set<String> US = Set.of("you", "us");
    private static final Set<String> ONE_OF_A_KIND =
            Words.set("thing time minute second go day hand side moment bit look word reason person");
    private static final RationalNumber FEW = Rationals.of(12);

    private final WordStream words;
    private final Places<NameHit> names;

    CountedThings(WordStream words, Places<NameHit> names) {
        this.words = words;
        this.names = names;
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.COUNTED_THINGS;
    }

    @Override
    public Optional<Aside> of(SpokenQuantity said) {
        if (said.manner() != Manner.BARE) {
            return Optional.empty();
        }
        String next = words.text(said.end());
        boolean left =
                next.equals("left") || words.normal(said.end(), said.end() + 3).equals("on the side");
        if (left && said.amount().most().orElse(Rationals.ZERO).compareTo(FEW) <= 0) {
            return Optional.of(Aside.of(Aside.Kind.COUNT, "what is left"));
        }
        if (TIME_SPANS.contains(next)
                || (next.equals("a") && RATES.contains(words.text(said.end() + 1)))
                || (next.equals("in")
                        && words.text(said.end() + 1).equals("the")
                        && TIME_SPANS.contains(words.text(said.end() + 2)))) {
            return Optional.of(Aside.of(Aside.Kind.TIME, "a time, not a setting"));
        }
        if (next.equals("of") && US.contains(words.text(said.end() + 1))) {
            return Optional.of(Aside.of(Aside.Kind.COUNT, "a count of people"));
        }
        return counted(said).map(thing -> Aside.of(Aside.Kind.COUNT, "a count of " + thing));
    }

    private Optional<String> counted(SpokenQuantity said) {
        int at = said.end();
        if (words.border(at) || nameWithin(at)) {
            return Optional.empty();
        }
        String next = words.text(at);
        if (isOne(said)) {
            String thing = next.equals("more") ? words.text(at + 1) : next;
            return ONE_OF_A_KIND.contains(thing) ? Optional.of(thing) : Optional.empty();
        }
        if (isPlural(next)) {
            return Optional.of(next);
        }
        boolean few = said.amount().least().orElse(Rationals.ZERO).compareTo(FEW) <= 0;
        boolean named = names.before(said.start())
                .filter(name -> name.inRecipe() && name.end() == said.start())
                .isPresent();
        boolean adjective = few && !named && !CLOSED.contains(next) && !words.border(at + 1);
        String second = words.text(at + 1);
        return adjective && isPlural(second) ? Optional.of(next + " " + second) : Optional.empty();
    }

    private static boolean isOne(SpokenQuantity said) {
        RationalNumber least = said.amount().least().orElse(Rationals.ONE);
        return least.compareTo(Rationals.ONE) <= 0;
    }

    private boolean nameWithin(int at) {
        return names.in(at, at + 3).stream().anyMatch(NameHit::inRecipe);
    }

    private static boolean isPlural(String word) {
        if (PEOPLE.contains(word)) {
            return true;
        }
        return word.length() > 3
                && word.endsWith("s")
                && !word.endsWith("ss")
                && !word.endsWith("ous")
                && !word.endsWith("'s")
                && !NO_PLURAL.contains(word)
                && !CLOSED.contains(word);
    }
}
