package org.misecue.footage;

/**
 * A subtitle track of a film.
 *
 * @param number of the track in the film, from 1
 * @param codec its short name, such as {@code mov_text}
 * @param language as the film writes it, such as {@code eng}; empty where it does not
 * @param markup how its texts are written
 */
public record SubtitleTrack(int number, String codec, String language, Markup markup) {

    /** How a track's texts are written. */
    public enum Markup {
        /** As in SubRip files: tags and braces that mean nothing here. */
        SUBRIP,
        /** As in the cues of WebVTT files. */
        WEBVTT,
        /** Not as text: pictures of it, or a form that is not known. */
        NONE
    }

    public boolean isText() {
        return markup != Markup.NONE;
    }
}
