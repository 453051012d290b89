package org.misecue.cli;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.misecue.footage.FilmInfo;
import org.misecue.footage.FilmReport;
import org.misecue.footage.Footage;
import org.misecue.footage.FootageJson;
import org.misecue.footage.FootageText;
import org.misecue.footage.Hush;
import org.misecue.footage.Lookout;
import org.misecue.footage.SoundCheck;
import org.misecue.footage.TrackSound;
import org.misecue.narration.Clock;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
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
        List<FilmReport> reports = new ArrayList<>();
        List<BadInput> faults = new ArrayList<>();
        for (Path film : films) {
            try {
                report(worktop, film).ifPresent(reports::add);
            } catch (BadInput e) {
                faults.add(e);
            }
        }
        if (!reports.isEmpty()) {
            hand(to.json ? FootageJson.of(reports, wanted) : FootageText.of(reports, wanted), to);
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

    private Optional<FilmReport> report(Worktop worktop, Path film) {
        String name = worktop.episode().name(film);
        FilmInfo info = Footage.probe(film);
        Optional<List<Optional<TrackSound>>> sounds = SoundCheck.of(film, Hush.USUAL, now("Listening to " + name));
        if (sheets && info.picture().isPresent()) {
            new Sheets(worktop).make(film, info, now("Taking pictures of " + name), this::tellMade);
        }
        return sounds.map(heard -> new FilmReport(name, info, heard));
    }

    /** Tells once in a minute of film how far it is. */
    private Lookout now(String doing) {
        long[] told = {-1};
        return at -> {
            if (at.toMinutes() > told[0]) {
                told[0] = at.toMinutes();
                progress(doing + ", at " + Clock.hms(at));
            }
            return !Thread.currentThread().isInterrupted();
        };
    }
}
