package org.misecue.desk.begin;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.misecue.episode.FileKind;

/**
 * What may be added, said before anybody tries.
 *
 * @param rows one for each kind of file
 */
public record Limits(List<Row> rows) {

    /**
     * @param what "one recipe"
     * @param endings "vtt, srt"
     * @param most "20 MB"
     */
    public record Row(String what, String endings, String most) {}

    static Limits of(Room room, Path folder) {
        return new Limits(Stream.of(FileKind.values())
                .map(kind -> new Row(Look.words(kind), Look.endings(kind), Sizes.words(room.most(kind, folder))))
                .toList());
    }

    /** For the window in which files are chosen: ".md,.vtt". */
    public String accept() {
        return String.join(
                ",",
                Stream.of(FileKind.values())
                        .flatMap(kind -> kind.endings().stream())
                        .distinct()
                        .map(ending -> "." + ending)
                        .toList());
    }
}
