package org.misecue.episode;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.misecue.notice.BadInput;

/**
 * The decisions on an episode, kept in {@code .misecue/decisions.yaml}: a list that people can read and mend. There is one
 * for each thing that was decided about; a later one takes its place.
 */
public final class Decisions {

    private static final String FILE = "decisions.yaml";
    private static final String HEAD = "# What was decided about differences. Kept by misecue decide.\n";
    private static final List<String> KEYS = List.of("about", "decision", "by", "when", "note", "rests-on");
    private static final String EXAMPLE =
            "- {about: \"cake: butter\", decision: pickup, by: Nell, when: 2026-05-04 10:00}";
    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

    private final StateFile file;

    public Decisions(Episode episode) {
        this.file = new StateFile(episode, FILE);
    }

    /**
     * In the order in which they were first taken.
     *
     * @throws BadInput with its line where the file is not such a list
     */
    public List<Decision> read() {
        Map<String, Decision> decisions = new LinkedHashMap<>();
        for (StrictMap map : file.entries("decisions such as", EXAMPLE, KEYS)) {
            Decision one = decision(map);
            decisions.put(one.about(), one);
        }
        return List.copyOf(decisions.values());
    }

    /** Puts decisions in the place of earlier ones about the same, and takes those about others back. */
    public List<Decision> change(Collection<Decision> taken, Collection<String> undone) {
        return change(taken, undone, before -> {});
    }

    /**
     * As {@link #change(Collection, Collection)}, but first looks at what was decided until now.
     *
     * @param look throws where that is not what somebody has seen; then nothing is changed
     */
    public List<Decision> change(Collection<Decision> taken, Collection<String> undone, Consumer<List<Decision>> look) {
        UnaryOperator<List<Decision>> change = changed(taken, undone);
        return file.change(
                this::read,
                before -> {
                    look.accept(before);
                    return change.apply(before);
                },
                Decisions::text);
    }

    private static UnaryOperator<List<Decision>> changed(Collection<Decision> taken, Collection<String> undone) {
        return before -> {
            Map<String, Decision> all = new LinkedHashMap<>();
            before.forEach(one -> all.put(one.about(), one));
            taken.forEach(one -> all.put(one.about(), one));
            undone.forEach(all::remove);
            return List.copyOf(all.values());
        };
    }

    private static Decision decision(StrictMap map) {
        String about = map.text("about", "about: \"cake: butter\"")
                .filter(text -> !text.isEmpty())
                .orElseThrow(() -> map.wrong("about", "what it is about", "about: \"cake: butter\""));
        Choice choice = map.text("decision", "decision: pickup")
                .flatMap(Choice::of)
                .orElseThrow(() -> map.wrong("decision", "keep, fix, pickup or cover", "decision: pickup"));
        return new Decision(
                about,
                choice,
                map.text("by", "by: Nell").orElse(""),
                when(map),
                map.text("note", "note: said from memory").orElse(""),
                map.texts("rests-on", "[\"175 g\"]"));
    }

    /** The minute in which it was taken. */
    static LocalDateTime when(StrictMap map) {
        String example = "when: 2026-05-04 10:00";
        try {
            return LocalDateTime.parse(
                    map.text("when", example).orElseThrow(() -> map.wrong("when", "a day and a time", example)),
                    MINUTE);
        } catch (DateTimeParseException e) {
            throw map.wrong("when", "a day and a time", example);
        }
    }

    /** "2026-05-04 10:00". */
    public static String minute(LocalDateTime when) {
        return MINUTE.format(when);
    }

    private static String text(List<Decision> decisions) {
        StringBuilder out = new StringBuilder(HEAD);
        for (Decision one : decisions) {
            out.append("- about: ").append(YamlText.quoted(one.about())).append('\n');
            out.append("  decision: ").append(one.choice().code()).append('\n');
            out.append("  by: ").append(YamlText.quoted(one.who())).append('\n');
            out.append("  when: ").append(minute(one.when())).append('\n');
            if (!one.note().isEmpty()) {
                out.append("  note: ").append(YamlText.quoted(one.note())).append('\n');
            }
            List<String> rests = new ArrayList<>();
            one.restsOn().forEach(text -> rests.add("\n    - " + YamlText.quoted(text)));
            out.append("  rests-on:")
                    .append(rests.isEmpty() ? " []" : String.join("", rests))
                    .append('\n');
        }
        return out.toString();
    }
}
