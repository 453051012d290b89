package org.misecue.shown;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A word of a line that is being read.
 *
 * @param box in the part's pixels
 * @param sure from 0 to 100
 */
record Token(Box box, String text, int sure) {

    /** Glued together, as sure as the less sure. */
    Token with(Token next) {
        return new Token(box.with(next.box), text + next.text, Math.min(sure, next.sure));
    }

    boolean hasFigure() {
        return text.codePoints().anyMatch(Token::isFigure);
    }

    static boolean isFigure(int sign) {
        return Character.isDigit(sign) || Character.getType(sign) == Character.OTHER_NUMBER;
    }

    boolean hasLetterOrFigure() {
        return text.codePoints().anyMatch(Character::isLetterOrDigit) || hasFigure();
    }

    static String text(List<Token> tokens) {
        return tokens.stream()
                .sorted(Comparator.comparingInt(token -> token.box().left()))
                .map(Token::text)
                .collect(Collectors.joining(" "));
    }

    /** How sure the words are together, each by its length. */
    static int sure(List<Token> tokens) {
        int signs = tokens.stream().mapToInt(token -> token.text().length()).sum();
        int sum = tokens.stream()
                .mapToInt(token -> token.sure() * token.text().length())
                .sum();
        return signs == 0 ? 0 : sum / signs;
    }
}
