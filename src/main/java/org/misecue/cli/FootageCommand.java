package org.misecue.cli;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.misecue.footage.FilmInfo;
import org.misecue.footage.FilmReport;
import org.misecue.footage.FootageJson;
import org.misecue.footage.FootageText;
import org.misecue.footage.Hush;
import org.misecue.footage.SoundCheck;
import org.misecue.footage.Together;
import org.misecue.footage.TrackSound;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.worktop.Cameras;
import org.misecue.worktop.Sheets;
import org.misecue.worktop.Worktop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What came back from the cameras. */
@Command(
        name = "footage",
        description = {
            "Tell what each film holds: length, picture, frame rate, time code, and how loud each sound track is.",
            "Which films ran at the same time is told by their time codes, or else by what both heard.",
            "Loudness and true peak are those of EBU R 128; a silence lasts two seconds or more below −50 dBFS."
        })
final class FootageCommand extends EpisodeCommand {

    private static final BigDecimal LEAST = BigDecimal.valueOf(-70);

    @Nullable
    @Option(
            names = "--target",
            paramLabel = "LUFS",
            description = "The loudness that you want, such as -14 or -23; each track's distance from it is told.")
    private BigDecimal target;

    @Option(
            names = "--sheets",
            description = "Pictures of each step and of the whole film with their time codes: out/sheets/NAME/.")
    private boolean sheets;

    @Mixin
    private final ResultOptions to = new ResultOptions();

    FootageCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        Optional<BigDecimal> wanted = wanted();
        Worktop worktop = open();
        List<Path> films = worktop.episode().footage();
        if (films.isEmpty()) {
            throw new BadInput(Place.of("footage"), "there is no film to look at; put the camera's files there.");
        }
        List<BadInput> faults = new ArrayList<>();
        Cameras cameras = cameras(worktop);
        List<Path> readable = List.copyOf(
                each(films, faults, film -> Optional.of(cameras.info(film))).keySet());
        Map<Path, FilmReport> heard = each(readable, faults, film -> report(worktop, cameras, film, readable));
        if (!heard.isEmpty()) {
            List<FilmReport> reports = List.copyOf(heard.values());
            Together together = cameras.together(List.copyOf(heard.keySet()));
            hand(to.json ? FootageJson.of(reports, wanted, together) : FootageText.of(reports, wanted, together), to);
        }
        if (faults.isEmpty()) {
            return ExitCode.OK;
        }
        BadInput last = faults.remove(faults.size() - 1);
        faults.forEach(fault -> stage.err().println("misecue: " + Faults.ended(String.valueOf(fault.getMessage()))));
        throw last;
    }

    private Optional<BigDecimal> wanted() {
        Optional<BigDecimal> wanted = Optional.ofNullable(target);
        if (wanted.filter(value -> value.signum() > 0 || value.compareTo(LEAST) < 0)
                .isPresent()) {
            throw new BadInput(
                    Place.of("--target"),
                    "loudness is between -70 and 0 LUFS, not " + target + "; say for example -14.");
        }
        return wanted;
    }

    /** What comes of each film; one that cannot be used keeps nobody from looking at the others. */
    private static <T> Map<Path, T> each(List<Path> films, List<BadInput> faults, Function<Path, Optional<T>> work) {
        Map<Path, T> done = new LinkedHashMap<>();
        for (Path film : films) {
            try {
                work.apply(film).ifPresent(result -> done.put(film, result));
            } catch (BadInput e) {
                faults.add(e);
            }
        }
        return done;
    }

    private Optional<FilmReport> report(Worktop worktop, Cameras cameras, Path film, List<Path> among) {
        String name = worktop.episode().name(film);
        FilmInfo info = cameras.info(film);
        Optional<List<Optional<TrackSound>>> sounds =
                SoundCheck.of(film, Hush.USUAL, cameras.wanted(film, among), watch("Listening to " + name));
        if (sheets && info.picture().isPresent()) {
            new Sheets(worktop).make(film, info, watch("Taking pictures of " + name), this::tellMade);
        }
        return sounds.map(heard -> new FilmReport(name, info, heard));
    }
}
