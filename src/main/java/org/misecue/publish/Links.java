package org.misecue.publish;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** What becomes of web addresses in the texts of a recipe: some boxes make them links, others refuse the whole text. */
public enum Links {
    /** They go. */
    DROP,
    /** They go, and words in their place say that there was one. */
    NOTE,
    /** They stay as they are written. */
    KEEP;

    /** Written with a scheme, with "www." or as a bare name that boxes turn into links; without the stop behind it. */
    private static final Pattern ADDRESS = Pattern.compile(
            "(?i)(?<![\\p{L}\\p{N}])(?:[a-z][a-z0-9+.-]*://|www\\.)[^\\s<>‹›\"”)\\]]*[^\\s<>‹›\"”)\\].,;:!?]"
                    + "|(?<![\\p{L}\\p{N}])(?:mailto|javascript|data|file|tel):\\S+"
                    + "|(?<![\\p{L}\\p{N}])(?:[a-z0-9-]{1,63}\\.){1,8}(?:com|org|net)\\b(?:/[^\\s<>‹›\"”)\\]]*[^\\s<>‹›\"”)\\].,;:!?])?");

    private static final Pattern LEFT_OVER = Pattern.compile("\\(\\s*\\)|\\[\\s*]|‹\\s*›");

    static boolean anyIn(String text) {
        return ADDRESS.matcher(text).find();
    }

    /** @param note what stands in the place of an address where one is to be told */
    String in(String text, String note) {
        if (this == KEEP || !anyIn(text)) {
            return text;
        }
        String without =
                ADDRESS.matcher(text).replaceAll(this == NOTE ? java.util.regex.Matcher.quoteReplacement(note) : "");
        return LEFT_OVER
                .matcher(without)
                .replaceAll("")
                .replaceAll(" {2,}", " ")
                .replaceAll(" +([.,;:!?)])", "$1")
                .strip();
    }

    /** The same in every text of a tree of names. */
    Map<String, Object> in(Map<String, Object> names, String note) {
        Map<String, Object> changed = new LinkedHashMap<>();
        names.forEach((name, value) -> changed.put(name, inValue(value, note)));
        return changed;
    }

    private Object inValue(Object value, String note) {
        if (value instanceof String text) {
            return in(text, note);
        }
        if (value instanceof List<?> list) {
            List<Object> changed = new ArrayList<>();
            list.forEach(each -> changed.add(inValue(each, note)));
            return changed;
        }
        if (value instanceof Map<?, ?> map) {
            Map<String, Object> changed = new LinkedHashMap<>();
            map.forEach((name, inner) -> changed.put(name.toString(), inValue(inner, note)));
            return changed;
        }
        return value;
    }
}
