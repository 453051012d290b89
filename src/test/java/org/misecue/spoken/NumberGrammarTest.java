package org.misecue.spoken;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.RuleBasedNumberFormat;
import com.ibm.icu.util.ULocale;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Rationals;

class NumberGrammarTest {

    private static final String AND = "%spellout-numbering-verbose";
    private static final String ORDINAL = "%spellout-ordinal";
    private static final RuleBasedNumberFormat SPELLER =
            new RuleBasedNumberFormat(ULocale.ENGLISH, RuleBasedNumberFormat.SPELLOUT);
    private static final RuleBasedNumberFormat DIGITS =
            new RuleBasedNumberFormat(ULocale.ENGLISH, RuleBasedNumberFormat.ORDINAL);

    /** Spoken forms are "from memory"; the canonical ones are ICU4J's and checked below against it. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvFileSource(resources = "numbers.csv", numLinesToSkip = 1)
    void reads_numbers_as_people_say_them(String said, String least, String most, String rest) {
        WordStream words = Speech.stream(said);
        SpokenNumber number = new NumberGrammar(words).at(0).orElseThrow();
        assertThat(number.amount().least()).contains(rational(least));
        assertThat(number.amount().most()).contains(rational(most == null ? least : most));
        assertThat(words.normal(number.end(), words.size())).isEqualTo(rest == null ? "" : rest);
    }

    @ParameterizedTest(name = "\"{0}\" does not begin with a number")
    @CsvFileSource(resources = "no-numbers.csv", numLinesToSkip = 1)
    void leaves_other_words_alone(String said) {
        assertThat(new NumberGrammar(Speech.stream(said)).at(0)).isEmpty();
    }

    /** The oracle is the spell-out of English of ICU4J 78.1, with and without "and". */
    @Test
    void agrees_with_icu_on_every_number_from_zero_to_a_million() {
        for (long n = 0; n <= 1_000_000; n++) {
            assertReads(n, SPELLER.format(n, AND));
            if (n % 10 == 0) {
                assertReads(n, SPELLER.format(n));
            }
        }
    }

    @Property(tries = 2000)
    void agrees_with_icu_beyond_a_million(@ForAll @LongRange(min = 1_000_000, max = 999_999_999_999_999L) long n) {
        assertReads(n, SPELLER.format(n));
        assertReads(n, SPELLER.format(n, AND));
    }

    @Property(tries = 2000)
    void agrees_with_icu_on_decimals(
            @ForAll @IntRange(max = 999_999) int whole, @ForAll @IntRange(min = 1, max = 9999) int fourPlaces) {
        String decimal = "%d.%04d".formatted(whole, fourPlaces);
        WordStream words = Speech.stream(SPELLER.format(Double.parseDouble(decimal)));
        SpokenNumber number = new NumberGrammar(words).at(0).orElseThrow();
        assertThat(number.amount().least()).as(decimal).contains(Rationals.of(decimal));
        assertThat(number.end()).isEqualTo(words.size());
    }

    /** ICU4J spells no fractions; they are its number and its ordinal, which is how English makes them. */
    @Property
    void agrees_with_icu_on_fractions(@ForAll @IntRange(min = 1, max = 9) int count, @ForAll("divisors") int divisor) {
        String spelled =
                "%s %s%s".formatted(SPELLER.format(count), SPELLER.format(divisor, ORDINAL), count == 1 ? "" : "s");
        WordStream words = Speech.stream(spelled);
        SpokenNumber number = new NumberGrammar(words).at(0).orElseThrow();
        assertThat(number.amount()).as(spelled).isEqualTo(Amount.of(Rationals.of(count, divisor)));
        assertThat(number.end()).isEqualTo(words.size());
    }

    /** Without "and", "a hundred first" and "a hundred second" may be an amount and a time: they are left out. */
    @Property(tries = 3000)
    void no_ordinal_of_icu_is_an_amount(@ForAll @IntRange(min = 1, max = 1_000_000) int place, @ForAll boolean small) {
        int n = small ? 1 + place % 300 : place;
        for (String spelled :
                List.of(SPELLER.format(n, ORDINAL), SPELLER.format(n, ORDINAL + "-verbose"), DIGITS.format(n))) {
            if (!spelled.matches(".*(hundred|thousand) (first|second)")) {
                assertThat(new QuantityListener(Speech.stream("this is the " + spelled + " of mine")).all())
                        .as(spelled)
                        .allMatch(SpokenQuantity::isAside);
            }
        }
    }

    @Provide
    Arbitrary<Integer> divisors() {
        return Arbitraries.of(3, 4, 5, 6, 7, 8, 9, 10, 12, 16);
    }

    private static void assertReads(long n, String spelled) {
        WordStream words = Speech.stream(spelled.toLowerCase(Locale.ROOT).replace(",", ""));
        SpokenNumber number = new NumberGrammar(words).at(0).orElseThrow(() -> new AssertionError(spelled));
        if (number.end() != words.size() || !number.amount().equals(Amount.of(n))) {
            throw new AssertionError(spelled + " was read as " + number);
        }
    }

    private static tech.units.indriya.function.RationalNumber rational(String text) {
        String[] parts = text.split("/");
        return parts.length == 2
                ? Rationals.of(Long.parseLong(parts[0]), Long.parseLong(parts[1]))
                : Rationals.of(parts[0]);
    }
}
