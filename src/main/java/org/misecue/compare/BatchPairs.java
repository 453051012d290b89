package org.misecue.compare;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * "Half a teaspoon in mine, so one for you": who makes another batch and tells both amounts of one line after another tells
 * by their ratio how many batches are made, announced or not.
 */
final class BatchPairs {

    /** How far in words the two amounts of a pair may begin from each other. */
    static final int PASSAGE = 25;

    /** Batches that people make of a recipe. Common practice, no source. */
    private static final Set<RationalNumber> SIZES = Stream.concat(
                    Stream.of(2, 3, 4, 6).map(Rationals::of), Stream.of(2, 3, 4).map(share -> Rationals.of(1, share)))
            .collect(Collectors.toUnmodifiableSet());

    /** So many lines must tell the same. */
    private static final long ENOUGH = 2;

    private final Hearing heard;

    BatchPairs(Hearing heard) {
        this.heard = heard;
    }

    /** How many written batches the pairs of most lines tell of; empty where too few do. */
    Optional<RationalNumber> factor(Collection<List<Mention>> ofLines) {
        Map<RationalNumber, Long> lines = ofLines.stream()
                .flatMap(own -> told(own).stream())
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        return lines.entrySet().stream()
                .filter(size -> size.getValue() >= ENOUGH)
                .max(Comparator.<Map.Entry<RationalNumber, Long>>comparingLong(Map.Entry::getValue)
                        .thenComparing(size -> size.getKey().doubleValue()))
                .map(Map.Entry::getKey);
    }

    /** What the first pair of a line tells. */
    private Optional<RationalNumber> told(List<Mention> own) {
        return IntStream.range(1, own.size())
                .filter(at -> isPair(own.get(at - 1), own.get(at)))
                .mapToObj(at -> ratio(own.get(at - 1).quantity(), own.get(at).quantity()))
                .flatMap(Optional::stream)
                .filter(SIZES::contains)
                .findFirst();
    }

    private boolean isPair(Mention mine, Mention viewers) {
        return viewers.start() - mine.start() <= PASSAGE
                && Whose.of(viewers, heard) == Whose.VIEWERS
                && Whose.of(mine, heard) != Whose.VIEWERS;
    }

    /** What the first is of the second; empty where they are measured in two ways or nobody knows. */
    static Optional<RationalNumber> ratio(Quantity first, Quantity second) {
        return first.unit() != second.unit()
                ? Optional.empty()
                : first.amount().least().flatMap(one -> second.amount()
                        .least()
                        .filter(other -> other.compareTo(Rationals.ZERO) > 0)
                        .map(one::divide));
    }
}
