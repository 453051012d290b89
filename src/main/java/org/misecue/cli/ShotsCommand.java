package org.misecue.cli;

import java.util.stream.Stream;
import org.misecue.episode.OutFolder;
import org.misecue.page.Pdf;
import org.misecue.shots.CueCards;
import org.misecue.shots.ShotOrder;
import org.misecue.shots.ShotPlan;
import org.misecue.shots.ShotsCsv;
import org.misecue.shots.ShotsJson;
import org.misecue.shots.ShotsPage;
import org.misecue.shots.ShotsText;
import org.misecue.worktop.Worktop;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The shot list. */
@Command(name = "shots", description = "Plan the shots: camera, what must be seen, bowls, sound.")
final class ShotsCommand extends EpisodeCommand {

    @Mixin
    private final ResultOptions to = new ResultOptions();

    @Option(names = "--html", description = "As a page, out/shots.html.")
    private boolean html;

    @Option(names = "--pdf", description = "To print: out/shots.pdf.")
    private boolean pdf;

    @Option(names = "--cards", description = "What to say in very large type, a card for each shot: out/cue-cards.pdf.")
    private boolean cards;

    @Option(names = "--csv", description = "As a table, with commas.")
    private boolean csv;

    @Option(
            names = "--order",
            paramLabel = "ORDER",
            defaultValue = "story",
            converter = OrderReader.class,
            description = "story (the usual) or filming: by set-up, as far as the food allows. Numbers stay the same.")
    private ShotOrder order = ShotOrder.STORY;

    ShotsCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        Worktop worktop = open();
        tell(worktop.recipe().notes());
        ShotPlan shots = worktop.shots();
        boolean pages = html || pdf || cards;
        if (pages) {
            pages(worktop.episode().out(), shots);
        }
        if (to.json) {
            hand(ShotsJson.of(shots, order), to);
        } else if (csv) {
            hand(ShotsCsv.of(shots, order), to);
        } else if (!pages || to.out != null) {
            hand(ShotsText.of(shots, order), to);
        }
        return ExitCode.OK;
    }

    private void pages(OutFolder out, ShotPlan shots) {
        String page = ShotsPage.html(shots, order);
        if (html) {
            made(out, "shots.html", page);
        }
        if (pdf) {
            made(out, "shots.pdf", Pdf.of(page));
        }
        if (cards) {
            made(out, "cue-cards.pdf", Pdf.of(CueCards.html(shots, order)));
        }
    }

    /** In small letters, as it is typed. */
    private static final class OrderReader implements ITypeConverter<ShotOrder> {

        @Override
        public ShotOrder convert(String typed) {
            return Stream.of(ShotOrder.values())
                    .filter(known -> known.name().equalsIgnoreCase(typed))
                    .findFirst()
                    .orElseThrow(
                            () -> new TypeConversionException("“" + typed + "” is no order; use story or filming."));
        }
    }
}
