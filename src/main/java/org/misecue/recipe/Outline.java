package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.misecue.quantity.QuantityReader;
import org.misecue.recipe.manuscript.Line;
import org.misecue.recipe.manuscript.Manuscript;

/**
 * A manuscript sorted into the sections of a recipe.
 *
 * @param title what the dish is called; empty where nothing says so
 * @param head the lines before the ingredients, and notes behind the method
 * @param parts the ingredient lines by part of the dish
 * @param method the lines of the method, each with the part that its sub-heading names
 */
record Outline(String title, List<Line> head, List<Part> parts, List<MethodLine> method) {

    /** A part of the ingredient list; the name is empty where no heading stands above. */
    record Part(String name, List<Line> lines) {}

    /** A step of the method with the name of the part that it stands under, or an empty one. */
    record MethodLine(String part, Line line) {}

    static Outline of(Manuscript manuscript) {
        Sorter sorter = new Sorter();
        Footnotes.inlined(manuscript.lines()).forEach(sorter::take);
        String title = manuscript.title().isEmpty() ? sorter.title : manuscript.title();
        return new Outline(
                title,
                sorter.head,
                BareHeadings.split(sorter.parts).stream()
                        .filter(part -> !part.lines().isEmpty())
                        .map(AmountsApart::joined)
                        .toList(),
                Paragraphs.joined(sorter.method));
    }

    private enum Section {
        HEAD,
        INGREDIENTS,
        METHOD,
        OTHER
    }

    private static final class Sorter {

        private static final int LONGEST_TITLE = 12;
        private static final int SENTENCE = 9;

        private static final Pattern PUNCTUATED = Pattern.compile(".*[.,!?:]$");
        private static final Pattern GREETING = Pattern.compile("(?:hi|hello|dear|hey)\\b.*", Pattern.CASE_INSENSITIVE);
        private static final Pattern BEGUN_SENTENCE =
                Pattern.compile(".*\\p{Ll}{2,}\\. \\p{Lu}.*|\\p{Lu}\\p{Ll}+ (?:oven|the) .*");

        private final QuantityReader quantities = new QuantityReader();
        private final List<Line> head = new ArrayList<>();
        private final List<Part> parts = new ArrayList<>();
        private final List<MethodLine> method = new ArrayList<>();
        private String title = "";
        private boolean titled;
        private String group = "";
        private boolean groupHoldsMethod;
        private Section section = Section.HEAD;

        void take(Line line) {
            Optional<Headings.Announces> heading =
                    Headings.of(line, section == Section.INGREDIENTS || section == Section.METHOD);
            if (heading.isPresent() && !isTitle(line, heading.get())) {
                open(heading.get(), line);
            } else {
                add(line);
            }
        }

        private boolean isTitle(Line line, Headings.Announces announces) {
            return announces == Headings.Announces.PART
                    && section == Section.HEAD
                    && !titled
                    && line.is(Line.Kind.HEADING)
                    && !line.text().toLowerCase(java.util.Locale.ROOT).startsWith("for the ");
        }

        private void open(Headings.Announces announces, Line line) {
            switch (announces) {
                case INGREDIENTS -> {
                    section = Section.INGREDIENTS;
                    parts.add(new Part(group, new ArrayList<>()));
                }
                case METHOD -> {
                    // A part of the ingredient list ends with the list; a part with a list and a method of its own goes
                    // on.
                    group = groupHoldsMethod ? group : "";
                    section = Section.METHOD;
                }
                case OTHER -> section = Section.OTHER;
                case PART -> openPart(Headings.partName(line.text()), line);
            }
        }

        private void openPart(String name, Line line) {
            group = name;
            groupHoldsMethod = section != Section.INGREDIENTS;
            boolean isFor =
                    line.text().strip().toLowerCase(java.util.Locale.ROOT).startsWith("for ");
            boolean ofIngredients =
                    line.text().toLowerCase(java.util.Locale.ROOT).contains("ingredients");
            if (section == Section.HEAD && (isFor || ofIngredients || line.is(Line.Kind.HEADING))) {
                // A heading that nothing announced: its lines will show whether it is an ingredient list.
                section = isFor || ofIngredients ? Section.INGREDIENTS : section;
            }
            if (section == Section.INGREDIENTS || ofIngredients) {
                section = Section.INGREDIENTS;
                parts.add(new Part(name, new ArrayList<>()));
            }
        }

        private void add(Line line) {
            switch (section) {
                case HEAD -> addToHead(line);
                case INGREDIENTS -> addToIngredients(line);
                case METHOD -> method.add(new MethodLine(group, line));
                case OTHER -> head.add(line);
            }
        }

        private void addToHead(Line line) {
            if (!titled && canBeTitle(line)) {
                title = line.text().strip();
                titled = true;
            } else if (isMeasured(line)) {
                section = Section.INGREDIENTS;
                addToIngredients(line);
            } else {
                head.add(line);
            }
        }

        private boolean canBeTitle(Line line) {
            String text = line.text().strip();
            return line.is(Line.Kind.HEADING)
                    || (line.is(Line.Kind.TEXT)
                            && Words.count(text) <= LONGEST_TITLE
                            && !PUNCTUATED.matcher(text).matches()
                            && !GREETING.matcher(text).matches()
                            && !YieldReader.speaksOfYield(Wording.of(text))
                            && !isMeasured(line));
        }

        /** Whether an unannounced line can only be an ingredient: it begins with a measure. */
        private boolean isMeasured(Line line) {
            if (line.is(Line.Kind.HEADING) || YieldReader.speaksOfYield(Wording.of(line.text()))) {
                return false;
            }
            return quantities
                    .read(line.text())
                    .filter(written -> switch (written.quantity().dimension()) {
                        case MASS, VOLUME, SMIDGEN -> true;
                        case COUNT -> line.is(Line.Kind.ITEM);
                        default -> false;
                    })
                    .filter(written -> Words.count(line.text()) <= LONGEST_TITLE
                            || !line.text().strip().endsWith("."))
                    .isPresent();
        }

        private void addToIngredients(Line line) {
            if (isInstruction(line)) {
                section = Section.METHOD;
                group = "";
                method.add(new MethodLine("", line));
                return;
            }
            if (parts.isEmpty()) {
                parts.add(new Part(group, new ArrayList<>()));
            }
            parts.get(parts.size() - 1).lines().add(line);
        }

        /** A sentence without an amount at its start belongs to the method, announced or not. */
        private boolean isInstruction(Line line) {
            if (line.is(Line.Kind.ITEM)) {
                return false;
            }
            // A mail program may have broken the sentence before its full stop.
            boolean sentence = Words.count(line.text()) >= SENTENCE
                    && (line.text().strip().endsWith(".")
                            || line.gap() && BEGUN_SENTENCE.matcher(line.text()).matches());
            return (sentence || line.is(Line.Kind.NUMBERED))
                    && quantities.read(line.text()).isEmpty();
        }
    }
}
