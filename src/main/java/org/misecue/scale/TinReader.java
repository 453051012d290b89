package org.misecue.scale;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Setting;

/**
 * Tins from words, "20 cm round", "9-inch square tin", "33 × 23 cm", "two 20 cm round tins, 5 cm deep", "2 lb loaf",
 * "12-hole muffin", "25 cm ring", "1.5 litre"; and from a recipe's setting.
 */
final class TinReader {

    private static final String NUMBER = "(\\d{1,4}(?:\\.\\d{1,4}|[½¼¾])?)";
    private static final String UNIT = "(cm|centimet(?:re|er)s?|mm|in|inch(?:es)?|\"|″)";

    private static final Pattern NOTHING =
            Pattern.compile("(?<![\\d.])0+(?:\\.0+)?\\s*-?\\s*(?:cm|mm|in|[x×*\"″]|by|l|lb|ml|g|kg|hole)");

    private static final Pattern DEEP = Pattern.compile(NUMBER + "\\s*-?\\s*" + UNIT
            + "\\s*-?\\s*(?:deep|high|tall|depth)|deep\\s*:?\\s*" + NUMBER + "\\s*" + UNIT);

    private static final Pattern SIDES = Pattern.compile(NUMBER + "\\s*-?\\s*" + UNIT + "?\\s*(?:[x×*]|by)\\s*" + NUMBER
            + "\\s*-?\\s*" + UNIT + "?(?:\\s*(?:[x×*]|by)\\s*" + NUMBER + "\\s*-?\\s*" + UNIT + ")?");

    private static final Pattern SIDE = Pattern.compile(NUMBER + "\\s*-?\\s*" + UNIT);

    private static final Pattern COUNT = Pattern.compile("^\\s*(?:([1-9])\\s*[x×]|(one|two|three|four|five|six)\\b)");

    private static final Pattern HOLES = Pattern.compile(
            "(\\d{1,2})\\s*-?\\s*(?:holes?|cups?|wells?)\\b|^\\s*(\\d{1,2})\\s+(?:mini\\s+|jumbo\\s+)?(?:muffin|cupcake|bun)s?\\b");

    private static final Pattern LOAF = Pattern.compile(NUMBER + "\\s*-?\\s*(lb|lbs|pounds?|kg|g)\\b");

    private static final Pattern HOLDS =
            Pattern.compile(NUMBER + "\\s*-?\\s*(ml|millilit(?:re|er)s?|l|lit(?:re|er)s?|pints?)\\b");

    /** Words of shapes whose base one length does not tell. */
    private static final Pattern UNRECKONED =
            Pattern.compile("\\b(?:loaf|tray|traybake|rectang\\w*|oblong|oval|heart|muffin|number|letter)\\b");

    private static final Pattern RING = Pattern.compile("\\b(?:bundt|ring|savarin|tube|kugelhopf|gugelhupf)\\b");

    private static final Map<String, Integer> COUNTS =
            Map.of("one", 1, "two", 2, "three", 3, "four", 4, "five", 5, "six", 6);

    private TinReader() {}

    /** Empty where there is no size above zero, or none that tells what goes in: a loaf tin by one length. */
    static Optional<Tin> read(String words) {
        String text = words.toLowerCase(Locale.ROOT);
        if (NOTHING.matcher(text).find()) {
            return Optional.empty();
        }
        Optional<Quantity> depth = depth(text);
        String base = DEEP.matcher(text).replaceAll(" ");
        int count = count(base);
        String sized = count == 1 ? base : COUNT.matcher(base).replaceFirst(" ");
        return holes(sized)
                .or(() -> loaf(sized))
                .or(() -> sides(sized))
                .or(() -> oneSided(sized))
                .or(() -> holds(sized))
                .map(tin -> depth.map(tin::deep).orElse(tin).times(count));
    }

    /**
     * The tin of a recipe's setting. More figures in the same unit are the other sides; in another unit they say the same
     * again.
     */
    static Optional<Tin> of(Setting setting) {
        return bare(setting)
                .map(tin -> setting.depth().map(tin::deep).orElse(tin))
                .map(tin -> tin.times(Math.max(1, setting.count())));
    }

    private static Optional<Tin> bare(Setting setting) {
        Quantity size = setting.quantity();
        boolean above =
                size.amount().least().filter(value -> value.signum() > 0).isPresent();
        if (!above) {
            return Optional.empty();
        }
        return switch (size.dimension()) {
            case LENGTH -> {
                List<Quantity> sides = setting.also().stream()
                        .filter(other -> other.unit() == size.unit())
                        .toList();
                yield sides.isEmpty()
                        ? oneSided(size, setting.what())
                        : Optional.of(
                                sided(size, sides.get(0), sides.stream().skip(1).findFirst(), setting.what()));
            }
            case MASS -> Optional.of(Tin.of(new TinForm.Loaf(size)));
            case VOLUME -> Optional.of(Tin.of(new TinForm.Holds(size)));
            case COUNT ->
                Optional.of(Tin.of(
                        new TinForm.Holes(size.amount().least().orElseThrow().intValue(), hole(setting.what()))));
            default -> Optional.empty();
        };
    }

    private static Optional<Quantity> depth(String text) {
        Matcher deep = DEEP.matcher(text);
        if (!deep.find()) {
            return Optional.empty();
        }
        return Optional.of(
                deep.group(1) == null ? size(deep.group(3), deep.group(4)) : size(deep.group(1), deep.group(2)));
    }

    /** "2 × 20 cm" is two tins, for none is 2 cm long; "9 × 13 in" is one. */
    private static int count(String text) {
        Matcher count = COUNT.matcher(text);
        if (!count.find()) {
            return 1;
        }
        if (count.group(1) == null) {
            return COUNTS.getOrDefault(count.group(2), 1);
        }
        int tins = Integer.parseInt(count.group(1));
        return tins <= 3 || text.contains("round") || text.contains("square") || text.contains("hole") ? tins : 1;
    }

    private static Optional<Tin> holes(String text) {
        Matcher holes = HOLES.matcher(text);
        if (!holes.find()) {
            return Optional.empty();
        }
        int number = Integer.parseInt(holes.group(1) == null ? holes.group(2) : holes.group(1));
        return number == 0 ? Optional.empty() : Optional.of(Tin.of(new TinForm.Holes(number, hole(text))));
    }

    private static TinForm.HoleSize hole(String words) {
        if (words.contains("mini")) {
            return TinForm.HoleSize.MINI;
        }
        if (words.matches(".*\\b(?:jumbo|giant|texas|deep muffin)\\b.*")) {
            return TinForm.HoleSize.JUMBO;
        }
        return words.matches(".*\\b(?:bun|patty|fairy|tartlet|jam tart|mince pie)\\b.*")
                ? TinForm.HoleSize.BUN
                : TinForm.HoleSize.MUFFIN;
    }

    private static Optional<Tin> loaf(String text) {
        Matcher loaf = LOAF.matcher(text);
        if (!loaf.find() || !(text.contains("loaf") || loaf.group(2).matches("lbs?|pounds?"))) {
            return Optional.empty();
        }
        Unit unit =
                switch (loaf.group(2)) {
                    case "kg" -> Unit.KILOGRAM;
                    case "g" -> Unit.GRAM;
                    default -> Unit.POUND;
                };
        return Optional.of(Tin.of(new TinForm.Loaf(number(loaf.group(1), unit))));
    }

    private static Optional<Tin> holds(String text) {
        Matcher holds = HOLDS.matcher(text);
        if (!holds.find()) {
            return Optional.empty();
        }
        String word = holds.group(2);
        Unit unit = word.startsWith("m") ? Unit.MILLILITRE : word.startsWith("p") ? Unit.PINT : Unit.LITRE;
        return Optional.of(Tin.of(new TinForm.Holds(number(holds.group(1), unit))));
    }

    private static Optional<Tin> sides(String text) {
        Matcher sides = SIDES.matcher(text);
        if (!sides.find()) {
            return Optional.empty();
        }
        String unit =
                sides.group(6) != null ? sides.group(6) : sides.group(4) != null ? sides.group(4) : sides.group(2);
        if (unit == null) {
            return Optional.empty();
        }
        Optional<Quantity> third = Optional.ofNullable(sides.group(5)).map(number -> size(number, unit));
        return Optional.of(sided(size(sides.group(1), unit), size(sides.group(3), unit), third, text));
    }

    /** Two figures of a round tin, or three of another: the last is the depth. */
    private static Tin sided(Quantity one, Quantity two, Optional<Quantity> three, String words) {
        if (words.contains("round") || words.contains("springform")) {
            return Tin.round(one).deep(two);
        }
        Tin base = words.contains("square") && three.isEmpty() && !one.equals(two)
                ? Tin.square(one).deep(two)
                : Tin.rectangle(one, two);
        return three.map(base::deep).orElse(base);
    }

    private static Optional<Tin> oneSided(String text) {
        Matcher side = SIDE.matcher(text);
        return side.find() ? oneSided(size(side.group(1), side.group(2)), text) : Optional.empty();
    }

    private static Optional<Tin> oneSided(Quantity size, String words) {
        if (RING.matcher(words).find()) {
            return Optional.of(Tin.of(new TinForm.Ring(size)));
        }
        if (words.contains("square")) {
            return Optional.of(Tin.square(size));
        }
        return UNRECKONED.matcher(words).find() ? Optional.empty() : Optional.of(Tin.round(size));
    }

    private static Quantity size(String number, String unit) {
        if (unit.equals("mm")) {
            return number(number, Unit.CENTIMETRE).times(Rationals.of(1, 10));
        }
        return number(number, unit.startsWith("c") ? Unit.CENTIMETRE : Unit.INCH);
    }

    private static Quantity number(String number, Unit unit) {
        String decimal = number.replace("½", ".5").replace("¼", ".25").replace("¾", ".75");
        return Quantity.of(Rationals.of(decimal), unit);
    }
}
