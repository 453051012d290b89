package org.misecue.episode;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.misecue.narration.Clock;
import org.misecue.notice.BadInput;
import org.misecue.notice.NearestWord;

/** The block {@code narration:}. */
final class NarrationForm {

    static final List<String> KEYS = List.of("offsets");

    private static final List<String> OFFSET = List.of("film", "begins");
    private static final String EXAMPLE = "part-2.vtt: \"0:12:30\"";

    private NarrationForm() {}

    static List<Offset> offsets(StrictMap map) {
        return map.named("offsets", OFFSET, EXAMPLE).stream()
                .map(NarrationForm::offset)
                .toList();
    }

    private static Offset offset(StrictMap.Named one) {
        StrictMap map = one.map();
        Duration begins = map.text("begins", EXAMPLE)
                .flatMap(Clock::parseSigned)
                .orElseThrow(() -> map.wrong(
                        "begins",
                        "the time in the film at which the narration's 0:00 lies",
                        "\"0:12:30\" or \"-0:00:02.5\""));
        return new Offset(
                inFolder(FileKind.NARRATION, one.name()),
                map.text("film", "film: take-1.mp4")
                        .filter(film -> !film.isEmpty())
                        .map(film -> inFolder(FileKind.FILM, film)),
                begins,
                one.place());
    }

    /** A file may be named with its folder or without. */
    private static String inFolder(FileKind kind, String name) {
        String folder = kind.folder() + "/";
        return name.startsWith(folder) ? name.substring(folder.length()) : name;
    }

    /** @throws BadInput at the first that names a file that is not there */
    static void check(List<Offset> offsets, List<String> narrations, List<String> films) {
        List<String> seen = new ArrayList<>();
        for (Offset offset : offsets) {
            if (seen.contains(offset.narration())) {
                throw new BadInput(
                        offset.at(),
                        "narration: offsets: “" + offset.narration()
                                + "” stands here for the second time; keep one of them.");
            }
            seen.add(offset.narration());
            if (!narrations.contains(offset.narration())) {
                throw missing(offset, offset.narration(), FileKind.NARRATION, narrations);
            }
            offset.film().filter(film -> !films.contains(film)).ifPresent(film -> {
                throw missing(offset, film, FileKind.FILM, films);
            });
        }
    }

    private static BadInput missing(Offset offset, String name, FileKind kind, List<String> there) {
        return new BadInput(
                offset.at(),
                "narration: offsets: there is no “" + name + "” in " + kind.folder() + "/; "
                        + (there.isEmpty() ? "put it there, or take this line out." : NearestWord.remedy(name, there)));
    }
}
