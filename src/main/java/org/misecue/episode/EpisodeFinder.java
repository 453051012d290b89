package org.misecue.episode;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/** Finds what belongs to an episode by where it lies and how its name ends; reads nothing but the settings. */
final class EpisodeFinder {

    private static final String PUT_A_RECIPE =
            "put a recipe in it, such as recipe.md, or make an episode with “misecue new RECIPE”.";

    private final Path folder;
    private final String shown;
    private final List<Note> notes = new ArrayList<>();

    EpisodeFinder(Path folder) {
        this.folder = folder.normalize();
        this.shown = folder.toString().isEmpty() ? "." : folder.toString();
    }

    Episode find() {
        if (!Files.exists(folder)) {
            throw new BadInput(Place.of(shown), "there is no such folder; check the name.");
        }
        if (!Files.isDirectory(folder)) {
            throw new BadInput(Place.of(shown), "this is a file, and an episode is a folder; name the folder.");
        }
        Path recipe = recipe();
        return new Episode(
                folder,
                recipe,
                files(FileKind.NARRATION, "a narration (" + FileKind.NARRATIONS + ")"),
                files(FileKind.FILM, "a film (.mp4, .mov, .mkv and the like)"),
                List.copyOf(notes));
    }

    /** Whether nobody could take the folder for anything else: it has a document that is named recipe, or a narration. */
    static boolean isSurely(Path folder) {
        List<Path> files = files(folder);
        return files.stream().anyMatch(file -> isNamedRecipe(file) && isDocument(file))
                || files.stream().anyMatch(EpisodeFinder::isDocument) && Files.isDirectory(folder.resolve("narration"));
    }

    static boolean hasDocument(Path folder) {
        return files(folder).stream().anyMatch(EpisodeFinder::isDocument);
    }

    /** What lies in a folder, without hidden files, in the order of the names; nothing where it cannot be opened. */
    static List<Path> files(Path folder) {
        try {
            return listed(folder, folder.toString());
        } catch (BadInput e) {
            return List.of();
        }
    }

    private static boolean isDocument(Path file) {
        return FileKind.RECIPE.mayBe(name(file)) && Files.isRegularFile(file);
    }

    private static boolean isNamedRecipe(Path file) {
        return stem(file).equals("recipe");
    }

    private Path recipe() {
        List<Path> files = listed(folder, shown);
        if (files.isEmpty()) {
            throw new BadInput(Place.of(shown), "the folder is empty; " + PUT_A_RECIPE);
        }
        List<Path> documents = files.stream().filter(EpisodeFinder::isDocument).toList();
        List<Path> named =
                documents.stream().filter(EpisodeFinder::isNamedRecipe).toList();
        List<Path> candidates = named.isEmpty() ? documents : named;
        if (candidates.isEmpty()) {
            throw new BadInput(Place.of(shown), "there is no recipe in this folder; " + PUT_A_RECIPE);
        }
        if (candidates.size() > 1) {
            throw new BadInput(
                    Place.of(shown),
                    "an episode has one recipe, and here are " + names(candidates) + "; "
                            + (named.isEmpty()
                                    ? "name the right one recipe." + FileKind.ending(name(candidates.get(0)))
                                    : "keep one")
                            + ".");
        }
        return candidates.get(0);
    }

    private static String names(List<Path> files) {
        List<String> names =
                files.stream().map(file -> String.valueOf(file.getFileName())).toList();
        return String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }

    /** The files of one sub-folder in the order of their names; what does not belong there is noted. */
    private List<Path> files(FileKind kind, String expected) {
        String name = kind.folder();
        Path sub = folder.resolve(name);
        if (!Files.isDirectory(sub)) {
            return List.of();
        }
        List<Path> listed = listed(sub, name);
        listed.stream()
                .filter(Files::isDirectory)
                .map(file -> new Note(
                        Place.of(name + "/" + file.getFileName()),
                        "folders in " + name + "/ are not looked into; move what is in this one up into " + name
                                + "/."))
                .forEach(notes::add);
        List<Path> regular = listed.stream().filter(Files::isRegularFile).toList();
        regular.stream()
                .filter(file -> !kind.mayBe(name(file)))
                .map(file -> new Note(
                        Place.of(name + "/" + file.getFileName()), "this is not " + expected + "; it was left aside."))
                .forEach(notes::add);
        return regular.stream().filter(file -> kind.mayBe(name(file))).toList();
    }

    /** Without hidden files, in the order of their names. */
    private static List<Path> listed(Path folder, String shown) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> !String.valueOf(file.getFileName()).startsWith("."))
                    .sorted(Comparator.comparing(file -> String.valueOf(file.getFileName())))
                    .collect(Collectors.toList());
        } catch (IOException e) {
            throw new BadInput(Place.of(shown), "the folder cannot be opened; check that you may read it.", e);
        }
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    private static String stem(Path file) {
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        return (dot < 0 ? name : name.substring(0, dot)).toLowerCase(Locale.ROOT);
    }
}
