package org.misecue.shots;

import java.util.ArrayList;
import java.util.List;
import org.misecue.prep.Bowl;
import org.misecue.prep.Content;
import org.misecue.prep.PrepWords;
import org.misecue.prep.Wording;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Setting;

/** What the presenter must say, in words that can be read aloud. */
final class Sayings {

    private Sayings() {}

    /** "one hundred and twenty-five grams of caster sugar and two large eggs". */
    static String amounts(List<Bowl> bowls) {
        return Wording.list(bowls.stream()
                .flatMap(bowl -> bowl.contents().stream())
                .map(Sayings::amount)
                .toList());
    }

    private static String amount(Content content) {
        boolean counted = content.weighed().dimension() == Dimension.COUNT;
        return QuantityWriter.words(content.weighed()) + (counted ? " " : " of ") + content.ingredient();
    }

    /** "125 g caster sugar · 2 large eggs": for a lower third. */
    static String writtenAmounts(List<Bowl> bowls) {
        return String.join(
                " · ",
                bowls.stream()
                        .flatMap(bowl -> bowl.contents().stream())
                        .map(content -> PrepWords.quantity(content) + " " + content.ingredient())
                        .toList());
    }

    /** "one hundred and eighty degrees Celsius, fan one hundred and sixty degrees Celsius, twenty-five minutes". */
    static String settings(List<Setting> settings) {
        List<String> words = new ArrayList<>();
        for (Setting setting : settings) {
            String figure = QuantityWriter.words(setting.quantity());
            switch (setting.kind()) {
                case OVEN_TEMPERATURE -> {
                    words.add("oven at " + figure);
                    setting.fan().ifPresent(fan -> words.add("fan oven at " + QuantityWriter.words(fan)));
                }
                case DURATION -> words.add((setting.what().isBlank() ? "" : setting.what() + " for ") + figure);
                case PAN -> words.add(pan(setting, figure));
                case YIELD -> words.add("makes " + figure + " " + setting.what());
            }
        }
        return String.join(", ", words);
    }

    private static String pan(Setting setting, String figure) {
        boolean length = setting.quantity().unit() == Unit.CENTIMETRE
                || setting.quantity().unit() == Unit.INCH;
        String what = setting.what().isBlank() ? "tin" : setting.what();
        return length ? what + ", " + figure : figure + " " + what;
    }
}
