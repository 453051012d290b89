package org.misecue.footage;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The subtitle tracks of a film, and what stands in one of them.
 *
 * @param tracks all of them
 * @param read the one that was read; empty where none is text
 * @param texts of that one
 */
public record FilmSubtitles(List<SubtitleTrack> tracks, Optional<SubtitleTrack> read, List<Subtitle> texts) {

    /**
     * Reads the first track of text in a language, or else the first of text.
     *
     * @throws org.misecue.notice.BadInput if the film cannot be read
     */
    public static FilmSubtitles of(Path film, Locale language) {
        List<SubtitleTrack> tracks = Subtitles.tracks(film);
        Optional<SubtitleTrack> chosen = Stream.concat(
                        tracks.stream().filter(track -> isIn(language, track.language())), tracks.stream())
                .filter(SubtitleTrack::isText)
                .findFirst();
        return new FilmSubtitles(
                tracks, chosen, chosen.map(track -> Subtitles.read(film, track)).orElse(List.of()));
    }

    /** Films write languages as ISO 639-2 or as BCP 47 tags: "eng", "en-GB". */
    private static boolean isIn(Locale language, String tag) {
        try {
            return Locale.forLanguageTag(tag).getISO3Language().equals(language.getISO3Language());
        } catch (MissingResourceException e) {
            return tag.equals(language.getLanguage());
        }
    }
}
