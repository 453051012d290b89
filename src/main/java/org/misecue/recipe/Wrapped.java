package org.misecue.recipe;

/** Text in lines that fit a terminal, broken between words. */
final class Wrapped {

    private static final int WIDTH = 100;

    private Wrapped() {}

    /** Appends the words behind {@code first}, further lines behind {@code indent}, with a line break at the end. */
    static void append(StringBuilder text, String first, String indent, String words) {
        StringBuilder line = new StringBuilder(first);
        boolean empty = true;
        for (String word : words.strip().split("\\s+", -1)) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                text.append(line).append('\n');
                line = new StringBuilder(indent);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        text.append(line).append('\n');
    }
}
