package org.misecue.search;

import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.BytesTermAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionIncrementAttribute;
import org.apache.lucene.util.BytesRef;

/**
 * Hands the words of one text after another to Lucene: those of {@link Token#of}, without making each of them. Nearly all are
 * kept just as they are written, so that the text's own bytes will do.
 */
final class TermStream extends TokenStream {

    private final BytesTermAttribute term = addAttribute(BytesTermAttribute.class);
    private final PositionIncrementAttribute increment = addAttribute(PositionIncrementAttribute.class);
    private final BytesRef own = new BytesRef();
    private String text = "";
    private boolean isByteALetter;
    private int next;

    /**
     * To be called once Lucene has taken all of the text before.
     *
     * @param utf8 the same text
     */
    TermStream over(String nextText, byte[] utf8) {
        text = nextText;
        own.bytes = utf8;
        isByteALetter = utf8.length == nextText.length();
        return this;
    }

    @Override
    public boolean incrementToken() {
        while (next < text.length()) {
            int from = next;
            int end = Token.endOfPlain(text, from);
            if (isByteALetter && end > from && isEnd(end)) {
                own.offset = from;
                own.length = end - from;
                term.setBytesRef(own);
                next = end + 1;
                return true;
            }
            end = Token.endOfWord(text, from);
            next = Math.max(end, from + 1);
            String word = Token.plain(text.substring(from, end));
            if (!word.isEmpty()) {
                term.setBytesRef(new BytesRef(word));
                return true;
            }
        }
        return false;
    }

    private boolean isEnd(int at) {
        return at == text.length() || text.charAt(at) == ' ';
    }

    @Override
    public void reset() {
        next = 0;
        increment.setPositionIncrement(1); // the end of the text before has changed it
    }
}
