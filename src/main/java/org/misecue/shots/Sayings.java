package org.misecue.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.misecue.prep.Bowl;
import org.misecue.prep.PrepWords;
import org.misecue.prep.Wording;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Setting;

/** What the presenter must say, in words that can be read aloud, and the same as written for a lower third. */
final class Sayings {

    private static final String DOT = " · ";
    private static final Pattern ROAST = Pattern.compile("\\broast\\b", Pattern.CASE_INSENSITIVE);

    private Sayings() {}

    /** "one hundred and twenty-five grams of caster sugar", "two large eggs". */
    static List<Saying> amounts(List<Bowl> bowls) {
        return Taken.outOf(bowls).stream().map(Sayings::amount).toList();
    }

    private static Saying amount(Taken taken) {
        Quantity quantity = taken.content().weighed();
        String of = quantity.dimension() == Dimension.COUNT ? "" : "of ";
        String additions = taken.additions() == 1
                ? ""
                : " in " + QuantityWriter.words(Quantity.of(taken.additions(), Unit.EACH)) + " additions";
        return new Saying(
                "", QuantityWriter.words(quantity), of + taken.content().ingredient() + additions);
    }

    /** "125 g caster sugar · 2 large eggs". */
    static String writtenAmounts(List<Bowl> bowls) {
        return Taken.outOf(bowls).stream()
                .map(Taken::content)
                .map(content -> PrepWords.quantity(content) + " " + content.ingredient())
                .collect(Collectors.joining(DOT));
    }

    /** "oven at | one hundred and eighty degrees Celsius", "bake for | twenty-five minutes". */
    static List<Saying> settings(List<Setting> settings, String method) {
        List<Saying> words = new ArrayList<>();
        for (Setting setting : settings) {
            String figure = QuantityWriter.words(setting.quantity());
            switch (setting.kind()) {
                case OVEN_TEMPERATURE -> {
                    words.add(new Saying("oven at", figure, ""));
                    setting.fan().ifPresent(fan -> words.add(new Saying("fan oven at", QuantityWriter.words(fan), "")));
                    setting.also().forEach(also -> words.add(new Saying("or", QuantityWriter.words(also), "")));
                }
                case DURATION -> words.add(new Saying(verb(setting, method) + "for", figure, ""));
                case PAN -> words.add(pan(setting, figure));
                case YIELD -> words.add(new Saying("makes", figure, setting.what()));
            }
        }
        return words;
    }

    /** What goes on: the technique, in the method's own word where that is to roast. */
    private static String verb(Setting setting, String method) {
        String what = setting.what().toLowerCase(Locale.ROOT);
        if (what.isBlank() || what.equals("rest")) {
            return what.isBlank() ? "" : "leave ";
        }
        boolean roasts = what.equals("bake") && ROAST.matcher(method).find();
        return (roasts ? "roast" : what.replace('-', ' ')) + " ";
    }

    private static Saying pan(Setting setting, String figure) {
        String what = setting.what().isBlank() ? "tin" : setting.what();
        String count =
                setting.count() > 1 ? QuantityWriter.words(Quantity.of(setting.count(), Unit.EACH)) + " times " : "";
        return isLength(setting) ? new Saying(count + what + ",", figure, "") : new Saying(count.strip(), figure, what);
    }

    private static boolean isLength(Setting setting) {
        Unit unit = setting.quantity().unit();
        return unit == Unit.CENTIMETRE || unit == Unit.INCH;
    }

    /** "200 °C (fan 180 °C) · 20 minutes". */
    static String writtenSettings(List<Setting> settings) {
        return settings.stream().map(Sayings::written).collect(Collectors.joining(DOT));
    }

    private static String written(Setting setting) {
        String figure = QuantityWriter.text(setting.quantity());
        if (setting.kind() == Setting.Kind.OVEN_TEMPERATURE) {
            List<String> others = new ArrayList<>();
            setting.fan().ifPresent(fan -> others.add("fan " + QuantityWriter.text(fan)));
            setting.also().forEach(also -> others.add(QuantityWriter.text(also)));
            return others.isEmpty() ? figure : figure + " (" + String.join(", ", others) + ")";
        }
        String count = setting.count() > 1 ? setting.count() + " × " : "";
        return switch (setting.kind()) {
            case PAN -> count + figure + " " + (setting.what().isBlank() ? "tin" : setting.what());
            case YIELD -> figure + " " + setting.what();
            default -> figure;
        };
    }

    /** In one line: amounts as a list, then figures. */
    static String line(List<Saying> sayings) {
        List<String> amounts = sayings.stream()
                .filter(saying -> saying.before().isEmpty())
                .map(Saying::words)
                .toList();
        String figures = sayings.stream()
                .filter(saying -> !saying.before().isEmpty())
                .map(Saying::words)
                .collect(Collectors.joining(", "));
        String list = Wording.list(amounts);
        return list.isEmpty() || figures.isEmpty() ? list + figures : list + "; " + figures;
    }
}
