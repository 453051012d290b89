package org.misecue.quantity;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What is counted instead of weighed, tins, sachets, cloves, slices, and how such words are written. */
public final class Packings {

    /** What is sold full of something, so that a weight in brackets behind the name is what it holds. */
    private static final String HOLDING = "tin|can|jar|packet|package|pack|pkt|pkg|container|sachet|envelope|env|bottle"
            + "|carton|ctn|tub|pot(?!\\h+barley)|block|bag|box|bx|bar|tube|punnet|pouch|sleeve|basket|glass";

    private static final Set<String> FULL =
            Set.of(HOLDING.replaceAll("\\(\\?![^)]*\\)", "").split("\\|", -1));

    private static final Shape WORD = word("|\\p{L}+-sized?");
    /** Without those that any word may begin: "egg-sized piece". */
    private static final Shape UNSIZED = word("");

    private static Shape word(String sizes) {
        return Shape.inAnyCase(
                "(?:(?:small|large|medium|big|heaped|fat|plump|thick|thin|sm\\.?|lg\\.?|lge\\.?|med\\.?" + sizes
                        + ")\\h+){0,2}(" + HOLDING
                        + "|bunch|clove|slice|sprig|leaf(?!\\h+lard)|leave|lv|stalk|sheet|piece|knob|cube|strip|head|drop"
                        + "|scoop|ball|roll|cake(?!\\h+(?:flour|mix|meal|crumbs?)\\b)|strand|wedge|thumb|length|loaf|loave|square|sq|log|wineglass|teacup|mug|ladleful|batch|quantity"
                        + "|quantitie|recipe|portion|disc|disk|shot|pod|rasher|bulb|blade)(?:e?s)?\\.?(?![\\p{L}-])");
    }

    private static final Map<String, String> SINGULAR = Map.ofEntries(
            Map.entry("leave", "leaf"),
            Map.entry("lv", "leaf"),
            Map.entry("loave", "loaf"),
            Map.entry("pkt", "packet"),
            Map.entry("pkg", "packet"),
            Map.entry("package", "packet"),
            Map.entry("pack", "packet"),
            Map.entry("env", "envelope"),
            Map.entry("ctn", "carton"),
            Map.entry("bx", "box"),
            Map.entry("sq", "square"),
            Map.entry("quantitie", "quantity"));

    private Packings() {}

    /** The packing word for several of them, "leaves". */
    public static String plural(String packing) {
        if (packing.endsWith("leaf") || packing.equals("loaf")) {
            return packing.replaceFirst("f$", "ves");
        }
        if (packing.endsWith("quantity")) {
            return packing.replaceFirst("y$", "ies");
        }
        return packing.matches(".*(?:ch|x|s)") ? packing + "es" : packing + "s";
    }

    /** Whether such a packing is full of what it is named with: a tin, but not a slice. */
    public static boolean holds(String packing) {
        return FULL.contains(packing);
    }

    /** The packing word in the singular. */
    static Optional<String> take(Cursor cursor) {
        if (!cursor.maySee(UNSIZED::mayStandAt) && !cursor.maySee(QuantityReader::isSize)) {
            return Optional.empty();
        }
        return cursor.take(WORD).map(found -> {
            String word = found.group(1).toLowerCase(Locale.ROOT);
            return SINGULAR.getOrDefault(word, word);
        });
    }
}
