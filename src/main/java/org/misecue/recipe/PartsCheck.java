package org.misecue.recipe;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * Amounts in the method that the list does not hold: one part or all parts together larger than what is listed; parts
 * that are said to be all and are not, as "the remaining 50 g" of 175 g after 100 g; parts that leave a share of the line
 * over. Only figures that the method states are added up; a twentieth passes as rounding. What is put by and used later
 * counts once. Pieces are held against the list one mention at a time, for an egg's white and yolk are used apart.
 */
final class PartsCheck implements RecipeCheck {

    private static final RationalNumber MORE = Rationals.of(21, 20);
    private static final RationalNumber LESS = Rationals.of(19, 20);
    private static final Cued OPEN =
            Cued.inAnyCase("\\b(?:plus|extra|more|about|approx|optional|taste|needed|serve)\\b");

    /** "Half of the fruit" alone tells what is done to a half, not that the other is left. */
    private static final Set<String> IN_FIGURES = Set.of("", Share.REST, Use.SET_ASIDE);

    private record Part(Step step, Use use) {}

    @Override
    public List<Note> notes(Recipe recipe, Larder larder) {
        Map<LineRef, List<Part>> taken = new LinkedHashMap<>();
        for (Step step : recipe.steps()) {
            for (Use use : step.uses()) {
                if (!use.words().equals(Use.RESERVED)) {
                    taken.computeIfAbsent(
                                    new LineRef(use.component(), use.line(), use.in(recipe)), ref -> new ArrayList<>())
                            .add(new Part(step, use));
                }
            }
        }
        List<Note> notes = new ArrayList<>();
        taken.forEach((ref, parts) -> misfit(ref.line(), parts)
                .ifPresent(last -> notes.add(
                        new Note(Place.of(recipe.source(), last.step().line()), sentence(ref.line(), parts)))));
        return List.copyOf(notes);
    }

    /** The part at which the figures stop fitting the list. */
    private static Optional<Part> misfit(IngredientLine line, List<Part> parts) {
        if (parts.stream().noneMatch(part -> part.use().part().isPresent())) {
            return Optional.empty();
        }
        Optional<Quantity> listed = line.quantity().filter(quantity -> !OPEN.standsIn(Wording.of(line.text())));
        Optional<RationalNumber> most = listed.flatMap(quantity -> quantity.mostInBase(Household.METRIC));
        Optional<RationalNumber> least = listed.flatMap(quantity -> quantity.leastInBase(Household.METRIC));
        if (most.isEmpty() || least.isEmpty()) {
            return Optional.empty();
        }
        Dimension dimension = listed.get().dimension();
        if (dimension == Dimension.COUNT) {
            return parts.stream()
                    .filter(part -> figure(part, dimension)
                            .filter(value -> value.compareTo(most.get()) > 0)
                            .isPresent())
                    .findFirst();
        }
        if (dimension != Dimension.MASS && dimension != Dimension.VOLUME) {
            return Optional.empty();
        }
        return tooMuch(parts, dimension, most.get().multiply(MORE))
                .or(() -> tooLittle(parts, dimension, least.get().multiply(LESS)));
    }

    private static Optional<Part> tooMuch(List<Part> parts, Dimension dimension, RationalNumber limit) {
        RationalNumber sum = Rationals.ZERO;
        for (Part part : parts) {
            sum = sum.add(figure(part, dimension).orElse(Rationals.ZERO));
            if (sum.compareTo(limit) > 0) {
                return Optional.of(part);
            }
        }
        return Optional.empty();
    }

    private static Optional<Part> tooLittle(List<Part> parts, Dimension dimension, RationalNumber limit) {
        boolean allStated = parts.stream()
                .allMatch(part -> figure(part, dimension).isPresent()
                        && IN_FIGURES.contains(part.use().words()));
        RationalNumber sum = parts.stream()
                .flatMap(part -> figure(part, dimension).stream())
                .reduce(Rationals.ZERO, RationalNumber::add);
        return allStated && sum.compareTo(limit) < 0 ? Optional.of(parts.get(parts.size() - 1)) : Optional.empty();
    }

    private static Optional<RationalNumber> figure(Part part, Dimension dimension) {
        return part.use()
                .part()
                .filter(quantity -> quantity.dimension() == dimension)
                .flatMap(quantity -> quantity.leastInBase(Household.METRIC));
    }

    private static String sentence(IngredientLine line, List<Part> parts) {
        String taken = String.join(
                " and ",
                parts.stream()
                        .flatMap(part -> part.use().part().map(QuantityWriter::text).stream())
                        .toList());
        return "the method takes %s of %s, but %s is listed; check both."
                .formatted(
                        taken,
                        line.ingredient(),
                        line.quantity().map(QuantityWriter::text).orElse("nothing"));
    }
}
