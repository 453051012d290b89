package org.misecue.spoken;

import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity.Manner;

/** Numbers that measure nothing in this recipe, each with the reason. */
final class Asides {

    private static final Set<String> TIME_SPANS =
            Words.set("year years day days week weeks month months second seconds o'clock am pm night nights century");
    private static final Set<String> PEOPLE =
            Words.set("people kids children guests folk viewers subscribers comments friends mates hens grandchildren "
                    + "cousins sisters brothers women men videos episodes");
    private static final Set<String> MONEY = Words.set("quid pence p dollars dollar euros bucks cents rupees");
    private static final Set<String> PERCENT = Set.of("percent", "per", "%");
    private static final Set<String> NAMED_NUMBERS =
            Words.set("speed shelf number page setting camera take level step episode chapter series channel top age "
                    + "aged about't");
    private static final Set<String> AFTER_COUNT =
            Words.set("times goes minutes' hands ways things turns layers seasons way more or half's");

    private static final Set<String> TURNS = Set.of("but", "anyway", "so", "right", "okay");

    private static final int CLAUSE = 9;

    private final WordStream words;
    private final Phrases phrases;

    Asides(WordStream words, Phrases phrases) {
        this.words = words;
        this.phrases = phrases;
    }

    /** The reason why a quantity is an aside; empty if it may matter. */
    Optional<String> reason(SpokenQuantity said) {
        return byNoun(said).or(() -> byName(said)).or(() -> bySpeaker(said));
    }

    private Optional<String> byNoun(SpokenQuantity said) {
        String next = words.text(said.end());
        boolean bare = said.manner() == Manner.BARE;
        if (isMoney(said)) {
            return Optional.of("a price");
        }
        if (weighs(said) && QuantityGrammar.isPacking(next)) {
            return Optional.of("the size of a pack");
        }
        if (PERCENT.contains(next)) {
            return Optional.of("a percentage");
        }
        if (bare && TIME_SPANS.contains(next)) {
            return Optional.of("a time, not a setting");
        }
        if (bare && PEOPLE.contains(next)) {
            return Optional.of("a count of something else");
        }
        if (bare && AFTER_COUNT.contains(next) && !next.equals("more") && !next.equals("or")) {
            return Optional.of("a count of something else");
        }
        if (bare && isAge(said)) {
            return Optional.of("an age");
        }
        if (phrases.endAt(Kind.DRINKS, said.end()).isPresent()) {
            return Optional.of("a drink");
        }
        return isYear(said) ? Optional.of("a year") : Optional.empty();
    }

    /** "two pound fifty", "£2.50", "five pounds" where nothing is weighed. */
    private boolean isMoney(SpokenQuantity said) {
        String first = words.text(said.start());
        if (first.startsWith("£") || first.startsWith("$") || first.startsWith("€")) {
            return true;
        }
        if (MONEY.contains(words.text(said.end()))) {
            return true;
        }
        boolean pounds = said.unit().filter(unit -> unit == Unit.POUND).isPresent();
        String next = words.text(said.end());
        return pounds && (NumberWords.TENS.containsKey(next) || next.matches("\\d\\d") || next.equals("for"));
    }

    private boolean isAge(SpokenQuantity said) {
        String around = words.normal(said.start() - 10, said.end() + 6);
        return around.contains("birthday") || around.contains("years old");
    }

    private static boolean weighs(SpokenQuantity said) {
        return said.unit()
                .map(Unit::dimension)
                .filter(dimension -> dimension == Dimension.MASS || dimension == Dimension.VOLUME)
                .isPresent();
    }

    /** Where the scan goes on: behind the pence of a price, and behind what it is the price of ("a bag"). */
    int end(SpokenQuantity said) {
        if (!isMoney(said)) {
            return said.end();
        }
        String next = words.text(said.end());
        boolean pence = NumberWords.TENS.containsKey(next) || next.matches("\\d\\d");
        int end = pence ? said.end() + 1 : said.end();
        boolean each = words.text(end).equals("a") && QuantityGrammar.isPacking(words.text(end + 1));
        return each ? end + 2 : end;
    }

    private boolean isYear(SpokenQuantity said) {
        if (said.manner() != Manner.BARE) {
            return false;
        }
        boolean range = said.amount()
                .least()
                .filter(value -> value.compareTo(Rationals.of(1900)) >= 0 && value.compareTo(Rationals.of(2099)) <= 0)
                .isPresent();
        String before = words.text(said.start() - 1);
        return range && (before.equals("in") || before.equals("since") || before.equals("from") || before.equals("of"));
    }

    /** "speed four", "shelf two", "the top forty". */
    private Optional<String> byName(SpokenQuantity said) {
        boolean named = said.manner() == Manner.BARE && NAMED_NUMBERS.contains(words.text(said.start() - 1));
        return named ? Optional.of("the number of a " + words.text(said.start() - 1)) : Optional.empty();
    }

    /** Other times and other people, and what viewers could do instead. */
    private Optional<String> bySpeaker(SpokenQuantity said) {
        int from = clauseStart(said.start());
        if (phrases.endsBefore(Kind.DENIES, said.start())) {
            return Optional.of("denied: " + words.normal(said.start() - 1, said.end()));
        }
        if (phrases.within(Kind.OTHER_PEOPLE, from, said.start())) {
            return Optional.of("what somebody else does");
        }
        if (phrases.within(Kind.OTHER_TIME, from, said.start()) || saysOtherTime(said.end())) {
            return Optional.of("another time");
        }
        boolean viewer = phrases.within(Kind.VIEWER, from, said.start());
        if (!viewer && phrases.within(Kind.ALTERNATIVE, from, said.start())) {
            return Optional.of("an alternative for viewers");
        }
        if (phrases.endAt(Kind.ALTERNATIVE, said.end()).isPresent()
                && words.text(said.end()).equals("instead")) {
            return Optional.of("an alternative for viewers");
        }
        return Optional.empty();
    }

    private int clauseStart(int index) {
        int at = index;
        while (at > 0 && index - at < CLAUSE && !words.border(at) && !TURNS.contains(words.text(at))) {
            at--;
        }
        return at;
    }

    /** "two fifty is the old way": right behind the amount, at most a word between. */
    private boolean saysOtherTime(int end) {
        return phrases.endAt(Kind.OTHER_TIME, end).isPresent()
                || (words.text(end).equals("is") || words.text(end).equals("was"))
                        && phrases.endAt(Kind.OTHER_TIME, end + 1).isPresent();
    }
}
