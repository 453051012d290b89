package org.misecue.publish;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.misecue.compare.Evidence;
import org.misecue.compare.Finding;
import org.misecue.episode.Publication;
import org.misecue.episode.Publication.Item;
import org.misecue.quantity.QuantityWriter;

/**
 * The correction for viewers when what was published turns out wrong: one sentence with what is right, one with what to
 * mind in the film, and before both any allergen that was not named.
 *
 * @param sentences for the viewers; empty where nothing that was published has changed
 * @param toCover the moments of the film that still tell a figure which is wrong now
 */
public record Erratum(List<String> sentences, List<Cover> toCover) {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);

    /** One moment, what it tells, and what is right. */
    public record Cover(Evidence evidence, String told, String right) {}

    /**
     * @param then what went out
     * @param now what would go out today
     * @param findings of the recipe as it is now, with what the film says and shows of it
     */
    public static Erratum of(Publication then, Publication now, List<Finding> findings) {
        Map<String, Item> before = byName(then);
        Map<String, Item> after = byName(now);
        List<String> changes = new ArrayList<>();
        List<Cover> toCover = new ArrayList<>();
        after.forEach((about, item) -> {
            Item old = before.get(about);
            if (old == null) {
                changes.add(SafeText.line(item.text()) + part(about) + " was left out");
            } else if (!old.amount().equals(item.amount())) {
                changes.add(changed(about, old, item));
            } else {
                return;
            }
            findings.stream()
                    .filter(finding -> finding.about().equals(about))
                    .forEach(finding -> toCover.addAll(wrong(finding)));
        });
        before.forEach((about, item) -> {
            if (!after.containsKey(about)) {
                changes.add(SafeText.line(item.text()) + part(about) + " does not belong in it");
            }
        });
        if (changes.isEmpty()) {
            return new Erratum(List.of(), List.of());
        }
        List<String> sentences = new ArrayList<>();
        List<String> unnamed = now.contains().stream()
                .filter(allergen -> !then.contains().contains(allergen))
                .toList();
        if (!unnamed.isEmpty()) {
            sentences.add("ALLERGENS: it contains %s, which was not said before; read the labels of what you use."
                    .formatted(String.join(", ", unnamed).toUpperCase(Locale.UK)));
        }
        sentences.add("Correction, " + DAY.format(now.on()) + ": " + String.join("; ", changes) + ".");
        sentences.add(
                toCover.isEmpty()
                        ? "Please change it wherever you have copied the recipe."
                        : "The film gives another figure at " + moments(toCover)
                                + ": please go by the one written here.");
        return new Erratum(List.copyOf(sentences), List.copyOf(toCover));
    }

    private static Map<String, Item> byName(Publication publication) {
        Map<String, Item> items = new LinkedHashMap<>();
        publication.items().forEach(item -> items.put(item.about(), item));
        return items;
    }

    private static String changed(String about, Item old, Item item) {
        String was = old.amount().isEmpty() ? ", for which no amount was given" : ", not " + old.amount();
        boolean line = !item.text().equals(item.amount());
        return line
                ? "it is " + SafeText.line(item.text()) + part(about) + was
                : SafeText.line(about).replaceAll(" \\(\\d+\\)$", "") + ": " + item.amount() + was;
    }

    /** " (cake)". */
    private static String part(String about) {
        int colon = about.indexOf(": ");
        return colon < 0 ? "" : " (" + SafeText.line(about.substring(0, colon)) + ")";
    }

    private static List<Cover> wrong(Finding finding) {
        return finding.written().stream()
                .flatMap(right -> finding.evidence().stream()
                        .filter(one -> one.quantity()
                                .filter(told -> !told.equals(right))
                                .isPresent())
                        .map(one -> new Cover(
                                one,
                                one.quantity().map(QuantityWriter::text).orElse(""),
                                SafeText.line(finding.what()))))
                .toList();
    }

    private static String moments(List<Cover> toCover) {
        List<String> clocks = toCover.stream()
                .map(cover -> Chapter.clock(cover.evidence().moment().at()))
                .distinct()
                .toList();
        String last = clocks.get(clocks.size() - 1);
        return clocks.size() == 1
                ? last
                : clocks.stream().limit(clocks.size() - 1L).collect(Collectors.joining(", ")) + " and " + last;
    }

    /** The sentences, and below them the moments for the editor. */
    public String text() {
        if (sentences.isEmpty()) {
            return "Nothing that was published has changed.\n";
        }
        StringBuilder out = new StringBuilder(String.join(" ", sentences)).append('\n');
        if (!toCover.isEmpty()) {
            out.append("\nTo cover in the film\n");
            for (Cover cover : toCover) {
                out.append("%8s  %s: “%s”\n          → “%s”\n"
                        .formatted(
                                Chapter.clock(cover.evidence().moment().at()),
                                cover.evidence().moment().source(),
                                cover.evidence().quote(),
                                cover.right()));
            }
        }
        return out.toString();
    }
}
