package org.misecue.desk.counter;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.net.URLEncoder;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.Episode;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.shown.LanguageData;
import org.misecue.worktop.OnScreen;
import org.misecue.worktop.OwnPantry;
import org.misecue.worktop.Worktop;

/** One episode on the desk. When a file of it changes, everything is worked out anew by whoever asks next. */
public final class OpenEpisode {

    private final String name;
    private final Path folder;
    private final Optional<Path> home;
    private final Supplier<Optional<LanguageData>> language;
    private final List<Note> notes = new ArrayList<>();
    private volatile String doing = "";
    private @Nullable Laid laid;

    /** The worktop as of certain files. */
    private record Laid(String inputs, Worktop worktop, Simmering<Worktop> film) {}

    OpenEpisode(String name, Path folder, Optional<Path> home, Supplier<Optional<LanguageData>> language) {
        this.name = name;
        this.folder = folder;
        this.home = home;
        this.language = language;
    }

    /** Its folder's name; in an archive of folders of episodes with {@code /} between the parts. */
    public String name() {
        return name;
    }

    public Path folder() {
        return folder;
    }

    /** The address of one of its pages, or of what belongs to it: {@code /e/my-cake/bowls}. */
    public String path(String last) {
        return path(name, last);
    }

    /** The same of one that need not be open. */
    public static String path(String name, String last) {
        return "/e/" + part(name) + "/" + last;
    }

    /**
     * Where one of its films is served.
     *
     * @param file its file name
     */
    public String film(String file) {
        return path("media/" + part(file));
    }

    /** Any words as a part of an address. */
    public static String part(String words) {
        return URLEncoder.encode(words, UTF_8).replace("+", "%20");
    }

    /** The episode's or else the dish's; the folder's name while neither can be read. */
    public String title() {
        try {
            return worktop().title();
        } catch (BadInput e) {
            return name;
        }
    }

    /**
     * All that is worked out from the files as they are now. What needs the films' pictures is slow the first time: ask
     * {@link #filmRead} before.
     *
     * @throws BadInput where a file is wrong
     */
    public Worktop worktop() {
        return laid().worktop;
    }

    /**
     * The same once the films' pictures are read and everything said is compared; empty while that lasts longer than a page
     * can wait.
     *
     * @throws BadInput where a file is wrong
     */
    public Optional<Worktop> filmRead() {
        return laid().film.within(Duration.ofMillis(700));
    }

    /**
     * The same for somebody who is about to change something.
     *
     * @throws Refusal while that is still being worked out
     */
    public Worktop ready() {
        return filmRead()
                .orElseThrow(
                        () -> new Refusal(
                                409,
                                "A file has changed and is being worked out anew, so nothing was taken down; wait a moment and look again."));
    }

    private synchronized Laid laid() {
        String inputs = inputs();
        Laid now = laid;
        if (now == null || !now.inputs.equals(inputs)) {
            now = lay(inputs);
            laid = now;
        }
        return now;
    }

    private Laid lay(String inputs) {
        notes.clear();
        Episode episode = Episode.open(folder);
        tell(episode.notes());
        OwnPantry own = new OwnPantry(home, episode.folder());
        Worktop worktop = new Worktop(
                episode, own, own::read, top -> new OnScreen(top, language.get(), this::say).picture(this::tell));
        return new Laid(inputs, worktop, new Simmering<>(() -> {
            try {
                worktop.docket();
                return worktop;
            } finally {
                doing = "";
            }
        }));
    }

    private void say(String now) {
        doing = now;
    }

    /** What is being done at the moment, empty when nothing is: "Reading what footage/main.mp4 shows, at 0:03:00". */
    public String doing() {
        return doing;
    }

    private void tell(List<Note> more) {
        synchronized (notes) {
            notes.addAll(more);
        }
    }

    /** What was left aside or could not be read, besides what the results say themselves. */
    public List<Note> notes() {
        synchronized (notes) {
            return List.copyOf(notes);
        }
    }

    /** Changes with the files that the episode is made of. */
    public String inputs() {
        Stamp stamp = new Stamp().with(folder.resolve("narration")).with(folder.resolve("footage"));
        Stream.of("shot-templates", "publish-templates").map(folder::resolve).forEach(stamp::with);
        stamp.with(folder.resolve(".misecue/corrections.yaml"));
        files(folder).forEach(stamp::with);
        home.map(path -> path.resolve(".misecue")).ifPresent(own -> {
            stamp.with(own.resolve("pantry.yaml"));
            stamp.with(own.resolve("publish-templates"));
        });
        return stamp.signs();
    }

    /** Changes with ticks, decisions, and what else people did. */
    public String state() {
        Path state = folder.resolve(".misecue");
        Stamp stamp = new Stamp();
        Stream.of(
                        "ticks.yaml",
                        "timers.yaml",
                        "decisions.yaml",
                        "published.yaml",
                        "day.json",
                        "done.yaml",
                        "corrections.yaml")
                .map(state::resolve)
                .forEach(stamp::with);
        return stamp.signs();
    }

    private static List<Path> files(Path folder) {
        try (Stream<Path> files = java.nio.file.Files.list(folder)) {
            return files.filter(java.nio.file.Files::isRegularFile)
                    .filter(file -> !String.valueOf(file.getFileName()).startsWith("."))
                    .sorted()
                    .toList();
        } catch (java.io.IOException e) {
            return List.of();
        }
    }
}
