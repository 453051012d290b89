package org.misecue.shown;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FiguresTest {

    private static List<Token> tokens(String line) {
        List<Token> tokens = new ArrayList<>();
        int at = 0;
        for (String word : line.split(" ")) {
            tokens.add(new Token(new Box(at, 0, at + 10 * word.length(), 20), word, 90));
            at += 10 * word.length() + 10;
        }
        return Figures.mended(tokens);
    }

    @ParameterizedTest
    @CsvSource({
        "l75 g flour, 175 g flour",
        "15O ml milk, 150 ml milk",
        "2S0g sugar, 250g sugar",
        "75 mi milk, 75 ml milk",
        "75mi milk, 75ml milk",
        "Oven 180 °c, Oven 180 °C",
        "Oven 180*C, Oven 180°C",
        "11/2 tsp salt, 1 1/2 tsp salt",
        "31/4 tsp salt, 3 1/4 tsp salt",
        "'1 1/2, tsp salt', 1 1/2 tsp salt",
        "'1 1/2, then', '1 1/2, then'",
        "1l milk, 1l milk",
        "¼ cup_plain flour, ¼ cup plain flour",
        "Bake 30 min_, Bake 30 min",
        "Oil, Oil",
        "1/2 tsp, 1/2 tsp",
        "So long, So long",
        "Bake 20 min, Bake 20 min",
        "Bake 8-10-min, Bake 8-10 min"
    })
    void what_can_only_be_one_thing_is_mended(String read, String meant) {
        assertThat(Token.text(tokens(read))).isEqualTo(meant);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1% tsp baking powder",
                "½ vanilla",
                "1'/2 tsp salt",
                "% tsp salt",
                "¥2 tsp salt",
                "Ys tsp salt",
                "Y2 cup oats",
                "12 tsp salt",
                "1 2 tbsp cocoa",
                "2 400 g tins",
                "12 lemon",
                "14 cup sugar",
                "34 cup oats",
                "3, ¾ tsp zest",
                "2259 honey",
                "759 flour",
                "25 tbsp water",
                "15 kg flour",
                "1800 C",
                "Bake 2530 min",
                "05 kg flour",
                "2 thsp butter",
                "4, tsp salt",
                "tbsp lemon juice",
                "Cup dark chocolate",
                "1 isp salt",
                "25 y honey",
                "17.5.2 g",
                "3% cup syrup",
                "tosp 3 honey",
                "2% kg flour",
                "112 hours"
            })
    void what_may_be_something_else_is_doubted(String read) {
        assertThat(Figures.doubtful(tokens(read))).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "225 g plain flour",
                "225g plain flour",
                "1½ tsp baking powder",
                "1/2 tsp salt",
                "1 1/2 tsp salt",
                "2–3 tbsp water",
                "2 x 400 g tins plums",
                "180°C / gas mark 4",
                "Oven 180 °C",
                "180°C/160°C fan",
                "Bake 25–30 min",
                "70% chocolate",
                "3 large eggs",
                "1.5 kg flour",
                "Rest 1 hour",
                "The filling",
                "Lemon, sliced",
                "2 tbsp + more",
                "1:30"
            })
    void what_is_plain_is_believed(String read) {
        assertThat(Figures.doubtful(tokens(read))).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "2 x 400 g tins, 2x 400g tins, true",
        "4—5 tbsp, 4-5 tbsp, true",
        "140 °C, 140°C, true",
        "75 g flour, 175 g flour, false",
        "2 tsp salt, 2 tbsp salt, false",
        "1 tsp salt, 1½ tsp salt, false"
    })
    void readings_agree_by_figures_and_units(String one, String other, boolean agree) {
        assertThat(Figures.of(tokens(one)).equals(Figures.of(tokens(other)))).isEqualTo(agree);
        assertThat(Figures.contradict(Figures.of(tokens(one)), Figures.of(tokens(other))))
                .isEqualTo(!agree);
    }

    @ParameterizedTest
    @CsvSource({"Bake 25 min, Bake 25, false", "Bake 25, Bake 26 min, true", "Bake, Bake 25 min, true"})
    void a_unit_that_was_not_seen_is_no_contradiction(String one, String other, boolean contradict) {
        assertThat(Figures.contradict(Figures.of(tokens(one)), Figures.of(tokens(other))))
                .isEqualTo(contradict);
    }

    @ParameterizedTest
    @CsvSource({
        "2 thsp butter, 2 tbsp butter",
        "1-2 thsps oil, 1-2 tbsps oil",
        "4 tosp oil, 4 tbsp oil",
        "250 inl milk, 250 ml milk",
        "45q honey, 45g honey",
        "45 q honey, 45 g honey",
        "4259 flour, 425g flour",
        "8-10) min, 8-10 min",
        "'30, minutes', 30 minutes",
        "2: hours, 2 hours",
        "'4, cup', '4, cup'",
        "3 Lbsp oil, 3 tbsp oil",
        "2 isp butter, 2 isp butter"
    })
    void what_stays_doubtful_is_shown_as_it_is_likeliest_meant(String read, String likeliest) {
        assertThat(Figures.doubtful(tokens(read))).isTrue();
        assertThat(Token.text(Figures.likeliest(tokens(read)))).isEqualTo(likeliest);
    }

    @ParameterizedTest
    @CsvSource({
        "750g cream, 730 cream, true",
        "750g cream, 750 g cream, false",
        "750g cream, cream, false",
        "2 400 g tins, 2 × 400 g tins, false",
        "2 × 400 g tins, 2 × 100 g tins, true"
    })
    void figures_differ_where_as_many_are_read_and_not_the_same(String one, String other, boolean differ) {
        assertThat(Figures.differ(Figures.of(tokens(one)), Figures.of(tokens(other))))
                .isEqualTo(differ);
    }
}
