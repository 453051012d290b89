package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.quantity.WrittenQuantity;

/** Reads oven temperatures with their fan, °F and gas figures: "180 °C (160 °C fan, gas 4)". */
final class OvenReader {

    /** {@code bare} where neither degrees nor a scale stand with it: the 160 of "180 °C, fan 160". */
    private record Figure(Quantity quantity, boolean fan, boolean bare, int start, int end) {}

    private static final Cued FIGURE = Cued.inAnyCase(
            "(?:(?<before>fan|convection)(?:\\h+oven)?\\h*:?\\h*(?:at\\h+)?)?"
                    + "(?:gas(?:\\h+mark)?\\h*(?<gas>1/[24](?!\\d)|\\d{1,2}|[½¼])"
                    + "|(?<low>\\d{2,3})(?:\\h*[–-]\\h*(?<high>\\d{2,3}))?\\h*(?:(?<degree>°|º|degrees?|deg\\.?)\\h*)?(?<unit>celsius|fahrenheit|centigrade|[CF])?)"
                    + "(?![\\p{L}\\d])(?:\\h*[(,]?\\h*(?:(?:if|for|in)\\h+(?:it\\h+is\\h+|it's\\h+|using\\h+|yours\\h+is\\h+)?(?:an?\\h+)?)?(?<after>fan|convection)(?:\\h*[-–]?\\h*(?:oven|forced|assisted|bake))?\\b\\)?(?!\\h*\\d))?");
    private static final Pattern BETWEEN = Pattern.compile(
            "[\\h/|,;()\\[\\]–-]*(?:or|and|then|if\\h+using|conventional)?[\\h/|,;()\\[\\]–:-]*",
            Pattern.CASE_INSENSITIVE);
    private static final Cued OF_AN_OVEN = Cued.inAnyCase(
            "\\boven|\\bpre-?heat|\\bbak(?:e|ing)\\b|\\broast|\\bturn\\b.*\\b(?:down|up)\\b|\\btemperature\\b|\\bgas\\b");
    private static final Cued OF_SOMETHING_ELSE = Cued.inAnyCase(
            "\\bsyrup|\\bsugar|thermometer|caramel|\\binternal|\\bcore\\b|\\breads?\\b|\\breach|\\boil\\b|\\bmelt|\\bmilk\\b|\\bchocolate");
    private static final Cued OVEN = Cued.inAnyCase("\\boven\\b");
    private static final Cued BAKES = Cued.inAnyCase("\\bbak(?:e|ing)\\b");
    private static final int COOLEST_C = 50;
    private static final Cued TO = Cued.inAnyCase("(?:\\bto|\\bat|:)\\h*$");
    private static final int COOLEST_BARE = 100;
    private static final int HOTTEST_BARE_C = 260;

    private static final QuantityReader QUANTITIES = new QuantityReader();

    private OvenReader() {}

    static List<Setting> read(Wording text, int step, int line) {
        return stated(text, step, line).stream().map(Stated::setting).toList();
    }

    /** The same, each with its place in the text. */
    static List<Stated> stated(Wording text, int step, int line) {
        List<Stated> settings = new ArrayList<>();
        List<Figure> group = new ArrayList<>();
        for (Figure figure : figures(text)) {
            if (!group.isEmpty()
                    && !BETWEEN.matcher(text.text()
                                    .substring(group.get(group.size() - 1).end(), figure.start()))
                            .matches()) {
                setting(text, group, step, line).ifPresent(settings::add);
                group.clear();
            }
            group.add(figure);
        }
        setting(text, group, step, line).ifPresent(settings::add);
        return settings;
    }

    private static List<Figure> figures(Wording text) {
        List<Figure> figures = new ArrayList<>();
        FIGURE.each(text, matcher -> {
            boolean fan = matcher.group("before") != null || matcher.group("after") != null;
            boolean startsWord = matcher.start() == 0
                    || !Character.isLetterOrDigit(text.text().charAt(matcher.start() - 1));
            if (startsWord) {
                boolean bare = matcher.group("gas") == null
                        && matcher.group("unit") == null
                        && matcher.group("degree") == null;
                int start = matcher.start();
                int end = matcher.end();
                quantity(matcher).ifPresent(quantity -> figures.add(new Figure(quantity, fan, bare, start, end)));
            }
        });
        return figures.stream()
                .filter(figure -> !figure.bare || figure.fan || isBesideFan(text, figure, figures))
                .toList();
    }

    /** The 180 of "heat to 180 (fan 160)". */
    private static boolean isBesideFan(Wording text, Figure figure, List<Figure> figures) {
        int next = figures.indexOf(figure) + 1;
        return next < figures.size()
                && figures.get(next).fan
                && TO.endsAt(text, figure.start)
                && BETWEEN.matcher(text.text().substring(figure.end, figures.get(next).start))
                        .matches();
    }

    private static Optional<Quantity> quantity(Matcher figure) {
        if (figure.group("gas") != null) {
            return QUANTITIES
                    .read("gas " + figure.group("gas").replace("1/2", "½").replace("1/4", "¼"))
                    .map(WrittenQuantity::quantity);
        }
        long low = Long.parseLong(figure.group("low"));
        Unit unit;
        if (figure.group("unit") != null) {
            unit = figure.group("unit").toUpperCase(Locale.ROOT).startsWith("F") ? Unit.FAHRENHEIT : Unit.CELSIUS;
        } else {
            unit = low > HOTTEST_BARE_C ? Unit.FAHRENHEIT : Unit.CELSIUS;
        }
        if (figure.group("unit") == null && figure.group("degree") == null && low < COOLEST_BARE) {
            return Optional.empty();
        }
        Amount amount = figure.group("high") == null
                ? Amount.of(low)
                : Amount.between(Rationals.of(low), Rationals.of(Long.parseLong(figure.group("high"))));
        return low < COOLEST_C ? Optional.empty() : Optional.of(new Quantity(amount, unit));
    }

    private static Optional<Stated> setting(Wording text, List<Figure> group, int step, int line) {
        if (group.isEmpty()) {
            return Optional.empty();
        }
        Wording sentence = Wording.of(Sentences.around(text.text(), group.get(0).start()));
        Optional<Quantity> fan =
                group.stream().filter(Figure::fan).map(Figure::quantity).findFirst();
        boolean gas = group.stream().anyMatch(figure -> figure.quantity().unit() == Unit.GAS_MARK);
        boolean oven = fan.isPresent()
                || gas
                || (OF_AN_OVEN.standsIn(sentence) && !OF_SOMETHING_ELSE.standsIn(sentence))
                || OVEN.standsIn(sentence);
        if (!oven) {
            return Optional.empty();
        }
        Figure first =
                group.stream().filter(figure -> !figure.fan()).findFirst().orElse(group.get(0));
        List<Quantity> also = group.stream()
                .filter(figure -> !figure.equals(first) && !figure.fan())
                .map(Figure::quantity)
                .toList();
        String what = BAKES.standsIn(sentence) ? "bake" : "heat the oven";
        return Optional.of(new Stated(
                group.get(0).start(),
                group.get(group.size() - 1).end(),
                new Setting(Setting.Kind.OVEN_TEMPERATURE, first.quantity(), fan, also, what, 1, step, line)));
    }
}
