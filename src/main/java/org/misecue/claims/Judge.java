package org.misecue.claims;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.claims.Standing.Level;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Component;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;

/** Holds what a claim denies against the lines that it is about. */
final class Judge {

    private static final String NO_PROOF =
            "Nothing that is known here contradicts it, which is no proof: labels and food law decide";

    /** The ruling with its reason and the lines it rests on. */
    record Judgement(Ruling ruling, String reason, List<IngredientLine> because) {}

    /** A line, or a food without one, with what is known of it. */
    private record Held(List<IngredientLine> line, Standing standing) {}

    private final Recipe recipe;
    private final List<String> unwritten;
    private final Pantry pantry;

    Judge(Recipe recipe, List<String> unwritten, Pantry pantry) {
        this.recipe = recipe;
        this.unwritten = unwritten;
        this.pantry = pantry;
    }

    Judgement of(Denial denial, Subject about, boolean medical, List<IngredientLine> ofIngredient) {
        if (about.kind() == Subject.Kind.INGREDIENT) {
            return ofIngredient(denial, about, ofIngredient);
        }
        List<Held> held = new ArrayList<>(linesOf(about).stream()
                .map(line -> new Held(List.of(line), standing(line, denial)))
                .toList());
        if (about.kind() == Subject.Kind.DISH) {
            unwritten.forEach(name -> held.add(new Held(List.of(), added(name, denial))));
        }
        return ruled(held, denial, medical);
    }

    private List<IngredientLine> linesOf(Subject about) {
        return recipe.components().stream()
                .filter(part -> about.kind() == Subject.Kind.DISH || part.name().equals(about.name()))
                .map(Component::lines)
                .flatMap(List::stream)
                .toList();
    }

    private Standing added(String name, Denial denial) {
        Standing standing = Standing.of(name, denial, pantry);
        return new Standing(
                standing.level(), standing.why().isEmpty() ? "" : standing.why() + " (added without being written)");
    }

    private Judgement ofIngredient(Denial denial, Subject about, List<IngredientLine> lines) {
        if (lines.isEmpty()) {
            return new Judgement(
                    Ruling.UNKNOWABLE,
                    "The recipe has no line for " + about.name() + ": only its own label tells.",
                    List.of());
        }
        List<Held> held = lines.stream()
                .map(line -> new Held(List.of(line), standing(line, denial)))
                .toList();
        Judgement ruled = ruled(held, denial, false);
        String written = lines.stream()
                .map(line -> "“" + line.ingredient() + "”")
                .distinct()
                .collect(Collectors.joining(" and "));
        return ruled.ruling() == Ruling.CONTRADICTED
                ? new Judgement(
                        Ruling.CONTRADICTED,
                        "The recipe says " + written + ", which viewers will take: " + ruled.reason(),
                        ruled.because())
                : ruled;
    }

    private static Judgement ruled(List<Held> held, Denial denial, boolean medical) {
        if (held.stream().anyMatch(one -> one.standing().level() == Level.CONTAINS)) {
            return judgement(Ruling.CONTRADICTED, held, Level.CONTAINS);
        }
        if (held.stream().anyMatch(one -> one.standing().level() == Level.OPEN)) {
            return judgement(Ruling.UNKNOWABLE, held, Level.OPEN);
        }
        if (!denial.open().isEmpty()) {
            return new Judgement(Ruling.UNKNOWABLE, sentence(denial.open()), List.of());
        }
        if (medical) {
            return new Judgement(
                    Ruling.UNKNOWABLE,
                    "Whom it suits is a matter of labels, of traces and of their doctors, not of a recipe.",
                    List.of());
        }
        return new Judgement(Ruling.NOT_CONTRADICTED, NO_PROOF + ".", List.of());
    }

    private static Judgement judgement(Ruling ruling, List<Held> held, Level level) {
        List<Held> telling =
                held.stream().filter(one -> one.standing().level() == level).toList();
        String reason =
                telling.stream().map(one -> one.standing().why()).distinct().collect(Collectors.joining("; "));
        return new Judgement(
                ruling,
                sentence(reason),
                telling.stream().flatMap(one -> one.line().stream()).toList());
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }

    /** Of a line with a choice, what all have is certain and what some have is open. */
    private Standing standing(IngredientLine line, Denial denial) {
        List<Standing> all = Stream.concat(Stream.of(line.ingredient()), line.alternatives().stream())
                .map(name -> own(name, line, denial))
                .toList();
        Set<Level> levels = all.stream().map(Standing::level).collect(Collectors.toSet());
        String why = all.stream()
                .map(Standing::why)
                .filter(words -> !words.isEmpty())
                .distinct()
                .collect(Collectors.joining(", "));
        if (levels.size() == 1) {
            return new Standing(all.get(0).level(), optional(why, line));
        }
        return new Standing(Level.OPEN, "“" + line.text() + "” leaves a choice: " + why);
    }

    private static String optional(String why, IngredientLine line) {
        return why.isEmpty() || !line.optional() ? why : why + " (the line is optional)";
    }

    /** A line that asks for the free sort itself ("gluten-free oats") leaves it to the label. */
    private Standing own(String name, IngredientLine line, Denial denial) {
        Standing standing = Standing.of(name, denial, pantry);
        boolean asksForIt = standing.level() == Level.CONTAINS && OwnClaims.deny(line, denial);
        return asksForIt
                ? new Standing(Level.OPEN, "“" + line.ingredient() + "” is asked for by that name: its label tells")
                : standing;
    }
}
