package org.misecue.cli;

import java.util.List;
import org.misecue.edit.CaptionFile;
import org.misecue.edit.CaptionRules;
import org.misecue.edit.Captioner;
import org.misecue.edit.Figures;
import org.misecue.episode.FileKind;
import org.misecue.episode.OutFolder;
import org.misecue.narration.Narration;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.worktop.ResultNames;
import org.misecue.worktop.Worktop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Captions of what is said. */
@Command(
        name = "captions",
        description = {
            "Make captions of each narration: out/captions/NAME.vtt and NAME.srt; of several of one film, under its name.",
            "Two lines of 42 signs at most, one to seven seconds, 20 signs a second."
        })
final class CaptionsCommand extends EpisodeCommand {

    @Option(
            names = "--figures",
            description = "Show amounts that are said as they are written as figures: “175 g”. Slips stay in words.")
    private boolean figures;

    CaptionsCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        Worktop worktop = open();
        if (worktop.narrations().isEmpty()) {
            throw new BadInput(
                    Place.of("narration"),
                    "there is no narration to make captions of; put a " + FileKind.NARRATIONS + " file there.");
        }
        tell(worktop.narrationNotes());
        Figures shown = figures ? Figures.of(worktop.comparison()) : Figures.none();
        OutFolder out = worktop.episode().out();
        ResultNames names = new ResultNames(worktop.narrationsByClock().stream()
                .map(ofOne -> file(worktop, ofOne))
                .toList());
        for (List<Narration> ofOne : worktop.narrationsByClock()) {
            Captioner.Captions captions = Captioner.of(ofOne, shown, CaptionRules.USUAL);
            String name = "captions/" + names.of(file(worktop, ofOne));
            made(out, name + ".vtt", CaptionFile.webVtt(captions.captions()));
            made(out, name + ".srt", CaptionFile.subRip(captions.captions()));
            tell(captions.notes());
        }
        return ExitCode.OK;
    }

    /** The narration; the film where several are joined. */
    private static String file(Worktop worktop, List<Narration> ofOne) {
        String first = ofOne.get(0).source();
        return ofOne.size() == 1
                ? first
                : worktop.filmOf(first).map(worktop.episode()::name).orElse(first);
    }
}
