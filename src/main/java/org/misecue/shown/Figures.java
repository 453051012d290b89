package org.misecue.shown;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What figures in a line that was read are worth: mends what can only be one thing, and doubts what may be another. The
 * rules know shapes and likely sizes, not recipes.
 */
final class Figures {

    private static final String FRACTION = "½⅓⅔¼¾⅛⅜⅝⅞";
    private static final Pattern LOOKS_LIKE_FIGURES =
            Pattern.compile("([0-9OoIl|SB]+(?:[.,/–-][0-9OoIl|SB]+)?)(g|kg|ml|cm|°C)?");
    private static final Pattern MILLILITRES = Pattern.compile("(?i)(\\d+)?m[il1|]");
    private static final Pattern DEGREES = Pattern.compile("(\\d{2,3})?[°º*˚'’\"“”]+\\s?[CcGe]([,.;]?)");
    /** The "11/2" of a mixed number whose space was not seen. */
    private static final Pattern IMPROPER = Pattern.compile("(\\d{1,2})([1-7])/([2348])");

    /** A comma after it belongs to nothing where a unit follows. */
    private static final Pattern SLASHED = Pattern.compile("(?:\\d+ )?\\d+/\\d+[,.]");

    private static final Pattern FIGURE = Pattern.compile("(\\d+(?:[.,]\\d+)?)");
    private static final Pattern WELL_FORMED =
            Pattern.compile("[(~]?(?:\\d+(?:[.,]\\d+)?|\\d+/\\d+|\\d*[" + FRACTION + "])"
                    + "(?:[–—-](?:\\d+(?:[.,]\\d+)?|\\d+/\\d+|\\d*[" + FRACTION + "]))?"
                    + "(?:g|kg|ml|l|cm|mm|tsp|tbsp|oz|lb|min|mins|h|hrs?|x|×|%|°[CF]?)?[,.;:)]?(?:/\\d+°[CF])?");
    private static final Pattern CLOCK = Pattern.compile("\\d{1,2}:\\d\\d(?::\\d\\d)?");
    private static final Pattern ORDINAL = Pattern.compile("\\d+(?:st|nd|rd|th)|\\d+[-–](?:inch|cm|hour|minute|min)");

    /** What figures are usually followed by. */
    private static final Set<String> UNITS = Set.of(
            "g",
            "kg",
            "mg",
            "ml",
            "l",
            "cl",
            "dl",
            "tsp",
            "tsps",
            "tbsp",
            "tbsps",
            "cup",
            "cups",
            "oz",
            "lb",
            "lbs",
            "pint",
            "pints",
            "cm",
            "mm",
            "in",
            "inch",
            "inches",
            "min",
            "mins",
            "minute",
            "minutes",
            "hour",
            "hours",
            "hr",
            "hrs",
            "h",
            "sec",
            "secs",
            "seconds",
            "day",
            "days",
            "°c",
            "°f",
            "c",
            "f",
            "x",
            "×",
            "%",
            "grams",
            "gram",
            "litre",
            "litres",
            "teaspoon",
            "teaspoons",
            "tablespoon",
            "tablespoons",
            "pinch",
            "fl",
            "stick",
            "sticks");

    /** What ½, ⅓ … are read as, and units that are hardly ever halved in writing. */
    private static final Set<String> LIKE_FRACTIONS = Set.of("12", "13", "14", "18", "23", "34", "38", "58", "78");

    private static final Set<String> PLAIN =
            Set.of("g", "ml", "grams", "gram", "min", "mins", "minutes", "°c", "°f", "c", "f", "x", "×", "%");

    private static final Set<String> SHORT_WORDS =
            Set.of("of", "to", "in", "or", "at", "on", "by", "as", "is", "a", "an", "am", "pm", "up", "it", "no");

    private Figures() {}

    /** One token as it can only be meant. */
    static String mend(String token, String before) {
        String mended = token.replaceAll("^[“”\"'‘’`|~_.,:;]+(?=[\\p{L}\\d])", "");
        // Nobody letters a card with low lines: an outline that runs on from word to word does.
        mended = mended.replaceAll("(?<=\\p{L})_(?=\\p{L})", " ").replaceAll("(?<=.)_+$", "");
        Matcher figures = LOOKS_LIKE_FIGURES.matcher(mended);
        if (figures.matches() && mended.chars().anyMatch(Character::isDigit) && !mended.matches("\\d+l")) {
            String unit = figures.group(2) == null ? "" : figures.group(2);
            mended = figures.group(1)
                            .replaceAll("[Oo]", "0")
                            .replaceAll("[Il|]", "1")
                            .replace('S', '5')
                            .replace('B', '8')
                    + unit;
        }
        Matcher millilitres = MILLILITRES.matcher(mended);
        boolean afterFigure = before.matches(".*[\\d" + FRACTION + "]");
        if (millilitres.matches() && (millilitres.group(1) != null || afterFigure)) {
            mended = (millilitres.group(1) == null ? "" : millilitres.group(1)) + "ml";
        }
        Matcher degrees = DEGREES.matcher(mended);
        if (degrees.matches() && (degrees.group(1) != null || afterFigure)) {
            mended = (degrees.group(1) == null ? "" : degrees.group(1)) + "°C" + degrees.group(2);
        }
        mended = mended.replaceFirst("^(\\d+[–-]\\d+)[–-](mins?|minutes|hours)$", "$1 $2");
        if (afterFigure && mended.matches("[xX×]+")) {
            mended = "x";
        }
        Matcher improper = IMPROPER.matcher(mended);
        if (improper.matches() && figure(improper.group(2)) < figure(improper.group(3))) {
            mended = improper.group(1) + " " + improper.group(2) + "/" + improper.group(3);
        }
        return mended;
    }

    static List<Token> mended(List<Token> tokens) {
        List<Token> mended = new ArrayList<>();
        String before = "";
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            before = mend(token.text(), before);
            if (SLASHED.matcher(before).matches() && UNITS.contains(next(tokens, i))) {
                before = before.substring(0, before.length() - 1);
            }
            mended.add(new Token(token.box(), before, token.sure()));
        }
        return mended;
    }

    /**
     * A line as it is likeliest meant, which does not take its doubt away: some letter between "t" and "sp" can only be a
     * "b", a sign that looks like "in" or "rn" before "l" an "m", a "q" after figures a "g", and so is a 9 with which an
     * amount in grams ends that would be none without it. A sign between figures and their unit is dirt, except after one
     * figure, where it may be what is left of a fraction.
     */
    static List<Token> likeliest(List<Token> tokens) {
        List<Token> likeliest = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            boolean afterFigure = i > 0 && tokens.get(i - 1).text().matches(".*\\d");
            boolean hasUnit = UNITS.contains(next(tokens, i));
            String text = token.text()
                    .replaceFirst("^(?:t[^\\W\\d_s]|[LlI1]b)(?=sps?$)", "tb")
                    .replaceFirst("(?<![\\p{L}])(?:in|rn)l$", "ml")
                    .replaceFirst(afterFigure ? "^q$" : "(?<=\\d)q$", "g");
            text = hasUnit ? text.replaceFirst(AFTER_FIGURE, "") : text.replaceFirst("^(\\d{3})9$", "$1g");
            likeliest.add(new Token(token.box(), text, token.sure()));
        }
        return likeliest;
    }

    private static final String AFTER_FIGURE = "(?<=\\d\\d|\\d[–-]\\d)[^\\p{L}\\p{N}%°]$|(?<=\\d)[:)]$";

    private static String next(List<Token> tokens, int i) {
        return i + 1 < tokens.size() ? bare(tokens.get(i + 1).text()) : "";
    }

    /** A figure and the unit after it, which may be empty. */
    record Measured(String figure, String unit) {}

    private static final Pattern GLUED = Pattern.compile("(.*[\\d" + FRACTION + "])(\\p{L}+|°[CF]?|%|x)?");

    /** The figures of a line with their units: two readings agree when these are the same. */
    static List<Measured> of(List<Token> tokens) {
        List<Measured> figures = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            if (tokens.get(i).hasFigure()) {
                String next = next(tokens, i);
                String plain = plain(tokens.get(i).text());
                Matcher glued = GLUED.matcher(plain);
                boolean hasUnit = glued.matches() && glued.group(2) != null;
                String unit = hasUnit ? bare(glued.group(2)) : UNITS.contains(next) ? next : "";
                figures.add(new Measured(hasUnit ? glued.group(1) : plain, unit.equals("×") ? "x" : unit));
            }
        }
        return figures;
    }

    /** Whether two readings cannot both be right: a unit that only one of them saw is no contradiction. */
    static boolean contradict(List<Measured> one, List<Measured> other) {
        if (one.size() != other.size()) {
            return true;
        }
        for (int i = 0; i < one.size(); i++) {
            boolean units = one.get(i).unit().equals(other.get(i).unit())
                    || one.get(i).unit().isEmpty()
                    || other.get(i).unit().isEmpty();
            if (!one.get(i).figure().equals(other.get(i).figure()) || !units) {
                return true;
            }
        }
        return false;
    }

    /** Whether two readings have the same number of figures and not the same ones. */
    static boolean differ(List<Measured> one, List<Measured> other) {
        return one.size() == other.size()
                && !one.stream()
                        .map(Measured::figure)
                        .toList()
                        .equals(other.stream().map(Measured::figure).toList());
    }

    private static String plain(String text) {
        return text.replaceAll("[–—]", "-")
                .replaceAll("[,.;:)]+$", "")
                .replaceAll("^[(]", "")
                .replaceAll("[X×]", "x");
    }

    private static String bare(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\d°%×" + FRACTION + "]", "");
    }

    /** Whether a mended line's figures may have been others, as far as its text shows. */
    static boolean doubtful(List<Token> tokens) {
        boolean doubtful = false;
        for (int i = 0; i < tokens.size(); i++) {
            String text = tokens.get(i).text();
            String next = next(tokens, i);
            String before = i > 0 ? tokens.get(i - 1).text() : "";
            if (tokens.get(i).hasFigure()) {
                doubtful |= isBareFraction(text, next);
                // The dash of "1–2" or the sign of "2 × 400" was not seen.
                doubtful |= text.matches("\\d+") && i + 1 < tokens.size() && startsWhole(tokens.get(i + 1));
                doubtful |= next.matches("[" + FRACTION + "].*") && !text.matches("\\d+");
                // Nobody writes a comma before a unit: it is part of a sign that was not known, or dirt.
                doubtful |= text.matches(".*[^\\p{L}\\p{N}%°]") && UNITS.contains(next);
                doubtful |= !isWellFormed(text) || isUnlikely(text, next) || isOddUnit(text, next);
            } else {
                doubtful |= mayBeFraction(text, before, next) || i == 0 && isSpoonOrCup(text);
            }
        }
        boolean spoon = tokens.stream().anyMatch(token -> isNearlySpoon(bare(token.text())));
        return doubtful || spoon;
    }

    /** Its figure was not seen. */
    private static boolean isSpoonOrCup(String word) {
        return bare(word).matches("tsps?|tbsps?|cups?|ml|kg");
    }

    private static boolean startsWhole(Token token) {
        return token.text().matches("\\d++(?!/).*");
    }

    private static boolean isWellFormed(String token) {
        for (String part : token.split(" ")) {
            String bare = part.replaceAll("[,.;:!?)]+$", "");
            boolean good = WELL_FORMED.matcher(bare).matches()
                    || CLOCK.matcher(bare).matches()
                    || ORDINAL.matcher(bare).matches();
            if (!good || bare.matches("0\\d.*")) {
                return false;
            }
        }
        return true;
    }

    /** A part of something without a unit: the unit may have been overlooked. */
    private static boolean isBareFraction(String token, String next) {
        return token.matches("\\d*[" + FRACTION + "]|\\d+/\\d+") && !UNITS.contains(next);
    }

    /** Amounts of a size at which a lost dash, point, degree sign or a "g" taken for a 9 is likelier than the amount. */
    private static boolean isUnlikely(String token, String next) {
        String unit = bare(token.replaceAll("^[^\\p{L}°%×]*", "").replaceAll("/.*", ""));
        String measure = unit.isEmpty() ? next : unit;
        Matcher numbers = FIGURE.matcher(token);
        boolean unlikely =
                token.contains("%") && FIGURE.matcher(token).results().anyMatch(m -> figure(m.group(1)) < 5);
        while (numbers.find()) {
            unlikely |= figure(numbers.group(1)) > most(measure, numbers.group(1))
                    || LIKE_FRACTIONS.contains(numbers.group(1)) && !PLAIN.contains(measure);
        }
        return unlikely;
    }

    private static double most(String measure, String figure) {
        return switch (measure) {
            case "tsp", "tsps", "tbsp", "tbsps", "teaspoon", "teaspoons", "tablespoon", "tablespoons", "cup", "cups" ->
                10;
            case "kg", "l", "litre", "litres", "lb", "lbs", "pint", "pints" -> 9;
            case "g", "ml", "grams", "gram" -> 4999;
            case "°c", "c" -> 290;
            case "°f", "f" -> 550;
            case "min", "mins", "minutes", "minute", "sec", "secs", "seconds" -> 300;
            case "hour", "hours", "hr", "hrs", "h" -> 72;
            case "%" -> 100;
            // Without a unit it is a count; 225g is often taken for 2259.
            default -> figure.endsWith("9") ? 8 : 60;
        };
    }

    /** The word after a figure that is nearly a unit and none: "thsp" may be tsp or tbsp. */
    private static boolean isOddUnit(String token, String next) {
        if (!token.matches(".*[\\d" + FRACTION + "]") || next.isEmpty() || UNITS.contains(next)) {
            return false;
        }
        boolean spoon = next.length() >= 4 && next.length() <= 5 && CardMerger.distance(next, "tbsp") <= 2;
        return spoon
                || next.matches("\\p{L}{1,2}") && !SHORT_WORDS.contains(next)
                || next.matches("[mn][il1]|k[gq9]|rn[il]|m[nl]n|mln|rnin|cu.|.up|°.*");
    }

    /** A word that is nearly a spoon and none: "thsp" may be tsp or tbsp. */
    private static boolean isNearlySpoon(String word) {
        return word.length() >= 2
                && word.length() <= 5
                && !UNITS.contains(word)
                && (CardMerger.distance(word, "tsp") <= 1 || CardMerger.distance(word, "tbsp") <= 1);
    }

    /** Signs that one-sign fractions are taken for. */
    private static boolean mayBeFraction(String text, String before, String next) {
        boolean odd = text.matches(".*[%¥£€$#@&*^~\"“”'‘’/\\\\|{}\\[\\]<>«».,]+.*") && !text.matches(".*\\p{L}{3,}.*")
                || text.matches("[YVZA][sza4,]?,?|[A-Z]");
        return odd && (UNITS.contains(next) || before.matches(".*\\d"));
    }

    private static double figure(String digits) {
        return Double.parseDouble(digits.replace(',', '.'));
    }
}
