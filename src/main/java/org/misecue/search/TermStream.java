package org.misecue.search;

import java.util.List;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionIncrementAttribute;

/** Hands the terms of a passage to Lucene: at each position the word itself, its stem and its sound. */
final class TermStream extends TokenStream {

    private enum Next {
        WORD,
        STEM,
        SOUND
    }

    private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
    private final PositionIncrementAttribute increment = addAttribute(PositionIncrementAttribute.class);
    private final List<Token> tokens;
    private int position;
    private Next next = Next.WORD;

    TermStream(List<Token> tokens) {
        this.tokens = tokens;
    }

    @Override
    public boolean incrementToken() {
        if (position == tokens.size()) {
            return false;
        }
        Token token = tokens.get(position);
        term.setEmpty();
        increment.setPositionIncrement(next == Next.WORD ? 1 : 0);
        switch (next) {
            case WORD -> {
                term.append(token.word());
                next = Next.STEM;
            }
            case STEM -> {
                term.append(Terms.STEM).append(token.stem());
                next = token.sound().isEmpty() ? Next.WORD : Next.SOUND;
            }
            case SOUND -> {
                term.append(Terms.SOUND).append(token.sound());
                next = Next.WORD;
            }
        }
        if (next == Next.WORD) {
            position++;
        }
        return true;
    }

    @Override
    public void reset() {
        position = 0;
        next = Next.WORD;
    }
}
