package org.misecue.episode;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.narration.Clock;
import org.misecue.narration.Mend;
import org.misecue.notice.BadInput;

/**
 * Words that were heard otherwise than a recogniser wrote them, kept in {@code .misecue/corrections.yaml}: a list that people
 * can read and mend. They are put in whenever the narration is read; its file is never changed.
 */
public final class Corrections {

    private static final String FILE = "corrections.yaml";
    private static final String HEAD =
            "# What was heard where the recogniser wrote something else. Kept by misecue decide.\n";
    private static final List<String> KEYS = List.of("narration", "at", "was", "heard", "by", "when");
    private static final String EXAMPLE =
            "- {narration: narration/main.vtt, at: \"3:20.5\", was: \"two hundred grams\","
                    + " heard: \"one hundred grams\", by: Nell, when: 2026-05-04 10:00}";

    private final StateFile file;

    public Corrections(Episode episode) {
        this.file = new StateFile(episode, FILE);
    }

    /**
     * In the order in which they were first made.
     *
     * @throws BadInput with its line where the file is not such a list
     */
    public List<Correction> read() {
        return file.entries("corrections such as", EXAMPLE, KEYS).stream()
                .map(Corrections::correction)
                .toList();
    }

    /** Puts one in the place of an earlier one about the same words, or of one whose words it corrects once more. */
    public List<Correction> put(Correction correction) {
        return file.change(this::read, before -> with(before, correction), Corrections::text);
    }

    private static List<Correction> with(List<Correction> before, Correction correction) {
        Optional<Correction> earlier =
                before.stream().filter(correction::corrects).findFirst();
        Correction whole = earlier.map(correction::behind).orElse(correction);
        List<Correction> all = new ArrayList<>(before);
        earlier.ifPresent(all::remove);
        all.removeIf(whole::isAboutSame);
        if (whole.mend().changesAnything()) {
            all.add(whole);
        }
        return List.copyOf(all);
    }

    /** Takes one back; one that is not there is no fault. */
    public List<Correction> takeBack(Correction correction) {
        return file.change(
                this::read,
                before -> before.stream()
                        .filter(one -> !one.isAboutSame(correction))
                        .toList(),
                Corrections::text);
    }

    private static Correction correction(StrictMap map) {
        String example = "was: \"two hundred grams\"";
        String was = map.text("was", example)
                .filter(text -> !text.isEmpty())
                .orElseThrow(() -> map.wrong("was", "the words as the recogniser wrote them", example));
        String narration = map.text("narration", "narration: narration/main.vtt")
                .filter(text -> !text.isEmpty())
                .orElseThrow(() -> map.wrong("narration", "a file", "narration: narration/main.vtt"));
        Duration at = map.text("at", "at: \"3:20.5\"")
                .flatMap(Clock::parse)
                .orElseThrow(() -> map.wrong("at", "a time on the narration's clock", "at: \"3:20.5\""));
        Mend mend = new Mend(
                at, was, map.text("heard", "heard: \"one hundred grams\"").orElse(""));
        return new Correction(narration, mend, map.text("by", "by: Nell").orElse(""), Decisions.when(map));
    }

    private static String text(List<Correction> corrections) {
        StringBuilder out = new StringBuilder(HEAD);
        for (Correction one : corrections) {
            out.append("- narration: ").append(YamlText.quoted(one.narration())).append('\n');
            out.append("  at: ").append(YamlText.quoted(exact(one.mend().at()))).append('\n');
            out.append("  was: ").append(YamlText.quoted(one.mend().was())).append('\n');
            out.append("  heard: ").append(YamlText.quoted(one.mend().heard())).append('\n');
            out.append("  by: ").append(YamlText.quoted(one.who())).append('\n');
            out.append("  when: ").append(Decisions.minute(one.when())).append('\n');
        }
        return out.toString();
    }

    /** "3:20.5": the clock with as much of the second as there is. */
    public static String exact(Duration at) {
        String fraction =
                BigDecimal.valueOf(at.toNanosPart(), 9).stripTrailingZeros().toPlainString();
        return Clock.hms(at) + (at.toNanosPart() == 0 ? "" : fraction.substring(1));
    }
}
