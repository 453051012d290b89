package org.misecue.publish;

import java.util.Locale;

/** How an allergen stands out in its line, as Article 21 of Regulation (EU) 1169/2011 asks of labels. */
public enum Emphasis {
    /** "BUTTER": stands out in any plain text. */
    CAPITALS {
        @Override
        String of(String word) {
            return word.toUpperCase(Locale.ROOT);
        }
    },
    /** "*butter*", which hosts that know such marks print in bold: common practice, no source. */
    STARS {
        @Override
        String of(String word) {
            return "*" + word + "*";
        }
    };

    abstract String of(String word);
}
