package org.misecue.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.misecue.episode.OutFolder;
import org.misecue.narration.Moment;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.search.FindJson;
import org.misecue.search.FindResult;
import org.misecue.search.FindText;
import org.misecue.search.Hit;
import org.misecue.search.MomentIndex;
import org.misecue.worktop.ArchiveShelf;
import org.misecue.worktop.Index;
import org.misecue.worktop.Moments;
import org.misecue.worktop.OtherCamera;
import org.misecue.worktop.OtherCamera.Seen;
import org.misecue.worktop.Worktop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** From a word to the moment at which it is said. */
@Command(
        name = "find",
        description = {
            "Find the moments at which something is said.",
            "Words are found in all their forms and by words that sound alike; \"words in this order\", step:3, from:12:30,"
                    + " to:14:00, speaker:Mo, ingredient:butter and allergen:sesame narrow it down.",
            "Amounts are found by their value, however they were said: 125 g sugar, ½ tsp, 200 °C, 20 minutes."
        })
final class FindCommand extends MisecueCommand {

    /** The shell keeps the quotes of speaker:"Ada Fenn" for itself. */
    private static final Pattern NARROWING = Pattern.compile("(?i)((?:speaker|ingredient|allergen):)([^\"]*\\s[^\"]*)");

    @Parameters(arity = "1..*", paramLabel = "WORDS", description = "What to look for.")
    private List<String> words = List.of();

    @Nullable
    @Option(
            names = {"-e", "--episode"},
            paramLabel = "EPISODE",
            description = "The episode's folder; this folder where none is named.")
    private Path folder;

    @Nullable
    @Option(
            names = "--in",
            paramLabel = "ARCHIVE",
            description = "Instead of one episode: a folder of episodes, all of which are searched.")
    private Path archive;

    @Option(
            names = {"-n", "--hits"},
            paramLabel = "NUMBER",
            defaultValue = "10",
            description = "How many moments at most: ${DEFAULT-VALUE}.")
    private int most = 10;

    @Option(names = "--still", description = "With footage: a picture of each moment into out/stills.")
    private boolean still;

    @Option(names = "--clip", description = "With footage: each moment cut out into out/clips.")
    private boolean clip;

    @Nullable
    @Option(
            names = "--camera",
            paramLabel = "FILM",
            description = {
                "The same moments in another film that ran meanwhile: its name, or how the names of a camera's films"
                        + " begin. Stills and clips are taken from it."
            })
    private String camera;

    @Mixin
    private final ResultOptions to = new ResultOptions();

    FindCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        String query = words.stream().map(FindCommand::phrase).collect(Collectors.joining(" "));
        if (archive == null) {
            findInEpisode(folder == null ? Path.of(".") : folder, query);
        } else if (folder != null || still || clip || camera != null) {
            throw new BadInput(
                    Place.of("--in"),
                    "a whole archive is searched without -e, --still, --clip and --camera; leave them out, or name one episode with -e.");
        } else {
            findInArchive(archive, query);
        }
        return ExitCode.OK;
    }

    private void findInEpisode(Path episode, String query) {
        Worktop worktop = locate(episode);
        Index index = new Index(worktop);
        if (!index.isFresh()) {
            progress("Making the index");
            worktop.settings(); // what is wrong in them is told before anything new is made of the episode
            index.build();
        }
        FindResult result = MomentIndex.find(worktop.episode().folder(), query, most());
        Map<Hit, Seen> seen = camera == null ? Map.of() : seen(worktop, camera, result.hits());
        hand(result, hit -> Optional.ofNullable(seen.get(hit))
                .map(there -> new Moment(worktop.episode().name(there.film()), there.at())));
        if (camera != null) {
            pieces(worktop, seen);
        } else if (still || clip) {
            pictures(worktop, result.hits());
        }
    }

    /** Where another camera saw what was found. */
    private Map<Hit, Seen> seen(Worktop worktop, String name, List<Hit> hits) {
        OtherCamera other = new OtherCamera(worktop, cameras(worktop), name);
        Map<Hit, Seen> seen = new LinkedHashMap<>();
        for (Hit hit : hits) {
            other.seen(new Moment(hit.source(), hit.at())).ifPresent(there -> seen.put(hit, there));
        }
        tell(other.notes());
        return seen;
    }

    private void findInArchive(Path in, String query) {
        try (ArchiveShelf shelf = Shelves.open(this, in)) {
            tellLines(Shelves.freshen(this, shelf).newNotes());
            hand(shelf.find(query, most()), hit -> Optional.empty());
        }
    }

    private void hand(FindResult result, Function<Hit, Optional<Moment>> elsewhere) {
        boolean bold = stage.colour() && to.out == null;
        hand(to.json ? FindJson.of(result, elsewhere) : FindText.of(result, bold, elsewhere), to);
    }

    private int most() {
        return Math.max(1, Math.min(most, 1000));
    }

    /** What the shell was given in quotes is to be found in this order. */
    private static String phrase(String word) {
        Matcher narrowing = NARROWING.matcher(word.strip());
        if (narrowing.matches()) {
            return narrowing.group(1) + '"' + narrowing.group(2) + '"';
        }
        return word.strip().contains(" ") && !word.contains("\"") ? '"' + word + '"' : word;
    }

    private void pictures(Worktop worktop, List<Hit> hits) {
        Moments moments = new Moments(worktop);
        for (Hit hit : hits) {
            Moment moment = new Moment(hit.source(), hit.at());
            if (worktop.filmOf(hit.source()).isEmpty()) {
                throw worktop.noFilm(hit.source());
            }
            if (still) {
                moments.still(moment)
                        .ifPresent(file -> tellMade(worktop.episode().out().path(file)));
            }
            if (clip) {
                moments.clip(moment, hit.end())
                        .ifPresent(file -> tellMade(worktop.episode().out().path(file)));
            }
        }
    }

    private void pieces(Worktop worktop, Map<Hit, Seen> seen) {
        Moments moments = new Moments(worktop);
        OutFolder out = worktop.episode().out();
        seen.forEach((hit, there) -> {
            if (still) {
                tellMade(out.path(moments.picture(there.film(), there.at())));
            }
            if (clip) {
                Duration end = there.at().plus(hit.end()).minus(hit.at());
                tellMade(out.path(moments.piece(there.film(), there.at(), end)));
            }
        });
    }
}
