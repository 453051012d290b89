package org.misecue.quantity;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** What is counted instead of weighed: tins, sachets, cloves, slices. */
final class Packings {

    private static final Pattern WORD = Pattern.compile(
            "((?:small|large|medium|big|heaped|\\p{L}+-sized?)\\h+)?"
                    + "(tin|can|jar|packet|package|pack|pkt|pkg|container|sachet|envelope|bottle|carton|tub|pot|block|bag|box|bar|tube|punnet"
                    + "|bunch|clove|slice|sprig|leaf|leave|stalk|sheet|piece|knob|cube|strip|head|drop|scoop|ball|roll|cake"
                    + "|strand|wedge|thumb|length)(?:e?s)?\\.?(?![\\p{L}-])",
            Pattern.CASE_INSENSITIVE);
    private static final Map<String, String> SINGULAR =
            Map.of("leave", "leaf", "pkt", "packet", "pkg", "packet", "package", "packet", "pack", "packet");

    private Packings() {}

    /** The packing word in the singular. */
    static Optional<String> take(Cursor cursor) {
        return cursor.take(WORD).map(found -> {
            String word = found.group(2).toLowerCase(Locale.ROOT);
            return SINGULAR.getOrDefault(word, word);
        });
    }
}
