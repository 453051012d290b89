package org.misecue.recipe.manuscript;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.quantity.Blanks;

/** The marks that people put before a line: bullets and numbers. */
final class Marks {

    private static final Pattern BULLET = Pattern.compile("^\\h*[-–—•*·‣◦▪●○□☐✓✔\uF0B7\u2043]\\h+(?=\\S)");
    /** A list to be ticked off. */
    private static final Pattern BOX = Pattern.compile("^\\h*\\[[ xX✓]?]\\h+(?=\\S)");

    private static final Pattern NUMBER =
            Pattern.compile("^\\h*(?:(?i:step)\\h+\\d{1,2}(?:[.:)–-]|\\h|$)|\\(?\\d{1,2}[.)](?=\\h|\\p{L}))\\h*");
    private static final Pattern HASHES = Pattern.compile("^\\h*(#{1,6})\\h+(.*?)\\h*#*$");

    private Marks() {}

    /** The line without its mark, and what the mark makes of it. */
    static Line line(int number, String raw, boolean gap) {
        if (!mayBeMarked(raw)) {
            return Line.text(number, raw.strip(), gap);
        }
        Matcher hashes = HASHES.matcher(raw);
        if (hashes.matches()) {
            return Line.heading(number, hashes.group(1).length(), hashes.group(2));
        }
        Matcher bullet = BULLET.matcher(raw);
        if (bullet.find()) {
            return Line.item(number, unboxed(raw.substring(bullet.end())).strip());
        }
        if (BOX.matcher(raw).find()) {
            return Line.item(number, unboxed(raw).strip());
        }
        Matcher numbered = NUMBER.matcher(raw);
        if (numbered.find()) {
            return Line.numbered(number, raw.substring(numbered.end()).strip());
        }
        return Line.text(number, raw.strip(), gap);
    }

    /** A glance at its first sign: most lines begin with a letter, and only "step" is a mark among these. */
    private static boolean mayBeMarked(String raw) {
        int start = Blanks.end(raw, 0);
        char sign = start < raw.length() ? raw.charAt(start) : 0;
        return !Character.isLetter(sign) || sign == 's' || sign == 'S';
    }

    /** An item without the box before it. */
    static String unboxed(String item) {
        return BOX.matcher(item).replaceFirst("");
    }
}
