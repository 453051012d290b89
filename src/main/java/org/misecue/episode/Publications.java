package org.misecue.episode;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.misecue.notice.BadInput;

/** What went out and when, kept in {@code .misecue/published.yaml}, the latest last. */
public final class Publications {

    private static final String FILE = "published.yaml";
    private static final String HEAD = "# What was published. Kept by misecue describe --publish, for corrections.\n";
    private static final List<String> KEYS = List.of("on", "by", "anyway", "items", "contains");
    private static final List<String> ITEM = List.of("about", "amount", "text");
    private static final String EXAMPLE = "- {on: 2026-05-20, by: Nell, items: []}";
    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

    private final StateFile file;

    public Publications(Episode episode) {
        this.file = new StateFile(episode, FILE);
    }

    /** What went out last. */
    public Optional<Publication> last() {
        return read().stream().reduce((first, second) -> second);
    }

    /** @throws BadInput with its line where the file is not such a list */
    public List<Publication> read() {
        return file.entries("what went out, such as", EXAMPLE, KEYS).stream()
                .map(Publications::publication)
                .toList();
    }

    public void add(Publication publication) {
        add(publication, before -> {});
    }

    /** @param look throws where what went out before is not what somebody has seen; then nothing is added */
    public void add(Publication publication, Consumer<List<Publication>> look) {
        file.change(
                this::read,
                before -> {
                    look.accept(before);
                    List<Publication> all = new ArrayList<>(before);
                    all.add(publication);
                    return all;
                },
                Publications::text);
    }

    private static Publication publication(StrictMap map) {
        List<Publication.Item> items = map.sections("items", ITEM).stream()
                .map(item -> new Publication.Item(
                        item.text("about", "about: oven").orElse(""),
                        item.text("amount", "amount: 180 °C").orElse(""),
                        item.text("text", "text: 180 °C").orElse("")))
                .toList();
        return new Publication(
                day(map),
                map.text("by", "by: Nell").orElse(""),
                map.text("anyway", "anyway: the cardamom is on screen").orElse(""),
                items,
                map.texts("contains", "[milk]"));
    }

    private static LocalDate day(StrictMap map) {
        String example = "on: 2026-05-20";
        try {
            return LocalDate.parse(map.text("on", example).orElseThrow(() -> map.wrong("on", "a day", example)), DAY);
        } catch (DateTimeParseException e) {
            throw map.wrong("on", "a day", example);
        }
    }

    private static String text(List<Publication> all) {
        StringBuilder out = new StringBuilder(HEAD);
        for (Publication one : all) {
            out.append("- on: ").append(DAY.format(one.on())).append('\n');
            out.append("  by: ").append(YamlText.quoted(one.who())).append('\n');
            if (!one.anyway().isEmpty()) {
                out.append("  anyway: ").append(YamlText.quoted(one.anyway())).append('\n');
            }
            out.append("  items:").append(one.items().isEmpty() ? " []\n" : "\n");
            for (Publication.Item item : one.items()) {
                out.append("    - about: ")
                        .append(YamlText.quoted(item.about()))
                        .append('\n');
                out.append("      amount: ")
                        .append(YamlText.quoted(item.amount()))
                        .append('\n');
                out.append("      text: ").append(YamlText.quoted(item.text())).append('\n');
            }
            List<String> contains =
                    one.contains().stream().map(YamlText::quoted).toList();
            out.append("  contains: [").append(String.join(", ", contains)).append("]\n");
        }
        return out.toString();
    }
}
