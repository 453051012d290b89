package org.misecue.desk.begin;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.tika.Tika;
import org.misecue.episode.FileKind;
import org.misecue.narration.NarrationReader;

/**
 * What a file is, told from its name, its length and how it begins: before twenty gigabytes are sent in vain.
 *
 * @param kind empty for what no episode is made of
 * @param sentence what is wrong with it; empty if nothing is
 */
record Look(Optional<FileKind> kind, String sentence) {

    /** How much of its beginning is looked at, in bytes. */
    static final int HEAD = 1 << 16;

    /** @param bytes its length, -1 where nobody says */
    static Look at(String name, byte[] head, long bytes) {
        if (name.isEmpty()) {
            return wrong("This file has no name that can be kept; give it one and add it again.");
        }
        List<FileKind> kinds = name.contains(".") ? FileKind.of(name) : List.of();
        if (kinds.isEmpty()) {
            return wrong(name + ": an episode is made of " + all() + "; this is none of them.");
        }
        if (bytes == 0 || head.length == 0) {
            return wrong(name + ": the file is empty; write it again, or copy it again.");
        }
        FileKind kind = kinds.size() == 1 || !NarrationReader.recognises(head) ? kinds.get(0) : FileKind.NARRATION;
        if (kind == FileKind.FILM && isOther(new Tika().detect(head))) {
            return wrong(name + ": this has the ending of a film, and holds something else; add the film itself.");
        }
        return new Look(Optional.of(kind), "");
    }

    /** @param most that may come, in bytes */
    Look within(String name, long bytes, long most) {
        return kind.filter(any -> bytes > most)
                .map(one -> new Look(kind, tooLarge(name, one, most)))
                .orElse(this);
    }

    static String tooLarge(String name, FileKind kind, long most) {
        return switch (kind) {
            case RECIPE ->
                name + ": a recipe has at most " + Sizes.words(most) + "; keep only the recipe in this file.";
            case NARRATION -> name + ": a narration has at most " + Sizes.words(most) + "; cut it into several files.";
            case FILM ->
                most == 0
                        ? name + ": this disk has no room for films; make some, or move the episode to a larger disk."
                        : name + ": this disk takes films of at most " + Sizes.words(most)
                                + "; make room, or move the episode to a larger disk.";
        };
    }

    /** What films never are; a camera's own container may be known to nobody. */
    private static boolean isOther(String type) {
        return type.startsWith("text/")
                || type.startsWith("image/")
                || List.of("application/pdf", "application/zip", "application/rtf")
                        .contains(type);
    }

    private static Look wrong(String sentence) {
        return new Look(Optional.empty(), sentence);
    }

    private static String all() {
        return List.of(FileKind.values()).stream()
                .map(kind -> words(kind) + " (" + endings(kind) + ")")
                .collect(Collectors.joining(", "));
    }

    /** "one recipe", "films". */
    static String words(FileKind kind) {
        return switch (kind) {
            case RECIPE -> "one recipe";
            case NARRATION -> "narrations";
            case FILM -> "films";
        };
    }

    /** "vtt, srt". */
    static String endings(FileKind kind) {
        return String.join(", ", kind.endings());
    }
}
