package org.misecue.episode;

/** Writes texts so that YAML reads them back as they are. */
final class YamlText {

    private YamlText() {}

    /** In double quotes, in one line. */
    static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.codePoints().forEach(point -> {
            switch (point) {
                case '\\' -> out.append("\\\\");
                case '"' -> out.append("\\\"");
                case '\n' -> out.append("\\n");
                case '\t' -> out.append("\\t");
                default -> {
                    if (isUnprintable(point)) {
                        out.append(point > 0xFFFF ? "\\U%08x".formatted(point) : "\\u%04x".formatted(point));
                    } else {
                        out.appendCodePoint(point);
                    }
                }
            }
        });
        return out.append('"').toString();
    }

    /** What YAML does not take as it is, and what could turn a line round for whoever reads the file. */
    private static boolean isUnprintable(int point) {
        int type = Character.getType(point);
        return type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR
                || type == Character.SURROGATE
                || type == Character.PRIVATE_USE
                || type == Character.UNASSIGNED;
    }
}
