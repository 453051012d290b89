package org.misecue.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.misecue.narration.Clock;
import org.misecue.narration.Moment;

/** A result for people to read: when, what was said, at which step, in which file; over an archive under each episode. */
public final class FindText {

    private static final String BOLD = "\u001B[1m";
    private static final String PLAIN = "\u001B[0m";

    private FindText() {}

    /** @param bold whether the matching words may be shown in bold, as a terminal can; otherwise they are in brackets */
    public static String of(FindResult result, boolean bold) {
        return of(result, bold, hit -> Optional.empty());
    }

    /** @param camera the same moment in another camera's film */
    public static String of(FindResult result, boolean bold, Function<Hit, Optional<Moment>> camera) {
        StringBuilder out = new StringBuilder();
        result.suggestion().ifPresent(nearest -> out.append("Nobody says \u201C")
                .append(printable(result.query()))
                .append("\u201D; the nearest is \u201C")
                .append(printable(nearest))
                .append("\u201D.\n\n"));
        if (result.hits().isEmpty() && result.suggestion().isEmpty()) {
            out.append("Nothing was found for \u201C")
                    .append(printable(result.query()))
                    .append("\u201D.\n");
        }
        if (result.archive()) {
            appendByEpisode(result.hits(), bold, camera, out);
        } else {
            result.hits().forEach(hit -> append(hit, bold, camera.apply(hit), out));
        }
        result.caution().ifPresent(caution -> out.append('\n').append(caution).append('\n'));
        return out.toString();
    }

    /** The episode with the best hit comes first. */
    private static void appendByEpisode(
            List<Hit> hits, boolean bold, Function<Hit, Optional<Moment>> camera, StringBuilder out) {
        Map<String, List<Hit>> episodes = new LinkedHashMap<>();
        hits.forEach(hit -> episodes.computeIfAbsent(hit.episodeName(), name -> new ArrayList<>())
                .add(hit));
        String between = "";
        for (Map.Entry<String, List<Hit>> episode : episodes.entrySet()) {
            out.append(between).append(printable(episode.getKey())).append('\n');
            episode.getValue().forEach(hit -> append(hit, bold, camera.apply(hit), out));
            between = "\n";
        }
    }

    private static void append(Hit hit, boolean bold, Optional<Moment> camera, StringBuilder out) {
        out.append(String.format("%8s  ", Clock.hms(hit.at())));
        appendQuote(hit, bold, out);
        out.append("\n          ");
        switch (hit.kind()) {
            case INGREDIENT -> out.append("listed · ");
            case SHOT -> out.append("to film · ");
            case SHOWN -> out.append("shown · ");
            default -> {}
        }
        if (hit.step() > 0) {
            out.append("step ").append(hit.step()).append(" · ");
        }
        hit.speaker().ifPresent(speaker -> out.append(printable(speaker)).append(" · "));
        out.append(printable(hit.source()));
        camera.ifPresent(there -> out.append(" · ")
                .append(printable(there.source()))
                .append(" at ")
                .append(Clock.hms(there.at())));
        out.append('\n');
    }

    private static void appendQuote(Hit hit, boolean bold, StringBuilder out) {
        int from = 0;
        for (Hit.Mark mark : hit.marks()) {
            if (mark.from() >= from) {
                out.append(printable(hit.quote().substring(from, mark.from())));
                out.append(bold ? BOLD : "[");
                out.append(printable(hit.quote().substring(mark.from(), mark.to())));
                out.append(bold ? PLAIN : "]");
                from = mark.to();
            }
        }
        out.append(printable(hit.quote().substring(from)));
    }

    /** Nothing in a file may command the terminal. */
    private static String printable(String text) {
        return text.codePoints().noneMatch(Character::isISOControl) ? text : text.replaceAll("\\p{Cntrl}", "\uFFFD");
    }
}
