package org.misecue.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityReader;

class JudgeTest {

    /**
     * The rules are those of {@link Judge}. Sizes: 1 tbsp = 15 ml, 1 tsp = 5 ml; 225 g = 7.94 oz, 20 cm = 7.87 in, 350 °F
     * = 176.7 °C, gas 4 = 350 °F (unit tables, NIST SP 811 and gas-mark tables); a cup of plain flour weighs 125 g and a
     * tablespoon of tahini 15 g (USDA SR26 foods 20081, 12166).
     */
    @ParameterizedTest(name = "{0} written, {1} said of {3}: {2}")
    @CsvSource(textBlock = """
        200 g,       200 g,       agrees,      flour
        200 g,       203 g,       agrees,      flour
        200 g,       205 g,       differs,     flour
        1 kg,        1000 g,      agrees,      flour
        200 g,       about 205 g, approximate, flour
        200 g,       about 230 g, differs,     flour
        45 ml,       3 tbsp,      agrees,      milk
        1 tbsp,      3 tsp,       agrees,      milk
        1 tbsp,      1 tsp,       differs,     milk
        225 g,       8 oz,        approximate, butter
        225 g,       9 oz,        differs,     butter
        125 g,       1 cup,       approximate, plain flour
        125 g,       2 cups,      differs,     plain flour
        60 g,        4 tbsp,      approximate, tahini
        60 g,        4 tbsp,      differs,     an unknown thing
        2–3 tbsp,    2½ tbsp,     agrees,      lemon juice
        2–3 tbsp,    3 tbsp,      agrees,      lemon juice
        2–3 tbsp,    4 tbsp,      differs,     lemon juice
        2 tbsp,      2–3 tbsp,    approximate, lemon juice
        20 ml,       1 tbsp,      differs,     milk
        3 eggs,      3 eggs,      agrees,      eggs
        3 eggs,      4 eggs,      differs,     eggs
        """)
    void holds_one_amount_against_another(String written, String said, String verdict, String ingredient) {
        Judge judge = new Judge(Household.METRIC);
        assertThat(judge.of(quantity(written), quantity(said), Pantry.standard().find(ingredient))
                        .code())
                .isEqualTo(verdict);
    }

    private static Quantity quantity(String text) {
        boolean hedged = text.startsWith("about ");
        Quantity plain = new QuantityReader()
                .read(hedged ? text.substring(6) : text)
                .orElseThrow()
                .quantity();
        return hedged ? new Quantity(new Amount.Approximate(plain.amount(), "about"), plain.unit()) : plain;
    }

    @ParameterizedTest(name = "oven {0} {1}, said {2} {3}: {4}")
    @CsvSource({
        "180, C, 180, C, agrees",
        "180, C, 170, C, differs",
        "180, C, 350, F, approximate",
        "180, C, 4, gas, approximate",
        "350, F, 350, F, agrees",
        "20, cm, 8, in, approximate",
        "23, cm, 8, in, differs"
    })
    void holds_settings_against_each_other(long written, String unit, long said, String saidUnit, String verdict) {
        Quantity one =
                Quantity.of(written, org.misecue.quantity.Unit.ofCode(unit).orElseThrow());
        Quantity other =
                Quantity.of(said, org.misecue.quantity.Unit.ofCode(saidUnit).orElseThrow());
        assertThat(new Judge(Household.METRIC).of(one, other, Optional.empty()).code())
                .isEqualTo(verdict);
    }
}
