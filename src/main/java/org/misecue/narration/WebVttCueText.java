package org.misecue.narration;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jsoup.parser.Parser;

/**
 * The text of a WebVTT cue without its tags, by the standard's cue text rules. Tags only matter to us where they say when
 * ({@code <00:01.000>}) or who ({@code <v Name>}).
 *
 * @param pieces cut at timestamps
 * @param voices in order, as the file names them
 */
record WebVttCueText(List<Piece> pieces, List<String> voices) {

    /** @param at when the piece begins, where the file says so */
    record Piece(Optional<Duration> at, String text) {}

    static WebVttCueText parse(String raw) {
        List<Piece> pieces = new ArrayList<>();
        List<String> voices = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        Optional<Duration> at = Optional.empty();
        int position = 0;
        while (position < raw.length()) {
            int tag = orEnd(raw, raw.indexOf('<', position));
            text.append(decoded(raw.substring(position, tag)));
            int close = orEnd(raw, raw.indexOf('>', tag));
            String inside = tag < raw.length() ? raw.substring(tag + 1, close) : "";
            Optional<Duration> stamp = WebVttTime.stamp(inside);
            if (stamp.isPresent()) {
                pieces.add(new Piece(at, text.toString()));
                text.setLength(0);
                at = stamp;
            }
            voice(inside).ifPresent(voices::add);
            position = close + 1;
        }
        pieces.add(new Piece(at, text.toString()));
        return new WebVttCueText(pieces, voices);
    }

    String plainText() {
        return String.join("", pieces.stream().map(Piece::text).toList());
    }

    /** A timestamp inside a word can't give that word a time. */
    List<SpokenWord> words() {
        List<SpokenWord> words = new ArrayList<>();
        for (Piece piece : pieces) {
            words.addAll(SpokenWord.startingAt(piece.at(), piece.text()));
        }
        return words;
    }

    /** Nobody where several speak in one cue: the words are not divided between them. */
    Optional<String> speaker() {
        List<String> different = voices.stream().distinct().toList();
        return different.size() == 1 ? Optional.of(different.get(0)) : Optional.empty();
    }

    /** The annotation of a {@code v} tag, which may have classes: {@code v.loud Ann}. */
    private static Optional<String> voice(String inside) {
        int name = 0;
        while (name < inside.length() && ". \t\n\f".indexOf(inside.charAt(name)) < 0) {
            name++;
        }
        if (!inside.substring(0, name).equals("v")) {
            return Optional.empty();
        }
        int classes = name;
        while (classes < inside.length() && " \t\n\f".indexOf(inside.charAt(classes)) < 0) {
            classes++;
        }
        String annotation = decoded(inside.substring(classes)).strip().replaceAll("[ \\t\\n\\f]+", " ");
        return Optional.of(annotation).filter(voice -> !voice.isEmpty());
    }

    private static String decoded(String text) {
        return text.indexOf('&') < 0 ? text : Parser.unescapeEntities(text, false);
    }

    private static int orEnd(String text, int index) {
        return index < 0 ? text.length() : index;
    }
}
