package org.misecue.search;

import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionIncrementAttribute;

/** Hands the words of one text after another to Lucene: those of {@link Token#of}, without making each of them. */
final class TermStream extends TokenStream {

    private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
    private final PositionIncrementAttribute increment = addAttribute(PositionIncrementAttribute.class);
    private String text = "";
    private int next;

    /** To be called once Lucene has taken all of the text before. */
    TermStream over(String nextText) {
        text = nextText;
        return this;
    }

    @Override
    public boolean incrementToken() {
        term.setEmpty();
        while (next < text.length() && term.length() == 0) {
            int from = next;
            int end = Token.endOfPlain(text, from);
            if (end == text.length() || text.charAt(end) == ' ') {
                term.append(text, from, end); // as nearly all are
            } else {
                end = Token.endOfWord(text, from);
                term.append(Token.plain(text.substring(from, end)));
            }
            next = Math.max(end, from + 1);
        }
        return term.length() > 0;
    }

    @Override
    public void reset() {
        next = 0;
        increment.setPositionIncrement(1); // the end of the text before has changed it
    }
}
