package org.misecue.publish;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.misecue.align.Alignment;
import org.misecue.align.StepSpan;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Step;

/**
 * The chapter list of a film, by the rules of the large hosts (news report of the rule, 2020): the first at 0:00, at
 * least three, rising, each at least ten seconds long. Where the film does not allow that there are none, and a note
 * says why.
 *
 * @param chapters in time order; empty where the rules cannot be kept
 * @param notes why there are none, and which steps have no chapter
 */
public record Chapters(List<Chapter> chapters, List<Note> notes) {

    static final int FEWEST = 3;
    static final Duration SHORTEST = Duration.ofSeconds(10);
    private static final String OPENING = "Introduction";

    static Chapters none() {
        return new Chapters(List.of(), List.of());
    }

    /**
     * @param film the narrations on the film's clock; where none is named, the only one there is
     */
    public static Chapters of(Recipe recipe, Alignment alignment, List<String> film) {
        List<String> sources =
                alignment.spans().stream().map(StepSpan::source).distinct().toList();
        if (film.isEmpty() && sources.size() > 1) {
            return without(
                    "narration",
                    "chapters need to know which narration is the film's, and there are " + sources.size() + ": "
                            + String.join(", ", sources) + "; name one");
        }
        List<String> here = film.isEmpty() ? sources : film;
        String place = here.isEmpty() ? "narration" : here.get(0);
        List<StepSpan> spans = of(alignment, here);
        if (spans.isEmpty()) {
            return without(place, "no step of the method was recognised, so there are no chapters");
        }
        Duration end =
                spans.stream().map(StepSpan::end).max(Comparator.naturalOrder()).orElse(Duration.ZERO);
        List<Chapter> chapters = longEnough(fromTheStart(starts(recipe, spans)), end);
        if (chapters.size() < FEWEST) {
            return without(
                    place,
                    "only %d chapter%s of ten seconds could be made; hosts want %d, so there are none"
                            .formatted(chapters.size(), chapters.size() == 1 ? "" : "s", FEWEST));
        }
        return new Chapters(chapters, missing(recipe, spans));
    }

    /**
     * Where each step that is on in a film begins, however short it is; for the edit, which knows no rules of hosts.
     *
     * @param film the narrations on its clock
     */
    public static List<Chapter> steps(Recipe recipe, Alignment alignment, List<String> film) {
        return starts(recipe, of(alignment, film));
    }

    /** In time order; a step that goes on from one narration into the next is one span. */
    private static List<StepSpan> of(Alignment alignment, List<String> sources) {
        List<StepSpan> joined = new ArrayList<>();
        for (StepSpan span : alignment.spans().stream()
                .filter(one -> sources.contains(one.source()))
                .sorted(Comparator.comparing(StepSpan::start))
                .toList()) {
            StepSpan last = joined.isEmpty() ? span : joined.get(joined.size() - 1);
            if (last.step() == span.step() && !last.source().equals(span.source())) {
                Duration end = last.end().compareTo(span.end()) > 0 ? last.end() : span.end();
                joined.set(joined.size() - 1, new StepSpan(span.step(), span.source(), last.start(), end));
            } else {
                joined.add(span);
            }
        }
        return joined;
    }

    /** One chapter for each step that is on in the film, in the order of the film. */
    private static List<Chapter> starts(Recipe recipe, List<StepSpan> spans) {
        List<Chapter> starts = new ArrayList<>();
        for (Step step : recipe.steps()) {
            StepSpan.first(spans.stream()
                            .filter(span -> span.step() == step.number())
                            .toList())
                    .ifPresent(
                            span -> starts.add(new Chapter(wholeSeconds(span.start()), ChapterTitle.of(step.text()))));
        }
        starts.sort(Comparator.comparing(Chapter::start));
        return starts;
    }

    /** An opening chapter before the first step, or the first step from 0:00 where it starts within ten seconds. */
    private static List<Chapter> fromTheStart(List<Chapter> starts) {
        List<Chapter> all = new ArrayList<>(starts);
        if (all.isEmpty()) {
            return all;
        }
        if (all.get(0).start().compareTo(SHORTEST) >= 0) {
            all.add(0, new Chapter(Duration.ZERO, OPENING));
        } else {
            all.set(0, new Chapter(Duration.ZERO, all.get(0).title()));
        }
        return all;
    }

    /** Steps that follow within ten seconds share a chapter; so does a last one shorter than that. */
    private static List<Chapter> longEnough(List<Chapter> starts, Duration end) {
        List<Chapter> kept = new ArrayList<>();
        for (Chapter next : starts) {
            Chapter last = kept.isEmpty() ? next : kept.get(kept.size() - 1);
            boolean room = next.start().minus(last.start()).compareTo(SHORTEST) >= 0
                    && end.minus(next.start()).compareTo(SHORTEST) >= 0;
            if (kept.isEmpty() || room) {
                kept.add(next);
            } else {
                kept.set(kept.size() - 1, new Chapter(last.start(), joined(last.title(), next.title())));
            }
        }
        return kept;
    }

    private static String joined(String one, String other) {
        String both = one + "; " + other.substring(0, 1).toLowerCase(java.util.Locale.UK) + other.substring(1);
        return both.length() <= 2 * ChapterTitle.LONGEST ? both : one;
    }

    private static List<Note> missing(Recipe recipe, List<StepSpan> spans) {
        return recipe.steps().stream()
                .filter(step -> spans.stream().noneMatch(span -> span.step() == step.number()))
                .map(step -> new Note(
                        Place.of(recipe.source(), step.line()),
                        "step %d was not recognised in the film and has no chapter".formatted(step.number())))
                .toList();
    }

    private static Chapters without(String place, String why) {
        return new Chapters(List.of(), List.of(new Note(Place.of(place), why)));
    }

    private static Duration wholeSeconds(Duration at) {
        return Duration.ofSeconds(at.toSeconds());
    }
}
