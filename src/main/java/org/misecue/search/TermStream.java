package org.misecue.search;

import java.util.List;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionIncrementAttribute;

/** Hands the terms of a passage to Lucene: several at each position. */
final class TermStream extends TokenStream {

    private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
    private final PositionIncrementAttribute increment = addAttribute(PositionIncrementAttribute.class);
    private final List<List<String>> positions;
    private int position;
    private int alternative;

    TermStream(List<List<String>> positions) {
        this.positions = positions;
    }

    @Override
    public boolean incrementToken() {
        if (position < positions.size()
                && alternative == positions.get(position).size()) {
            position++;
            alternative = 0;
        }
        if (position == positions.size()) {
            return false;
        }
        clearAttributes();
        increment.setPositionIncrement(alternative == 0 ? 1 : 0);
        term.append(positions.get(position).get(alternative++));
        return true;
    }

    @Override
    public void reset() {
        position = 0;
        alternative = 0;
    }
}
