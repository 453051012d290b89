package org.misecue.scale;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Setting;

/** Tins from words: "20 cm round", "9-inch square tin", "33 × 23 cm", "two 20 cm round tins, 5 cm deep". */
final class TinReader {

    private static final String NUMBER = "(\\d{1,4}(?:\\.\\d{1,4}|[½¼¾])?)";
    private static final String UNIT = "(cm|centimet(?:re|er)s?|in|inch(?:es)?|\"|″)";

    private static final Pattern NOTHING =
            Pattern.compile("(?<![\\d.])0+(?:\\.0+)?\\s*-?\\s*" + "(?:cm|in|[x×*\"″]|by)");

    private static final Pattern DEEP = Pattern.compile(
            NUMBER + "\\s*-?\\s*" + UNIT + "\\s*(?:deep|high|depth)|deep\\s*:?\\s*" + NUMBER + "\\s*" + UNIT);

    private static final Pattern SIDES =
            Pattern.compile(NUMBER + "\\s*-?\\s*" + UNIT + "?\\s*(?:[x×*]|by)\\s*" + NUMBER + "\\s*-?\\s*" + UNIT);

    private static final Pattern SIDE = Pattern.compile(NUMBER + "\\s*-?\\s*" + UNIT);

    private static final Pattern COUNT = Pattern.compile("^\\s*(?:([1-9])\\s*[x×]|(one|two|three|four)\\b)");

    private static final Pattern UNRECKONED =
            Pattern.compile("\\b(?:loaf|bundt|ring|savarin|tray|rectang|oblong|oval|heart|muffin|\\d+-hole)");

    private static final Map<String, Integer> COUNTS = Map.of("one", 1, "two", 2, "three", 3, "four", 4);

    private TinReader() {}

    /** Empty where there is no size above zero, or no base that can be reckoned: a loaf tin by one length, a ring. */
    static Optional<Tin> read(String words) {
        String text = words.toLowerCase(Locale.ROOT);
        if (NOTHING.matcher(text).find()) {
            return Optional.empty();
        }
        Optional<Quantity> depth = depth(text);
        String base = DEEP.matcher(text).replaceAll(" ");
        int count = count(base);
        String sized = count == 1 ? base : COUNT.matcher(base).replaceFirst(" ");
        return rectangle(sized)
                .or(() -> oneSided(sized))
                .map(tin -> depth.map(tin::deep).orElse(tin).times(count));
    }

    /**
     * The tin of a recipe's setting. More figures in the same unit are the other sides, a third one the depth; in another
     * unit they say the same again.
     */
    static Optional<Tin> of(Setting setting) {
        Quantity length = setting.quantity();
        if (length.dimension() != Dimension.LENGTH) {
            return Optional.empty();
        }
        List<Quantity> sides = setting.also().stream()
                .filter(other -> other.unit() == length.unit())
                .toList();
        Optional<Tin> tin =
                sides.isEmpty() ? oneSided(length, setting.what()) : Optional.of(Tin.rectangle(length, sides.get(0)));
        return tin.map(one -> sides.size() > 1 ? one.deep(sides.get(1)) : one)
                .map(one -> one.times(Math.max(1, setting.count())));
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
        return tins <= 3 || text.contains("round") || text.contains("square") ? tins : 1;
    }

    private static Optional<Tin> rectangle(String text) {
        Matcher sides = SIDES.matcher(text);
        if (!sides.find()) {
            return Optional.empty();
        }
        Quantity one = size(sides.group(1), sides.group(4));
        Quantity other = size(sides.group(3), sides.group(4));
        return Optional.of(Tin.rectangle(one, other));
    }

    private static Optional<Tin> oneSided(String text) {
        Matcher side = SIDE.matcher(text);
        return side.find() ? oneSided(size(side.group(1), side.group(2)), text) : Optional.empty();
    }

    private static Optional<Tin> oneSided(Quantity size, String words) {
        if (words.contains("square")) {
            return Optional.of(Tin.square(size));
        }
        return UNRECKONED.matcher(words).find() ? Optional.empty() : Optional.of(Tin.round(size));
    }

    private static Quantity size(String number, String unit) {
        String decimal = number.replace("½", ".5").replace("¼", ".25").replace("¾", ".75");
        return Quantity.of(Rationals.of(decimal), unit.startsWith("c") ? Unit.CENTIMETRE : Unit.INCH);
    }
}
