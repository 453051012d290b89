package org.misecue.recipe;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import java.util.List;

/** Changes a whole document here and there, so that a fuzzer gets behind the door of a format. */
final class Splices {

    private static final int MOST = 8;

    private Splices() {}

    /** The text with some stretches cut out, repeated, or replaced by a word of the format. */
    static String in(String text, FuzzedDataProvider data, List<String> words) {
        StringBuilder changed = new StringBuilder(text);
        int changes = data.consumeInt(0, MOST);
        for (int change = 0; change < changes && !changed.isEmpty(); change++) {
            int at = data.consumeInt(0, changed.length());
            int end = Math.min(changed.length(), at + data.consumeInt(0, 40));
            String put = data.consumeBoolean() ? data.pickValue(words) : data.consumeString(24);
            switch (data.consumeInt(0, 3)) {
                case 0 -> changed.delete(at, end);
                case 1 -> changed.insert(at, put.repeat(data.consumeInt(1, 300)));
                case 2 -> changed.insert(at, changed.substring(at, end));
                default -> changed.replace(at, end, put);
            }
        }
        return changed.toString();
    }
}
