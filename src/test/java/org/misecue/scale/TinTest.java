package org.misecue.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Setting;

class TinTest {

    private static Tin tin(String words) {
        return TinReader.read(words).orElseThrow();
    }

    /** Source: calculated from the areas, with π to nine places. */
    @ParameterizedTest(name = "{0} to {1} is × {2}")
    @CsvSource({
        "20 cm round, 20 cm square, 1.2732",
        "20 cm round, 23 cm round,  1.3225",
        "15 cm round, 20 cm round,  1.7778",
        "18 cm round, 20 cm round,  1.2346",
        "8 in round,  9 in round,   1.2656",
        "20 cm round, 13 × 9 in,    2.4027",
        "20 cm square, 20 cm round, 0.7854",
        "20 cm round, two 20 cm round tins, 2",
    })
    void scales_by_the_area_of_the_base(String from, String to, String factor) {
        assertThat(Rationals.rounded(tin(from).factorTo(tin(to)), 4).toPlainString())
                .isEqualTo(factor);
    }

    /** Source: calculated. */
    @ParameterizedTest(name = "{0} is {1} cm²")
    @CsvSource({
        "20 cm round, 314.16",
        "23 cm round, 415.48",
        "8 in round, 324.29",
        "9 in round, 410.43",
        "13 x 9 in, 754.84"
    })
    void has_an_area(String words, double area) {
        assertThat(tin(words).area().orElseThrow().doubleValue()).isCloseTo(area, within(0.005));
    }

    /** What is filled to another depth, and tins that are sold by a name. Source: calculated from the figures in the rows. */
    @ParameterizedTest(name = "{0} to {1} is × {2} by {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "20 cm round, 5 cm deep | 20 cm round, 10 cm deep | 2      | VOLUME",
                "20 cm round, 5 cm deep | 1.5 litre dish          | 0.9549 | VOLUME",
                "20 cm round            | 20 cm round, 10 cm deep | 1      | AREA",
                "1 lb loaf tin          | 2 lb loaf tin           | 2      | NAME",
                "450 g loaf tin         | 900 g loaf tin          | 2      | NAME",
                "12-hole muffin tin     | two 12-hole muffin tins | 2      | NAME",
                "12-hole muffin tin     | 24-hole mini muffin tin | 0.6364 | USUAL",
                "20 cm round            | 2 lb loaf tin           | 0.9549 | USUAL",
                "23 cm ring             | 25 cm ring              | 1.1815 | AREA",
            })
    void scales_by_what_both_tins_tell(String from, String to, String factor, String measure) {
        assertThat(Rationals.rounded(tin(from).factorTo(tin(to)), 4).toPlainString())
                .isEqualTo(factor);
        assertThat(tin(from).measureTo(tin(to))).hasToString(measure);
    }

    /**
     * What such tins usually hold against the cups that American tables give, of 236.6 ml: from memory, and the tables
     * differ among themselves by as much as the bound here allows.
     */
    @ParameterizedTest(name = "{0} holds about {1} cups")
    @CsvSource({
        "'8 in round, 2 in deep', 6.5",
        "'9 in round, 2 in deep', 8",
        "'8 in square, 2 in deep', 8",
        "'9 in square, 2 in deep', 10",
        "'13 x 9 x 2 in', 15",
        "'9 x 5 x 2.5 in loaf', 8",
        "2 lb loaf tin, 6.5",
        "25 cm bundt tin, 12",
        "12-hole muffin tin, 6",
    })
    void holds_about_what_tables_of_tins_say(String words, double cups) {
        assertThat(tin(words).taken().doubleValue() / 236.5882365).isCloseTo(cups, within(cups * 0.15));
    }

    @Test
    void two_round_tins_give_an_exact_factor() {
        assertThat(tin("20 cm round").factorTo(tin("23 cm round"))).isEqualTo(Rationals.of("1.3225"));
    }

    @Test
    void depth_counts_where_both_are_stated() {
        Tin shallow = tin("20 cm round, 5 cm deep");
        assertThat(Rationals.rounded(shallow.volume().orElseThrow(), 1).toPlainString())
                .isEqualTo("1570.8");
        assertThat(shallow.factorTo(tin("20 cm round, 7.5 cm deep"))).isEqualTo(Rationals.of("1.5"));
        assertThat(shallow.factorTo(tin("20 cm round"))).isEqualTo(Rationals.ONE);
        assertThat(tin("20 cm round").volume()).isEmpty();
    }

    @ParameterizedTest(name = "“{0}” is {1}")
    @CsvSource({
        "20cm springform,           20 cm round",
        "9-inch square tin,         9 in square",
        "33 x 23 cm traybake tin,   33 cm × 23 cm",
        "13 by 9 inch pan,          13 in × 9 in",
        "two 20 cm round cake tins, 2 × 20 cm round",
        "2 x 18 cm sandwich tins,   2 × 18 cm round",
        "23 cm × 13 cm loaf tin,    23 cm × 13 cm",
        "8½ in round,               8½ in round",
        "'20 cm round, 5 cm deep',  '20 cm round, 5 cm deep'",
        "20 x 5 cm round,           '20 cm round, 5 cm deep'",
        "'deep: 10 cm, 18 cm square', '18 cm square, 10 cm deep'",
        "23 x 13 x 7 cm loaf tin,   '23 cm × 13 cm, 7 cm deep'",
        "200 mm round,              20 cm round",
        "2 lb loaf tin,             2 lb loaf",
        "900g loaf tin,             900 g loaf",
        "12-hole muffin tin,        12-hole muffin",
        "24 hole mini muffin tin,   24-hole mini muffin",
        "2 x 12-hole bun tins,      2 × 12-hole bun",
        "25 cm bundt tin,           25 cm ring",
        "1.5 litre dish,            1.5 litres",
        "800 ml basin,              800 ml",
    })
    void reads_tins_in_words(String words, String understood) {
        assertThat(tin(words)).hasToString(understood);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "23 cm loaf tin",
                "a big tin",
                "0-hole muffin tin",
                "25 cm oval dish",
                "0 l dish",
                "30 cm tray"
            })
    void a_tin_without_a_base_to_reckon_is_not_guessed(String words) {
        assertThat(TinReader.read(words)).isEmpty();
    }

    @Test
    void the_recipes_setting_is_a_tin() {
        Quantity twenty = Quantity.of(20, Unit.CENTIMETRE);
        assertThat(TinReader.of(Recipes.setting(Setting.Kind.PAN, twenty, "round sandwich tins", 2)))
                .map(Tin::toString)
                .contains("2 × 20 cm round");
        assertThat(TinReader.of(Recipes.setting(Setting.Kind.PAN, twenty, "loaf tin", 1)))
                .isEmpty();
        assertThat(TinReader.of(Recipes.setting(Setting.Kind.PAN, Quantity.of(2, Unit.POUND), "loaf tin", 1)))
                .map(Tin::toString)
                .contains("2 lb loaf");
        assertThat(TinReader.of(Recipes.setting(Setting.Kind.PAN, Quantity.of(12, Unit.EACH), "muffin tin", 1)))
                .map(Tin::toString)
                .contains("12-hole muffin");
    }

    @Test
    void a_second_figure_in_the_same_unit_is_the_other_side() {
        Quantity long33 = Quantity.of(33, Unit.CENTIMETRE);
        Quantity wide23 = Quantity.of(23, Unit.CENTIMETRE);
        Quantity inches = Quantity.of(13, Unit.INCH);
        Quantity twenty = Quantity.of(20, Unit.CENTIMETRE);
        Setting tray = new Setting(
                Setting.Kind.PAN, long33, Optional.empty(), List.of(inches, wide23), "traybake tin", 1, 0, 3);
        assertThat(TinReader.of(tray)).contains(Tin.rectangle(long33, wide23));
        Setting deep = new Setting(Setting.Kind.PAN, long33, Optional.empty(), List.of(wide23, twenty), "tin", 1, 0, 3);
        assertThat(TinReader.of(deep)).contains(Tin.rectangle(long33, wide23).deep(twenty));
    }

    @Test
    void batches_in_words_are_read_or_refused_with_their_place() {
        Place place = Place.of("episode.yaml", 4);
        assertThat(Batch.times(place, "× 1.5")).isEqualTo(new Batch.Factor(Rationals.of("1.5")));
        assertThat(Batch.times(place, "1½")).isEqualTo(new Batch.Factor(Rationals.of("1.5")));
        assertThat(Batch.makes(place, "30 buns")).isEqualTo(new Batch.Makes(Rationals.of(30), "buns"));
        assertThatThrownBy(() -> Batch.times(place, "a lot"))
                .isInstanceOf(BadInput.class)
                .hasMessage(
                        "episode.yaml:4: a batch is from 0.01 to 100 times the recipe, such as 2 or 0.5, not “a lot”.");
        assertThatThrownBy(() -> Batch.times(place, "0")).isInstanceOf(BadInput.class);
        assertThatThrownBy(() -> Batch.makes(place, "")).isInstanceOf(BadInput.class);
        assertThatThrownBy(() -> Batch.tin(place, "round"))
                .isInstanceOf(BadInput.class)
                .hasMessage("episode.yaml:4: a tin is a size and a shape, such as 20 cm round, 33 × 23 cm, 2 lb loaf or"
                        + " 12-hole muffin, not “round”.");
        assertThatThrownBy(() -> Batch.times(place, "101")).isInstanceOf(BadInput.class);
        assertThatThrownBy(() -> Batch.times(place, "0.001")).isInstanceOf(BadInput.class);
        assertThatThrownBy(() -> Batch.tin(place, "0 cm round")).isInstanceOf(BadInput.class);
    }
}
