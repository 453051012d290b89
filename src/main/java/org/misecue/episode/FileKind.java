package org.misecue.episode;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What a file can be to an episode, as far as its ending tells. */
public enum FileKind {
    RECIPE("", List.of("md", "markdown", "docx", "odt", "pdf", "html", "htm", "txt", "rtf", "eml")),
    NARRATION("narration", List.of("vtt", "srt", "ttml", "dfxp", "xml", "json", "txt")),
    FILM("footage", List.of("mp4", "mov", "mkv", "m4v", "avi", "webm", "mxf", "mts", "m2ts"));

    /** The narrations that messages name; rarer endings are read too. */
    public static final String NARRATIONS = ".vtt, .srt, .ttml, .xml, .json or .txt";

    private final String folder;
    private final List<String> endings;

    FileKind(String folder, List<String> endings) {
        this.folder = folder;
        this.endings = endings;
    }

    /** Where such files lie in an episode; empty for the episode's folder itself. */
    public String folder() {
        return folder;
    }

    /** In lower case, without the dot. */
    public List<String> endings() {
        return endings;
    }

    /** Whether a file of this name can be one. */
    public boolean mayBe(String name) {
        return endings.contains(ending(name));
    }

    /** What a file of this name can be: none, or more than one, which only its content tells apart. */
    public static List<FileKind> of(String name) {
        return Stream.of(values()).filter(kind -> kind.mayBe(name)).toList();
    }

    /** In lower case; the whole name where it has no dot. */
    static String ending(String name) {
        return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }
}
