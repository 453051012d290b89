package org.misecue.prep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.prep.PackTable.Row;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/** Rounds up to whole packs: the least left over, then the fewest packs. */
final class Packer {

    private final Pantry pantry;
    private final Household household;

    Packer(Pantry pantry, Household household) {
        this.pantry = pantry;
        this.household = household;
    }

    /** @param need exactly, before any rounding; empty for "some" */
    Packs pack(String name, String aisle, Optional<Quantity> need) {
        String ingredient = pantry.find(name).map(Ingredient::name).orElse(name);
        Optional<Row> row = PackTable.of(ingredient, aisle);
        if (row.isEmpty() || need.isPresent() && !packed(row.get(), need.get())) {
            return Packs.LOOSE;
        }
        Optional<RationalNumber> wanted =
                need.flatMap(quantity -> inUnit(quantity, row.get().unit(), name));
        List<Long> sizes = row.get().sizes();
        List<Long> taken = wanted.map(amount -> fewest(amount, sizes)).orElse(List.of(sizes.get(0)));
        return new Packs(packs(taken, row.get()), wanted.map(amount -> over(amount, taken, row.get())));
    }

    /** What is counted is sold by the piece, unless the packs are counted too. */
    private static boolean packed(Row row, Quantity need) {
        return (row.unit() == Unit.EACH) == (need.dimension() == Dimension.COUNT) || row.unit() != Unit.EACH;
    }

    private Optional<RationalNumber> inUnit(Quantity need, Unit unit, String name) {
        Dimension dimension = need.dimension();
        Optional<RationalNumber> most = need.mostInBase(household);
        if (dimension == unit.dimension()) {
            return most;
        }
        Weights weights = new Weights(pantry, household);
        Optional<RationalNumber> grams = most.flatMap(
                amount -> weights.grams(Quantity.of(need.amount().most().orElseThrow(), need.unit()), name));
        return unit == Unit.GRAM
                ? grams
                : grams.map(weight -> weights.millilitres(Quantity.of(weight, Unit.GRAM), grams, name, true));
    }

    /** Pack sizes that reach the amount, largest first. */
    static List<Long> fewest(RationalNumber amount, List<Long> sizes) {
        long largest = sizes.get(sizes.size() - 1);
        long need = Rationals.decimal(amount)
                .setScale(0, java.math.RoundingMode.CEILING)
                .longValueExact();
        long sure = Math.max(0, need / largest - 2);
        List<Long> best = best(Math.max(1, need - sure * largest), sizes, sizes.size() - 1);
        List<Long> all = new ArrayList<>();
        for (long i = 0; i < sure; i++) {
            all.add(largest);
        }
        all.addAll(best);
        return all;
    }

    private static List<Long> best(long need, List<Long> sizes, int index) {
        long size = sizes.get(index);
        if (index == 0) {
            return repeated(size, (need + size - 1) / size);
        }
        List<List<Long>> ways = new ArrayList<>();
        for (long count = 0; ; count++) {
            long rest = need - count * size;
            List<Long> way = new ArrayList<>(repeated(size, count));
            if (rest > 0) {
                way.addAll(best(rest, sizes, index - 1));
            }
            ways.add(way);
            if (rest <= 0) {
                break;
            }
        }
        return ways.stream()
                .min(Comparator.comparingLong(Packer::sum).thenComparing(List::size))
                .orElseThrow();
    }

    private static List<Long> repeated(long size, long count) {
        return java.util.Collections.nCopies(Math.toIntExact(Math.max(0, count)), size);
    }

    private static long sum(List<Long> sizes) {
        return sizes.stream().mapToLong(Long::longValue).sum();
    }

    private static List<Pack> packs(List<Long> taken, Row row) {
        return taken.stream()
                .distinct()
                .map(size -> new Pack(
                        taken.stream().filter(size::equals).count(), Quantity.of(size, row.unit()), row.word()))
                .toList();
    }

    private static Quantity over(RationalNumber amount, List<Long> taken, Row row) {
        RationalNumber left = Rationals.of(sum(taken)).subtract(amount);
        return Quantity.of(Rationals.nearest(left, Rationals.ONE), row.unit());
    }
}
