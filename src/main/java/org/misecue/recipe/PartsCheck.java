package org.misecue.recipe;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * Amounts in the method that the list does not hold: one part, or all parts together, larger than what is listed. Only
 * weights and volumes that the method itself states are added up; a twentieth more passes as rounding.
 */
final class PartsCheck implements RecipeCheck {

    private static final RationalNumber ROUNDING = Rationals.of(21, 20);

    private record Part(Step step, Quantity quantity) {}

    @Override
    public List<Note> notes(Recipe recipe) {
        Map<IngredientLine, List<Part>> taken = new LinkedHashMap<>();
        for (Step step : recipe.steps()) {
            for (Use use : step.uses()) {
                use.part().ifPresent(part -> taken.computeIfAbsent(use.in(recipe), line -> new ArrayList<>())
                        .add(new Part(step, part)));
            }
        }
        List<Note> notes = new ArrayList<>();
        taken.forEach((line, parts) -> tooMuch(line, parts)
                .ifPresent(last ->
                        notes.add(new Note(Place.of(recipe.source(), last.step().line()), sentence(line, parts)))));
        return List.copyOf(notes);
    }

    /** The part with which more is taken than is there. */
    private static Optional<Part> tooMuch(IngredientLine line, List<Part> parts) {
        Optional<Quantity> listed = line.quantity()
                .filter(quantity ->
                        !line.text().toLowerCase(java.util.Locale.ROOT).matches(".*\\b(?:plus|extra|more)\\b.*"))
                .filter(PartsCheck::isMeasured);
        Optional<RationalNumber> limit = listed.flatMap(quantity -> quantity.mostInBase(Household.METRIC))
                .map(ROUNDING::multiply);
        if (limit.isEmpty()) {
            return Optional.empty();
        }
        RationalNumber sum = Rationals.ZERO;
        for (Part part : parts) {
            boolean comparable = listed.map(Quantity::dimension)
                    .equals(Optional.of(part.quantity().dimension()));
            sum = sum.add(
                    comparable ? part.quantity().leastInBase(Household.METRIC).orElse(Rationals.ZERO) : Rationals.ZERO);
            if (sum.compareTo(limit.get()) > 0) {
                return Optional.of(part);
            }
        }
        return Optional.empty();
    }

    private static boolean isMeasured(Quantity quantity) {
        return quantity.dimension() == Dimension.MASS || quantity.dimension() == Dimension.VOLUME;
    }

    private static String sentence(IngredientLine line, List<Part> parts) {
        String taken = String.join(
                " and ",
                parts.stream().map(part -> QuantityWriter.text(part.quantity())).toList());
        return "the method takes %s of %s, but %s is listed; check both."
                .formatted(
                        taken,
                        line.ingredient(),
                        line.quantity().map(QuantityWriter::text).orElse("nothing"));
    }
}
