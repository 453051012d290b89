package org.misecue.cli;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.misecue.decide.Chosen;
import org.misecue.decide.Docket;
import org.misecue.decide.DocketJson;
import org.misecue.decide.DocketText;
import org.misecue.decide.FixList;
import org.misecue.decide.PickupList;
import org.misecue.episode.Choice;
import org.misecue.episode.Decision;
import org.misecue.episode.Decisions;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.page.Pdf;
import org.misecue.worktop.ByEar;
import org.misecue.worktop.Release;
import org.misecue.worktop.Worktop;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What the producer decides. */
@Command(
        name = "decide",
        description = {
            "Show what is to be decided, and take decisions. Exits 1 while something that differs is undecided.",
            "WORDS are a few words of what it is about, such as “cake butter”."
        })
final class DecideCommand extends EpisodeCommand {

    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd[' ']['T']H:mm", Locale.ROOT)
            .withResolverStyle(ResolverStyle.STRICT);

    @Mixin
    private final ResultOptions to = new ResultOptions();

    /** What is decided about which matters. */
    static final class Taken {
        @Option(names = "--keep", paramLabel = "WORDS", description = "Keep this as it was filmed.")
        List<String> keep = new ArrayList<>();

        @Option(names = "--fix", paramLabel = "WORDS", description = "Fix the written recipe here.")
        List<String> fix = new ArrayList<>();

        @Option(names = "--pickup", paramLabel = "WORDS", description = "Film this line again.")
        List<String> pickup = new ArrayList<>();

        @Option(names = "--cover", paramLabel = "WORDS", description = "Cover this by right words on screen.")
        List<String> cover = new ArrayList<>();

        @Option(names = "--undo", paramLabel = "WORDS", description = "Take a decision back.")
        List<String> undo = new ArrayList<>();

        private Map<Choice, List<String>> choices() {
            Map<Choice, List<String>> choices = new LinkedHashMap<>();
            choices.put(Choice.KEEP, keep);
            choices.put(Choice.FIX, fix);
            choices.put(Choice.PICKUP, pickup);
            choices.put(Choice.COVER, cover);
            return choices;
        }
    }

    @ArgGroup(exclusive = false, heading = "%nDecisions, each as often as needed:%n")
    private Taken taken = new Taken();

    @Option(
            names = "--by",
            paramLabel = "NAME",
            defaultValue = "${sys:user.name}",
            description = "Who decides; this computer's user where nobody is named.")
    private String by = "";

    @Option(names = "--note", paramLabel = "TEXT", description = "Why.")
    private String note = "";

    @Nullable
    @Option(
            names = "--when",
            paramLabel = "TIME",
            description = "When, such as “2026-05-04 10:00”; now where it is left out.")
    private String when;

    @Option(
            names = "--heard",
            paramLabel = "“TIME WORDS = HEARD”",
            description = {
                "Correct what a recogniser wrote: “3:20 two hundred = one hundred”. Kept in .misecue/corrections.yaml and shown"
                        + " wherever it counts; the narration's file stays as it is."
            })
    private List<String> heard = new ArrayList<>();

    @Option(
            names = "--as-written",
            paramLabel = "TIME",
            description = "Take such a correction back; the words count as they were written.")
    private List<String> asWritten = new ArrayList<>();

    @Option(names = "--pickups", description = "What the presenter films again: the sentences, and where they go.")
    private boolean pickups;

    @Option(names = "--fixes", description = "What the editor changes: the moment, what is there, what it should be.")
    private boolean fixes;

    @Option(names = "--sign-off", description = "The sheet to sign and to file: out/sign-off.pdf.")
    private boolean signOff;

    DecideCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        LocalDateTime now = moment();
        Worktop worktop = corrected(open(), now);
        worktop.comparison(); // tells what is missing
        Docket docket = decided(worktop, now);
        if (signOff) {
            made(
                    worktop.episode().out(),
                    "sign-off.pdf",
                    Pdf.of(new Release(worktop).signOff(now.toLocalDate(), this::progress)));
        }
        tell(worktop.recipe().notes());
        tell(worktop.narrationNotes());
        if (to.json) {
            hand(DocketJson.of(docket), to);
        } else if (pickups || fixes) {
            String lists = (pickups ? PickupList.of(docket) : "")
                    + (pickups && fixes ? "\n" : "")
                    + (fixes ? FixList.of(docket) : "");
            hand(lists, to);
        } else {
            hand(DocketText.of(docket), to);
        }
        return docket.differing().isEmpty() ? ExitCode.OK : ExitCode.DIFFERS;
    }

    /** The worktop after what was heard is put in. */
    private Worktop corrected(Worktop worktop, LocalDateTime now) {
        if (heard.isEmpty() && asWritten.isEmpty()) {
            return worktop;
        }
        ByEar byEar = new ByEar(worktop, by.strip(), now);
        heard.forEach(byEar::correct);
        asWritten.forEach(byEar::takeBack);
        return anew(worktop);
    }

    /** The docket after the decisions of this run are taken and kept. */
    private Docket decided(Worktop worktop, LocalDateTime now) {
        Docket before = worktop.docket();
        Chosen chosen = new Chosen(before);
        List<Decision> decisions = new ArrayList<>();
        taken.choices()
                .forEach((choice, all) -> all.forEach(words -> decisions.add(
                        chosen.decision("--" + choice.code(), choice, words, by.strip(), now, note.strip()))));
        List<String> undone = taken.undo.stream()
                .map(words -> chosen.decided("--undo", words))
                .toList();
        if (decisions.isEmpty() && undone.isEmpty()) {
            return before;
        }
        new Decisions(worktop.episode()).change(decisions, undone);
        return worktop.docket();
    }

    private LocalDateTime moment() {
        if (when == null) {
            return LocalDateTime.now().truncatedTo(ChronoUnit.MINUTES);
        }
        try {
            return LocalDateTime.parse(when, MINUTE);
        } catch (DateTimeParseException e) {
            throw new BadInput(
                    Place.of("--when"), "expected a day and a time such as “2026-05-04 10:00”, not “" + when + "”.", e);
        }
    }
}
