package org.misecue.prep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.misecue.notice.Note;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.Component;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Step;
import org.misecue.recipe.Use;
import org.misecue.scale.ScaledRecipe;
import org.misecue.scale.WeighedLine;
import tech.units.indriya.function.RationalNumber;

/**
 * Sets out the bowls of one take. A bowl is what goes in at one moment: the dry things of one component that one clause
 * of a step names together share a bowl, everything else stands alone, and an ingredient used in parts has a bowl for
 * each part.
 */
final class BowlSetter {

    /** A share of a line on its way into a bowl. */
    private record Portion(
            int componentIndex, Content content, Share share, int step, int clause, int place, Nature nature) {}

    /** Cream and eggs grow to two or three times their volume under a whisk; common practice, no source. */
    private static final RationalNumber WHISKING_ROOM = Rationals.of(3);

    private static final Pattern WHISKED = Pattern.compile(
            "\\b(?:whisk|whip|beat)(?: together)?(?: the| both)?(?: (?!in\\b|with\\b|into\\b|to\\b)\\p{L}+){0,2} $");

    private static final int NOT_NAMED = Integer.MAX_VALUE;

    private final ScaledRecipe scaled;
    private final Pantry pantry;
    private final Weights weights;
    private final RationalNumber scaleStep;
    private final List<Note> notes = new ArrayList<>();
    private final List<ToHand> toHand = new ArrayList<>();

    BowlSetter(ScaledRecipe scaled, Pantry pantry, PrepSettings settings) {
        this.scaled = scaled;
        this.pantry = pantry;
        this.weights = new Weights(pantry, settings.household());
        this.scaleStep = settings.scaleStep();
    }

    List<Note> notes() {
        return notes;
    }

    List<ToHand> toHand() {
        return toHand;
    }

    /** The bowls of the first take, numbered in the order of the method. */
    List<Bowl> set() {
        List<Portion> portions = new ArrayList<>();
        int flat = 0;
        List<Component> components = scaled.recipe().components();
        for (int c = 0; c < components.size(); c++) {
            for (int l = 0; l < components.get(c).lines().size(); l++) {
                portions.addAll(portions(c, l, scaled.lines().get(flat++)));
            }
        }
        portions.sort(Comparator.comparingInt((Portion portion) -> portion.step() == 0 ? NOT_NAMED : portion.step())
                .thenComparingInt(Portion::place));
        Map<Object, List<Portion>> byBowl = new LinkedHashMap<>();
        for (Portion portion : portions) {
            byBowl.computeIfAbsent(bowlKey(portion, portions), key -> new ArrayList<>())
                    .add(portion);
        }
        List<List<Portion>> bowls = List.copyOf(byBowl.values());
        return IntStream.range(0, bowls.size())
                .mapToObj(i -> bowl(i + 1, bowls.get(i)))
                .toList();
    }

    private List<Portion> portions(int componentIndex, int lineIndex, WeighedLine line) {
        String name = line.written().ingredient();
        List<ShareOut.StepUse> uses = scaled.recipe().steps().stream()
                .flatMap(step -> step.uses().stream()
                        .filter(use -> use.component() == componentIndex && use.line() == lineIndex)
                        .map(use -> new ShareOut.StepUse(step.number(), use, Additions.of(step.text(), name))))
                .toList();
        if (line.weighed().flatMap(weighed -> weighed.amount().least()).isEmpty()) {
            List<Integer> steps =
                    uses.stream().map(ShareOut.StepUse::step).distinct().toList();
            toHand.add(
                    new ToHand(line.component(), line.written(), steps, Carries.of(List.of(line.written()), pantry)));
            return List.of();
        }
        Quantity weighed = line.weighed().orElseThrow();
        List<ShareOut.StepUse> taking = LaterNames.takingFrom(name, uses, scaled.recipe());
        ShareOut.Source source = new ShareOut.Source(scaled.recipe().source(), scaleStep);
        return ShareOut.among(line, weighed, taking, weights, source, notes).stream()
                .map(share -> portion(componentIndex, line, weighed, share))
                .toList();
    }

    private Portion portion(int componentIndex, WeighedLine line, Quantity weighed, Share share) {
        RationalNumber fraction = share.fraction();
        Content content = new Content(
                line.written(), weighed.times(fraction), line.grams().map(grams -> grams.multiply(fraction)));
        Nature nature = Nature.of(line.written().ingredient(), weighed);
        int step = share.steps().stream().findFirst().orElse(0);
        String text = text(step);
        OptionalInt place = StepWords.whereNamed(text, line.written().ingredient());
        int clause = place.isPresent() ? StepWords.clauseAt(text, place.getAsInt()) : NOT_NAMED;
        return new Portion(componentIndex, content, share, step, clause, place.orElse(NOT_NAMED), nature);
    }

    private String text(int step) {
        return scaled.recipe().steps().stream()
                .filter(candidate -> candidate.number() == step)
                .map(Step::text)
                .findFirst()
                .orElse("");
    }

    /** Equal for what shares a bowl. A dry thing that the step does not name goes with the first dry clause. */
    private Object bowlKey(Portion portion, List<Portion> all) {
        if (portion.nature() != Nature.DRY
                || portion.step() == 0
                || portion.share().steps().size() > 1) {
            return portion;
        }
        int clause = portion.clause() != NOT_NAMED
                ? portion.clause()
                : all.stream()
                        .filter(other -> other.nature() == Nature.DRY
                                && other.step() == portion.step()
                                && other.componentIndex() == portion.componentIndex())
                        .mapToInt(Portion::clause)
                        .min()
                        .orElse(NOT_NAMED);
        return List.of(
                portion.componentIndex(),
                portion.step(),
                clause,
                portion.share().at(),
                portion.share().of());
    }

    private Bowl bowl(int number, List<Portion> portions) {
        Portion first = portions.get(0);
        List<Content> contents = portions.stream().map(Portion::content).toList();
        List<Integer> steps = first.share().steps();
        Recipe recipe = scaled.recipe();
        return new Bowl(
                number,
                1,
                (portions.size() > 1 ? "the dry mix" : name(first))
                        + first.share().additionWords(),
                recipe.components().get(first.componentIndex()).name(),
                first.step(),
                steps.stream().skip(1).toList(),
                contents,
                vessel(portions),
                Carries.of(contents.stream().map(Content::line).toList(), pantry),
                Reading.of(contents, scaleStep));
    }

    private Vessel vessel(List<Portion> portions) {
        boolean liquid = portions.get(0).nature() == Nature.LIQUID;
        boolean egg = portions.get(0).nature() == Nature.EGG;
        RationalNumber room = portions.stream()
                .map(Portion::content)
                .map(content ->
                        weights.millilitres(content.weighed(), content.grams(), content.ingredient(), liquid || egg))
                .reduce(Rationals.ZERO, RationalNumber::add);
        if (portions.stream().anyMatch(this::isWhiskedInItsBowl)) {
            return Vessel.holding(room.multiply(WHISKING_ROOM), false);
        }
        Vessel vessel = Vessel.holding(room, liquid);
        return egg && vessel == Vessel.PINCH_BOWL ? Vessel.SMALL_BOWL : vessel;
    }

    /** "Whip the cream": what is beaten by itself, or first of all, need not change its bowl. */
    private boolean isWhiskedInItsBowl(Portion portion) {
        boolean whips = portion.nature() == Nature.LIQUID || portion.nature() == Nature.EGG;
        return whips
                && portion.place() != NOT_NAMED
                && WHISKED.matcher(text(portion.step())
                                .substring(0, portion.place())
                                .toLowerCase(Locale.ROOT))
                        .find();
    }

    private static String name(Portion portion) {
        String words = portion.share().words();
        String ingredient = portion.content().label();
        if (words.equals(Use.SET_ASIDE)) {
            return "the reserved " + ingredient;
        }
        if (words.isEmpty()) {
            boolean byParts = portion.share().of() > 1; // which of them is said behind the name
            return byParts || portion.share().fraction().equals(Rationals.ONE)
                    ? ingredient
                    : "some of the " + ingredient;
        }
        return words + (words.endsWith(" of") ? " the " : words.endsWith(" of the") ? " " : " of the ") + ingredient;
    }

    /** The same bowls for another take. */
    static Stream<Bowl> again(List<Bowl> bowls, int take) {
        return bowls.stream().map(bowl -> bowl.inSet(take));
    }
}
