package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChapterTitleTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Heat the oven to 180 °C (160 °C fan, gas 4). Butter a tin.            | Heat the oven to 180 °C
            In a large bowl, beat the butter and sugar until pale and fluffy.     | Beat the butter and sugar
            Meanwhile, toast the hazelnuts for 8 minutes.                         | Toast the hazelnuts
            Whip the cream with the icing sugar to soft peaks and fold through the tahini. | Whip the cream with the icing sugar to soft peaks
            Scrape the mixture into the tin, set the pears on top and scatter with nuts.   | Scrape the mixture into the tin
            Cool in the tin for 15 minutes, then turn out.                        | Cool in the tin
            Bake approx. 20 min. Cool.                                            | Bake approx. 20 min
            Rest.                                                                 | Rest
            knead                                                                 | Knead
            Sift the remarkably well travelled wholemeal einkorn flour twice more | Sift the remarkably well travelled wholemeal…
            """)
    void a_title_says_what_is_done_and_no_more(String step, String title) {
        assertThat(ChapterTitle.of(step)).isEqualTo(title);
    }

    @Property(tries = 300)
    void a_title_is_short_and_never_empty(@ForAll String step) {
        assertThat(ChapterTitle.of(step)).isNotBlank().hasSizeLessThanOrEqualTo(ChapterTitle.LONGEST + 1);
    }
}
