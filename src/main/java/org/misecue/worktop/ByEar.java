package org.misecue.worktop;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.misecue.episode.Correction;
import org.misecue.episode.Corrections;
import org.misecue.narration.Clock;
import org.misecue.narration.Mend;
import org.misecue.narration.Mender;
import org.misecue.narration.Narration;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** Takes down what somebody heard where the recogniser wrote something else. */
public final class ByEar {

    private static final Pattern SAYING = Pattern.compile("(?:(\\S*\\.\\S+)\\s+)?([\\d:.,]+)\\s+([^=]+)=(.*)");
    private static final String EXAMPLE = "“3:20 two hundred = one hundred”";

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
        Narration narration = narration(Optional.ofNullable(parts.group(1)).orElse(""));
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
                            .formatted(
                                    mend.was(),
                                    Clock.hms(mend.at()),
                                    Stretch.around(narration, mend.at()).text()));
        }
        new Corrections(worktop.episode()).put(worktop.onFile(new Correction(narration.source(), mend, who, when)));
    }

    /**
     * @param stretch words as they stood before somebody's eyes
     * @param heard the whole stretch as it is really said
     * @return whether anything was to be corrected
     * @throws BadInput if the words are no longer those
     */
    public boolean correct(Stretch stretch, String heard) {
        Stretch now = Stretch.from(
                narration(stretch.source()), stretch.from(), stretch.words().size());
        if (!now.text().equals(stretch.text())) {
            throw new BadInput(
                    Place.of(stretch.source()),
                    "the words at %s have changed since you saw them; look at them again, and correct them then."
                            .formatted(Clock.hms(stretch.from())));
        }
        Optional<Mend> mend = Mend.between(now.words(), heard);
        mend.ifPresent(one -> correct(stretch.source(), withEarlier(stretch.source(), one, now)));
        return mend.isPresent();
    }

    /** What is corrected once more becomes one correction. */
    private Mend withEarlier(String source, Mend mend, Stretch words) {
        return new Corrections(worktop.episode())
                .read().stream()
                        .filter(one -> one.narration().equals(source))
                        .map(worktop::onFilm)
                        .map(one -> mend.over(one.mend(), words.words()))
                        .filter(whole -> !whole.equals(mend))
                        .findFirst()
                        .orElse(mend);
    }

    /** @throws BadInput if nothing was corrected at this time */
    public void takeBack(String clock) {
        Duration at = time("--as-written", clock);
        Corrections corrections = new Corrections(worktop.episode());
        List<Correction> near = corrections.read().stream()
                .filter(one -> worktop.onFilm(one).mend().at().minus(at).abs().compareTo(Duration.ofSeconds(1)) <= 0)
                .toList();
        if (near.isEmpty()) {
            throw new BadInput(
                    Place.of("--as-written"),
                    "nothing was corrected at " + clock + "; what was corrected stands in .misecue/corrections.yaml.");
        }
        near.forEach(corrections::takeBack);
    }

    /**
     * The words around a moment.
     *
     * @throws BadInput if there is no such narration
     */
    public Stretch around(String source, Duration moment) {
        return Stretch.around(narration(source), moment);
    }

    /** By its name with or without folder, or without its ending where no other is called like it. */
    private Narration narration(String source) {
        List<Narration> all = worktop.narrations();
        List<Narration> named = all.stream()
                .filter(one -> one.source().equals(source) || one.source().endsWith("/" + source))
                .toList();
        List<Narration> meant = named.isEmpty()
                ? all.stream()
                        .filter(one ->
                                source.isEmpty() || Worktop.stem(one.source()).equals(Worktop.stem(source)))
                        .toList()
                : named;
        if (meant.size() != 1) {
            throw new BadInput(
                    Place.of("--heard"),
                    "name the narration first: one of "
                            + all.stream().map(Narration::source).collect(Collectors.joining(", ")) + ".");
        }
        return meant.get(0);
    }

    private static Duration time(String option, String clock) {
        return Clock.parse(clock)
                .orElseThrow(
                        () -> new BadInput(Place.of(option), "expected a time such as 3:20, not “" + clock + "”."));
    }
}
