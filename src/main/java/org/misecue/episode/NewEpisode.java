package org.misecue.episode;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.stream.Stream;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** Makes the folder of a new episode around a recipe file. Nothing that exists is ever written over. */
public final class NewEpisode {

    private static final String SETTINGS = """
            # Every setting may be left out; take the # off a line to use it.
            title: "%s"
            #language: en-GB
            #batch:
            #  times: 2             # or  makes: 24  or  tin: 23 cm round  or  have: 310 g butter
            #takes: 1              # how often each bowl is filled
            #spare: 0              # more sets that stand by for a take that goes wrong
            #first-shot: 2026-05-04 10:00    # jobs are counted back from here
            #made-earlier: [8]     # steps whose result stands ready before the day
            #spares:               # weighed out once more
            #  failures: yes       # one more egg, sugar for a second caramel
            #  hero: yes           # a fresh finish for the beauty shots
            #day:
            #  presenters: 1
            #  cameras: 1
            #  end: 17:30
            #  breaks:
            #    - {from: 12:00, to: 14:00, for: 45 min}
            #  daylight: {from: 10:00, to: 15:30, set-ups: [hero table]}
            #  appointments:
            #    - {at: 11:00, for: 20 min, who: presenter, what: delivery}
            #    - {at: 15:00, shot: 22}
            #  line-up: 2 min      # to frame, focus and slate a shot
            #  set-up: 5 min       # to move camera and lights
            #  shelves: 2          # bakes of one heat in an oven
            #  rings: 4            # of the hob
            #  stand-mixer: yes
            #  after: ["7: 1, 6"]  # step 7 comes after steps 1 and 6
            #kitchen:
            #  ovens: 1
            #  scale: 1 g          # the smallest step that the scale shows
            #  spoons: metric      # or australia, us, us-label, uk; else the language's country
            #  mixer: 4.8 l        # what the mixer's bowl holds
            #publish:
            #  max-length: 5000    # characters in the description
            #  household: us-label # whose cups: or us, metric, uk, australia
            #  first: metric       # or household: which measure stands first
            #  case: capitals      # or bold: how allergens stand out
            #  method: yes         # or no
            #  film: narration/main.vtt    # whose clock the chapters follow
            """;

    private NewEpisode() {}

    /**
     * @param recipe an existing recipe file; it is copied and stays where it is
     * @param folder missing or empty
     * @param shown the folder as the person named it
     * @throws BadInput if the folder has anything in it or cannot be written
     */
    public static void make(Path recipe, String title, Path folder, String shown) {
        try {
            if (Files.exists(folder) && !Files.isDirectory(folder)) {
                throw new BadInput(Place.of(shown), "a file has this name already; choose another for the episode.");
            }
            Files.createDirectories(folder);
            if (hasContents(folder)) {
                throw new BadInput(
                        Place.of(shown), "this folder has something in it already; choose a new or an empty one.");
            }
            Files.copy(recipe, folder.resolve("recipe" + ending(recipe)));
            String settings = SETTINGS.formatted(quoted(title));
            Files.writeString(folder.resolve("episode.yaml"), settings, UTF_8, StandardOpenOption.CREATE_NEW);
            Files.createDirectory(folder.resolve("narration"));
            Files.createDirectory(folder.resolve("footage"));
        } catch (FileAlreadyExistsException e) {
            throw new BadInput(Place.of(shown), "a file is in the way of the new folder; choose another name.", e);
        } catch (IOException e) {
            throw WholeFile.unwritable(shown, e);
        }
    }

    /** A folder name from a title: {@code plum-and-almond-plait}. */
    public static String folderName(String title) {
        String name = title.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        return name.isEmpty() ? "episode" : name;
    }

    private static boolean hasContents(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.findAny().isPresent();
        }
    }

    private static String ending(Path recipe) {
        String name = String.valueOf(recipe.getFileName());
        int dot = name.lastIndexOf('.');
        return dot < 0 ? "" : name.substring(dot).toLowerCase(Locale.ROOT);
    }

    /** Inside double quotes of YAML. */
    private static String quoted(String title) {
        return title.replace("\\", "\\\\").replace("\"", "\\\"").replaceAll("\\p{Cntrl}", " ");
    }
}
