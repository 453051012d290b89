package org.misecue.shown;

import java.util.List;

/**
 * One reading of a line.
 *
 * @param light whether its letters are lighter than their ground
 */
record Look(List<Token> tokens, boolean light, Preparation how) {

    private static final int HALF = 50;

    /** How much was read, and how surely. */
    int worth() {
        return tokens.stream()
                .mapToInt(token -> token.sure() * token.text().length())
                .sum();
    }

    /** As what was read speaks for the preparation: a few signs more that are hardly believed are no gain. */
    int credit() {
        return tokens.stream()
                .mapToInt(token -> (token.sure() - HALF) * token.text().length())
                .sum();
    }

    int sure() {
        return Token.sure(tokens);
    }

    /** How sure the least sure figure is. */
    int figuresSure() {
        return tokens.stream()
                .filter(Token::hasFigure)
                .mapToInt(Token::sure)
                .min()
                .orElse(100);
    }

    Look mended() {
        return new Look(Figures.mended(tokens), light, how);
    }

    List<Figures.Measured> figures() {
        return Figures.of(tokens);
    }

    boolean agrees(Look other) {
        return figures().equals(other.figures());
    }
}
