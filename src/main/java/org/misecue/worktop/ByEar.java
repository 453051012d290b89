package org.misecue.worktop;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.misecue.episode.Correction;
import org.misecue.episode.Corrections;
import org.misecue.narration.Clock;
import org.misecue.narration.Mend;
import org.misecue.narration.Mender;
import org.misecue.narration.Narration;
import org.misecue.narration.Word;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** Takes down what somebody heard where the recogniser wrote something else. */
public final class ByEar {

    private static final Pattern SAYING = Pattern.compile("(?:(\\S*\\.\\S+)\\s+)?([\\d:.,]+)\\s+([^=]+)=(.*)");
    private static final String EXAMPLE = "“3:20 two hundred = one hundred”";
    private static final Duration NEAR = Duration.ofSeconds(6);

    private final Worktop worktop;
    private final String who;
    private final LocalDateTime when;

    public ByEar(Worktop worktop, String who, LocalDateTime when) {
        this.worktop = worktop;
        this.who = who;
        this.when = when;
    }

    /**
     * @param saying "3:20 two hundred = one hundred"; where there are several narrations, the file's name stands before it
     * @throws BadInput if it is not written so, or those words are not said there
     */
    public void correct(String saying) {
        Matcher parts = SAYING.matcher(saying.strip());
        if (!parts.matches()) {
            throw new BadInput(
                    Place.of("--heard"),
                    "expected a time, the words, and what is heard, such as " + EXAMPLE + ", not “" + saying + "”.");
        }
        Narration narration =
                narration(java.util.Optional.ofNullable(parts.group(1)).orElse(""));
        correct(
                narration.source(),
                new Mend(
                        time("--heard", parts.group(2)),
                        parts.group(3).strip(),
                        parts.group(4).strip()));
    }

    /**
     * @param source the narration's file
     * @throws BadInput if those words are not said there
     */
    public void correct(String source, Mend mend) {
        Narration narration = narration(source);
        if (mend.was().isBlank()
                || !Mender.mended(narration, List.of(mend)).mended().contains(mend)) {
            throw new BadInput(
                    Place.of(source),
                    "“%s” is not said at %s; there it says “%s”."
                            .formatted(mend.was(), Clock.hms(mend.at()), around(narration, mend.at())));
        }
        new Corrections(worktop.episode()).put(new Correction(source, mend, who, when));
    }

    /**
     * As {@link #correct(String, Mend)}, for words that begin a little before or after a moment.
     *
     * @throws BadInput if those words are not said near it
     */
    public void correctNear(String source, Duration moment, String was, String heard) {
        Narration narration = narration(source);
        List<Mend> mends = narration.cues().stream()
                .flatMap(cue -> cue.words().stream())
                .map(Word::at)
                .filter(at -> at.minus(moment).abs().compareTo(NEAR) <= 0)
                .sorted(java.util.Comparator.comparing(at -> at.minus(moment).abs()))
                .map(at -> new Mend(at, was.strip(), heard.strip()))
                .toList();
        Mend meant = mends.stream()
                .filter(mend -> Mender.mended(narration, List.of(mend)).mended().contains(mend))
                .findFirst()
                .orElse(new Mend(moment, was.strip(), heard.strip()));
        correct(source, meant);
    }

    /** @throws BadInput if nothing was corrected at this time */
    public void takeBack(String clock) {
        Duration at = time("--as-written", clock);
        Corrections corrections = new Corrections(worktop.episode());
        List<Correction> near = corrections.read().stream()
                .filter(one -> one.mend().at().minus(at).abs().compareTo(Duration.ofSeconds(1)) <= 0)
                .toList();
        if (near.isEmpty()) {
            throw new BadInput(
                    Place.of("--as-written"),
                    "nothing was corrected at " + clock + "; the times stand in .misecue/corrections.yaml.");
        }
        near.forEach(corrections::takeBack);
    }

    private Narration narration(String source) {
        List<Narration> all = worktop.narrations();
        return all.stream()
                .filter(one -> source.isEmpty()
                        ? all.size() == 1
                        : one.source().equals(source)
                                || Worktop.stem(one.source()).equals(Worktop.stem(source)))
                .findFirst()
                .orElseThrow(() -> new BadInput(
                        Place.of("--heard"),
                        "name the narration first: one of "
                                + all.stream().map(Narration::source).collect(Collectors.joining(", ")) + "."));
    }

    private static Duration time(String option, String clock) {
        return Clock.parse(clock)
                .orElseThrow(
                        () -> new BadInput(Place.of(option), "expected a time such as 3:20, not “" + clock + "”."));
    }

    private static String around(Narration narration, Duration at) {
        return narration.cues().stream()
                .flatMap(cue -> cue.words().stream())
                .filter(word -> word.at().minus(at).abs().compareTo(NEAR) <= 0)
                .map(Word::text)
                .collect(Collectors.joining(" "));
    }
}
