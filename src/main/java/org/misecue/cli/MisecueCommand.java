package org.misecue.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.misecue.compare.Picture;
import org.misecue.episode.Episode;
import org.misecue.episode.OutFolder;
import org.misecue.episode.WholeFile;
import org.misecue.footage.Lookout;
import org.misecue.narration.Clock;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.pantry.Pantry;
import org.misecue.worktop.Cameras;
import org.misecue.worktop.OnScreen;
import org.misecue.worktop.OwnPantry;
import org.misecue.worktop.Worktop;
import picocli.CommandLine.Mixin;

/** What all commands have in common: a stage to speak on, an episode to open, results to hand over. */
abstract class MisecueCommand implements Callable<Integer> {

    final Stage stage;

    @Mixin
    final CommonOptions common = new CommonOptions();

    private @Nullable Episode opened;

    MisecueCommand(Stage stage) {
        this.stage = stage;
    }

    /** Opens the episode and tells what was left aside. */
    Worktop open(Path folder) {
        Worktop worktop = locate(folder);
        worktop.settings();
        return worktop;
    }

    /** As {@link #open}, but the settings stay unread until they are needed. */
    Worktop locate(Path folder) {
        Episode episode = Episode.locate(stage.resolve(folder));
        opened = episode;
        tell(episode.notes());
        OwnPantry own = own(episode.folder());
        return new Worktop(episode, own, () -> read(own), this::look);
    }

    /** How its films lie to one another; somebody who watches is told which is listened to. */
    Cameras cameras(Worktop worktop) {
        Episode episode = worktop.episode();
        return new Cameras(episode, film -> watch("Listening to " + episode.name(film)));
    }

    /** The same episode with its files read again; what was told once is not told again. */
    Worktop anew(Worktop worktop) {
        Episode episode = Episode.open(worktop.episode().folder());
        OwnPantry own = own(episode.folder());
        return new Worktop(episode, own, own::read, this::look);
    }

    /** What the episode's films show; told are those that cannot be read. */
    private Picture look(Worktop worktop) {
        return new OnScreen(worktop, stage.language().get(), this::progress).picture(this::tell);
    }

    /** The person's own pantry for a recipe in this folder. */
    OwnPantry own(Path folder) {
        return new OwnPantry(stage.home(), folder);
    }

    /** Reads it and tells what it moved or dropped. */
    Pantry read(OwnPantry own) {
        Pantry pantry = own.read();
        tell(pantry.notes());
        return pantry;
    }

    Optional<Episode> opened() {
        return Optional.ofNullable(opened);
    }

    /** Notes go along with a result and never into it. */
    void tell(List<Note> notes) {
        tellLines(notes.stream().map(Note::toString).toList());
    }

    void tellLines(List<String> notes) {
        if (!common.quiet) {
            notes.forEach(note -> stage.err().println("note: " + Faults.ended(note)));
        }
    }

    /** What is being done at the moment, for a person who watches. */
    void progress(String doing) {
        if (stage.terminal() && !common.quiet) {
            stage.err().println(doing + " …");
        }
    }

    /** Tells once in a minute of film how far it is. */
    Lookout watch(String doing) {
        long[] told = {-1};
        return at -> {
            if (at.toMinutes() > told[0]) {
                told[0] = at.toMinutes();
                progress(doing + ", at " + Clock.hms(at));
            }
            return !Thread.currentThread().isInterrupted();
        };
    }

    /** Prints a result, or writes it to the file that {@code --out} names. */
    void hand(String text, ResultOptions to) {
        String whole = text.endsWith("\n") ? text : text + "\n";
        if (to.out == null) {
            stage.out().print(whole);
        } else {
            write(to.out, whole.getBytes(UTF_8));
        }
    }

    /** Writes to a file that the person named, but never over what an episode is made of. */
    void write(Path named, byte[] bytes) {
        Path target = stage.resolve(named).toAbsolutePath().normalize();
        if (opened().filter(episode -> isInput(episode, target)).isPresent()) {
            throw new BadInput(
                    Place.of(named.toString()), "this is a file that the episode is made of; name another with --out.");
        }
        WholeFile.write(target, named.toString(), bytes);
    }

    private static boolean isInput(Episode episode, Path target) {
        Path folder = episode.folder().toAbsolutePath();
        boolean within = target.startsWith(folder.resolve("narration")) || target.startsWith(folder.resolve("footage"));
        return target.equals(episode.recipe().toAbsolutePath())
                || target.equals(folder.resolve("episode.yaml"))
                || target.equals(folder.resolve("pantry.yaml"))
                || within && Files.exists(target);
    }

    /** Writes a result into the episode and says where it lies. */
    void made(OutFolder out, String file, byte[] bytes) {
        tellMade(out.write(file, bytes));
    }

    void made(OutFolder out, String file, String text) {
        tellMade(out.write(file, text));
    }

    void tellMade(Path file) {
        if (!common.quiet) {
            stage.err().println("made " + file);
        }
    }
}
