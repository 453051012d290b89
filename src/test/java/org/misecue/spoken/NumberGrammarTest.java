package org.misecue.spoken;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.RuleBasedNumberFormat;
import com.ibm.icu.util.ULocale;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Rationals;

class NumberGrammarTest {

    private static final String AND = "%spellout-numbering-verbose";

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

    /** The oracle is ICU4J's spell-out of English, with and without "and". */
    @Test
    void agrees_with_icu_on_every_number_from_zero_to_a_million() {
        RuleBasedNumberFormat icu = new RuleBasedNumberFormat(ULocale.ENGLISH, RuleBasedNumberFormat.SPELLOUT);
        for (long n = 0; n <= 1_000_000; n++) {
            assertReads(n, icu.format(n, AND));
            if (n % 10 == 0) {
                assertReads(n, icu.format(n));
            }
        }
    }

    @Property(tries = 2000)
    void agrees_with_icu_beyond_a_million(@ForAll @LongRange(min = 1_000_000, max = 999_999_999_999_999L) long n) {
        RuleBasedNumberFormat icu = new RuleBasedNumberFormat(ULocale.ENGLISH, RuleBasedNumberFormat.SPELLOUT);
        assertReads(n, icu.format(n));
        assertReads(n, icu.format(n, AND));
    }

    @Property(tries = 1000)
    void agrees_with_icu_on_decimals(@ForAll Random random) {
        RuleBasedNumberFormat icu = new RuleBasedNumberFormat(ULocale.ENGLISH, RuleBasedNumberFormat.SPELLOUT);
        String decimal = "%d.%d".formatted(random.nextInt(1000), 1 + random.nextInt(9));
        WordStream words = Speech.stream(icu.format(Double.parseDouble(decimal)));
        SpokenNumber number = new NumberGrammar(words).at(0).orElseThrow();
        assertThat(number.amount().least()).as(decimal).contains(Rationals.of(decimal));
        assertThat(number.end()).isEqualTo(words.size());
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
