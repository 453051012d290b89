package org.misecue.recipe;

import java.util.regex.Pattern;

/**
 * An ingredient line without what stands around its words: marks of footnotes, strokes of sheets, flourishes.
 *
 * @param text what is left
 * @param optional whether the line says that it may be left out
 */
record TidyLine(Wording text, boolean optional) {

    private static final Pattern SPACES = Pattern.compile("[\\h\\v]+");
    private static final String OPTIONALLY =
            "(?:optional(?:\\h+but\\b[^,;()]*)?|if\\h+(?:you\\h+)?(?:using|like|wish|liked|desired)(?=\\h*(?:[:,;)]|$)))\\b:?\\h*";
    /** In brackets of its own, at the beginning of a bracket that says more, or between the words. */
    private static final Cued OPTIONAL = Cued.inAnyCase("\\h*\\(opt\\.?\\)|\\h*\\(" + OPTIONALLY + "\\)|(?<=\\()"
            + OPTIONALLY + "[,;–-]?\\h*|\\h*[,;–-]?\\h*\\b" + OPTIONALLY);

    private static final Cued FOOTNOTE_MARKS =
            Cued.of("^[*†‡]+\\h*|(?<=[\\p{L}.)\\d])\\h?[*†‡§]+(?=$|[\\h,;(])|[¹²³]+(?=$|[,;])");
    /** The stroke between number and unit in a row of a sheet, "250 | g", and the head of its column. */
    private static final Cued SHEET = Cued.inAnyCase("(?<=[\\d½¼¾⅓⅔⅛])\\h*\\|\\h*(?=\\p{L})|^qty\\b\\.?:?\\h*(?=\\d)");
    /** What joins a line to those before it. */
    private static final Cued MORE = Cued.inAnyCase(
            "^(?:and|plus|another|an?\\h+(?:further|extra|additional)|the\\h+remaining)\\h+(?=[\\d½¼¾⅓⅔⅛])");
    /** Any other stroke but one between two measures. */
    private static final Cued CELL = Cued.of("\\h*\\|\\h*(?!\\d)");
    /** What a column of numbers is headed with, wherever it stands: "Vanilla pods qty: 3". */
    private static final Cued QUANTITY_HEAD = Cued.inAnyCase("(?<=\\p{L}),?\\h+qty\\b\\.?:?\\h*(?=\\d)");
    /** A baker's percentage between a name and its weight; that of chocolate or cream is part of the name. */
    private static final Cued BAKERS_SHARE = Cued.inAnyCase(
            "^(?<name>(?![^%]*(?:choc|cocoa|couverture|cream|milk|butter|fat|vinegar|alcohol|proof))\\p{L}[^\\d%,;]*?)"
                    + "\\h*[(\\[]?\\d{1,3}(?:[.,]\\d{1,2})?\\h?%[)\\]]?\\h*[,:=|–—-]*\\h*(?=[\\d½¼¾⅓⅔⅛])");
    /** What a hasty hand puts behind a word or an amount. */
    private static final Cued FLOURISH =
            Cued.of("(?<=\\p{L})(?:!+|\\.{2,}|…)|(?:(?<=[\\d½¼¾])-?|\\h+)ish\\b(?=\\h*(?:$|[,;(]))");
    /** "Boneless, skinless chicken": what both lack is the chicken, behind the comma. */
    private static final Cued LACKING = Cued.inAnyCase("(?<=\\p{L}less),(?=\\h+\\p{L}+less\\h+\\p{L})");
    /** That the amount need not be met, behind all of it. */
    private static final Cued LOOSELY = Cued.inAnyCase("\\h+(?:approx(?:imately)?|roughly)\\b\\.?$");
    /** "½ tsp each cinnamon and cloves" is half a teaspoon of either. */
    private static final Cued OF_EACH = Cued.inAnyCase(
            "(?<=(?:tsp|tbsp|poon|cup|pinch|g|oz|ml)s?\\.?)\\h+each(?:\\h+of)?(?=\\h+\\p{L}[^,;()]*\\h(?:and|&)\\h)");
    /** "10 ea @ 110 g": what each weighs. */
    private static final Cued AT_EACH =
            Cued.inAnyCase("\\h*@\\h*(\\d+(?:[.,]\\d+)?\\h?(?:kg|g|ml|l|oz|lb))\\b(?:\\h*(?:each|ea\\.?))?");
    /** A capital C counts degrees elsewhere; before an ingredient it can only be a cup. */
    private static final Cued CUPS = Cued.of("^([\\d/½¼¾⅓⅔⅛][\\d/½¼¾⅓⅔⅛.\\h-]*)C(?=\\.?\\h+\\p{L})");
    /** "1 packed cup" is a cup of what is packed. */
    private static final Cued PACKED_CUP =
            Cued.inAnyCase("\\h+((?:(?:\\p{L}+ly|well)[\\h-])?packed)\\h+(cups?|tablespoons?|tbsp)\\b");

    /** Whether other blanks than single spaces stand in it. */
    private static boolean isWide(String text) {
        for (int at = 0; at < text.length(); at++) {
            char sign = text.charAt(at);
            boolean space = sign == ' ';
            if (space
                    ? at + 1 < text.length() && text.charAt(at + 1) == ' '
                    : sign < ' ' || sign > '~' && !Character.isLetter(sign)) {
                return true;
            }
        }
        return false;
    }

    static TidyLine of(String written) {
        Wording text = Wording.of((isWide(written) ? SPACES.matcher(written).replaceAll(" ") : written).strip());
        Wording unmarked =
                FOOTNOTE_MARKS.replaceAll(OPTIONAL.replaceAll(text, " "), "").strip();
        Wording cells = CELL.replaceAll(
                SHEET.replaceAll(MORE.replaceFirst(unmarked, " "), " ").strip(), ", ");
        Wording lacking = LACKING.replaceAll(cells, "");
        Wording named = BAKERS_SHARE.replaceFirst(QUANTITY_HEAD.replaceFirst(lacking, ", "), "${name} – ");
        Wording plain = OF_EACH.replaceFirst(LOOSELY.replaceFirst(FLOURISH.replaceAll(named, ""), ""), "")
                .strip();
        Wording each = AT_EACH.replaceFirst(plain, " ($1 each)");
        Wording cups = CUPS.replaceFirst(each, "$1c");
        return new TidyLine(PACKED_CUP.replaceFirst(cups, " $2 $1"), OPTIONAL.standsIn(text));
    }
}
