package org.misecue.desk.begin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.episode.Episode;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;

/**
 * What an episode is made of.
 *
 * @param items its files
 * @param notes what is wrong with them, and what was left aside
 * @param jobs what each of the three people has for their job
 */
public record Inventory(List<Item> items, List<String> notes, List<Job> jobs) {

    /**
     * @param kind "recipe"
     * @param name in the episode: narration/main.vtt
     * @param size "4.6 KB"
     * @param words what it holds
     */
    public record Item(String kind, String name, String size, String words) {}

    static Inventory of(OpenEpisode open, Descriptions descriptions) {
        List<String> notes = new ArrayList<>();
        boolean reads = reads(open, notes);
        try {
            return of(Episode.locate(open.folder()), reads, notes, descriptions);
        } catch (BadInput e) {
            return new Inventory(List.of(), List.copyOf(notes), Job.all(false, 0, 0));
        }
    }

    private static Inventory of(Episode episode, boolean reads, List<String> notes, Descriptions descriptions) {
        List<Item> items = new ArrayList<>();
        int narrations = 0;
        int films = 0;
        items.add(item("recipe", episode, episode.recipe(), reads ? "" : "not read"));
        for (Path file : episode.narration()) {
            Descriptions.Description holds = descriptions.narration(file, episode.name(file));
            items.add(item("narration", episode, file, holds.readable() ? holds.words() : "not read"));
            notes.addAll(holds.notes());
            narrations += holds.readable() ? 1 : 0;
        }
        for (Path file : episode.footage()) {
            Descriptions.Description holds = descriptions.film(file, episode.name(file));
            items.add(item("film", episode, file, holds.readable() ? holds.words() : "not read"));
            notes.addAll(holds.notes());
            films += holds.readable() ? 1 : 0;
        }
        return new Inventory(List.copyOf(items), notes.stream().distinct().toList(), Job.all(reads, narrations, films));
    }

    /** Whether recipe and settings can be read. */
    private static boolean reads(OpenEpisode open, List<String> notes) {
        try {
            open.worktop().recipe();
            open.notes().stream().map(Note::toString).forEach(notes::add);
            return true;
        } catch (BadInput e) {
            open.notes().stream().map(Note::toString).forEach(notes::add);
            notes.add(String.valueOf(e.getMessage()));
            return false;
        }
    }

    private static Item item(String kind, Episode episode, Path file, String words) {
        return new Item(kind, episode.name(file), size(file).orElse("gone"), words);
    }

    private static Optional<String> size(Path file) {
        try {
            return Optional.of(Sizes.words(Files.size(file)));
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
