package org.misecue.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.en.PorterStemFilter;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;

/** English word stems by Porter's rules. */
final class Stems {

    /** Where the rules join what a kitchen keeps apart: icing is no ice. */
    private static final Map<String, String> KITCHEN =
            Map.of("icing", "icing", "icings", "icing", "iced", "icing", "dates", "date", "dated", "dated");

    private static final Stems STEMS = new Stems();

    private final OneWord word = new OneWord();
    private final TokenStream stemmer = new PorterStemFilter(word);

    private Stems() {}

    static String of(String word) {
        String known = KITCHEN.get(word);
        return known != null ? known : STEMS.stem(word);
    }

    private synchronized String stem(String text) {
        try {
            word.next = text;
            stemmer.incrementToken();
            return word.term.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e); // not from memory
        }
    }

    private static final class OneWord extends TokenStream {
        final CharTermAttribute term = addAttribute(CharTermAttribute.class);
        String next = "";

        @Override
        public boolean incrementToken() {
            term.setEmpty().append(next);
            return true;
        }
    }
}
