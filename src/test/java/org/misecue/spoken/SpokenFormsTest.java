package org.misecue.spoken;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;

/** From the number to every way of saying it and back. */
class SpokenFormsTest {

    @Property(tries = 3000)
    void hears_a_whole_number_however_it_is_said(@ForAll @IntRange(min = 1, max = 9999) int n) {
        assertHeard(Amount.of(n), SpokenForms.whole(n));
    }

    @Property(tries = 500)
    void hears_a_mixed_number_however_it_is_said(
            @ForAll @IntRange(min = 1, max = 30) int whole, @ForAll("parts") List<Integer> part) {
        Amount amount = Amount.of(Rationals.of(whole).add(Rationals.of(part.get(0), part.get(1))));
        assertHeard(amount, SpokenForms.mixed(whole, part.get(0), part.get(1)));
    }

    @Property(tries = 100)
    void hears_a_part_however_it_is_said(@ForAll("parts") List<Integer> part) {
        for (String form : SpokenForms.part(part.get(0), part.get(1))) {
            assertHeard(Amount.of(Rationals.of(part.get(0), part.get(1))), Set.of(form + " of a"));
        }
    }

    @Property(tries = 1000)
    void hears_a_decimal_however_it_is_said(@ForAll @IntRange(max = 120) int whole, @ForAll("decimals") String digits) {
        assertHeard(Amount.of(Rationals.of(whole + "." + digits)), SpokenForms.decimal(whole, digits));
    }

    @Property(tries = 1000)
    void hears_a_range_however_it_is_said(
            @ForAll @IntRange(min = 1, max = 98) int low, @ForAll @IntRange(min = 1, max = 98) int more) {
        int high = Math.min(99, low + more);
        assertHeard(Amount.between(Rationals.of(low), Rationals.of(high)), SpokenForms.range(low, high));
    }

    @Property
    void hears_a_range_of_hundreds(
            @ForAll @IntRange(min = 1, max = 8) int low, @ForAll @IntRange(min = 1, max = 8) int more) {
        int high = Math.min(9, low + more);
        assertHeard(
                Amount.between(Rationals.of(low * 100L), Rationals.of(high * 100L)),
                SpokenForms.rangeOfHundreds(low, high));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "one twenty five",
                "one 70",
                "a hundred and five",
                "one oh five",
                "twelve hundred",
                "twelve fifty"
            })
    void the_forms_include_those_that_recognisers_write(String form) {
        assertThat(List.of(125, 170, 105, 1200, 1250))
                .anyMatch(n -> SpokenForms.whole(n).contains(form));
    }

    @Property(tries = 2000)
    void where_the_recogniser_cuts_its_cues_does_not_matter(
            @ForAll("speech") String sentence, @ForAll List<Boolean> cuts) {
        String[] words = sentence.split(" ");
        StringBuilder cut = new StringBuilder(words[0]);
        for (int i = 1; i < words.length; i++) {
            boolean here = !cuts.isEmpty() && cuts.get(i % cuts.size());
            cut.append(here ? " | " : " ").append(words[i]);
        }
        assertThat(heard(cut.toString())).as(cut.toString()).isEqualTo(heard(sentence));
    }

    @Provide
    Arbitrary<List<Integer>> parts() {
        return Arbitraries.of(
                List.of(1, 2),
                List.of(1, 3),
                List.of(2, 3),
                List.of(1, 4),
                List.of(3, 4),
                List.of(1, 5),
                List.of(1, 6),
                List.of(1, 8),
                List.of(3, 8),
                List.of(5, 8),
                List.of(7, 8),
                List.of(1, 10));
    }

    @Provide
    Arbitrary<String> decimals() {
        return Arbitraries.strings().numeric().ofMinLength(1).ofMaxLength(3).filter(digits -> !digits.endsWith("0"));
    }

    /** The sentences of the reference, and numbers in all their forms. */
    @Provide
    Arbitrary<String> speech() {
        Arbitrary<String> numbers = Arbitraries.integers()
                .between(1, 9999)
                .flatMap(n -> Arbitraries.of(SpokenForms.whole(n)))
                .map(form -> "put in " + form + " grams of flour and then stir");
        return Arbitraries.oneOf(Arbitraries.of(ReferenceTables.sentences()), numbers);
    }

    private static void assertHeard(Amount amount, Set<String> forms) {
        for (String form : forms) {
            assertThat(heard("so " + form + " grams of it"))
                    .as(form)
                    .singleElement()
                    .returns(1, SpokenQuantity::start)
                    .returns(Optional.of(new Quantity(amount, Unit.GRAM)), SpokenQuantity::quantity);
        }
    }

    private static List<SpokenQuantity> heard(String sentence) {
        return new QuantityListener(Speech.stream(sentence)).all();
    }
}
