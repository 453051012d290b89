package org.misecue.worktop;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.misecue.episode.Episode;
import org.misecue.footage.FilmSubtitles;
import org.misecue.footage.SubtitleTrack;
import org.misecue.narration.Narration;
import org.misecue.narration.TimedText;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/**
 * What is said in the films that no narration file belongs to, by the subtitles inside them. Such a narration is called by
 * its film's name.
 *
 * @param narrations each with a note that tells where it is from
 * @param notes on subtitles that cannot be used
 */
record SaidInside(List<Narration> narrations, List<Note> notes) {

    static SaidInside of(FilmClocks clocks, Locale language) {
        List<Narration> narrations = new ArrayList<>();
        List<Note> notes = new ArrayList<>();
        Episode episode = clocks.episode();
        List<Path> told = episode.narration().stream()
                .flatMap(file -> clocks.filmOf(episode.name(file)).stream())
                .toList();
        for (Path film : episode.footage()) {
            if (!told.contains(film)) {
                String name = episode.name(film);
                try {
                    FilmSubtitles found = new KeptSubtitles(episode.state(), film, name).read(language);
                    narration(found, name).ifPresent(narrations::add);
                    unusable(found, name).ifPresent(notes::add);
                } catch (BadInput e) {
                    // Whoever needs the film itself is told what is wrong with it.
                }
            }
        }
        return new SaidInside(List.copyOf(narrations), List.copyOf(notes));
    }

    private static Optional<Narration> narration(FilmSubtitles found, String name) {
        return found.read().flatMap(track -> TimedText.narration(texts(found, track), name)
                .map(narration -> narration.with(new Note(
                        Place.of(name),
                        "what was said is taken from the subtitles inside it, track %d%s; a narration file of its name would come first"
                                .formatted(track.number(), language(track))))));
    }

    private static List<TimedText> texts(FilmSubtitles found, SubtitleTrack track) {
        TimedText.Markup markup =
                track.markup() == SubtitleTrack.Markup.WEBVTT ? TimedText.Markup.WEBVTT : TimedText.Markup.SUBRIP;
        return found.texts().stream()
                .map(one -> new TimedText(one.from(), one.to(), one.text(), markup))
                .toList();
    }

    /** A track that nobody can read; silence about tracks beside one that was read. */
    private static Optional<Note> unusable(FilmSubtitles found, String name) {
        return found.read().isPresent()
                ? Optional.empty()
                : found.tracks().stream()
                        .findFirst()
                        .map(track -> new Note(
                                Place.of(name),
                                "the subtitles inside it, track %d, are pictures or in a form that is not known (%s), and were not read; put a narration file of its name into narration/"
                                        .formatted(track.number(), track.codec())));
    }

    private static String language(SubtitleTrack track) {
        return track.language().isEmpty() ? "" : ", " + words(track.language());
    }

    /** "English" for "eng" or "en-GB"; what nobody knows stays as it is. */
    private static String words(String tag) {
        for (String known : Locale.getISOLanguages()) {
            Locale locale = Locale.forLanguageTag(known);
            if (tag.equals(locale.getISO3Language()) || tag.equals(known) || tag.startsWith(known + "-")) {
                return locale.getDisplayLanguage(Locale.ENGLISH);
            }
        }
        return tag;
    }
}
