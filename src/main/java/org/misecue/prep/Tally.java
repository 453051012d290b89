package org.misecue.prep;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * What is weighed out in all, so that what a filming day uses up beyond one dish stays in sight.
 *
 * @param batch grams of one set of bowls
 * @param sets how many sets are filled
 * @param spares grams of what is weighed out once more
 * @param earlier grams of what is made earlier
 * @param leastOnly whether something has no known weight, so that all is at least so much
 */
public record Tally(RationalNumber batch, int sets, RationalNumber spares, RationalNumber earlier, boolean leastOnly) {

    private static final RationalNumber THOUSAND = Rationals.of(1000);

    static Tally of(List<Bowl> oneTake, int sets, List<Spare> spares, List<SwapOut> swapOuts) {
        List<Content> batch = contents(oneTake.stream());
        List<Content> spare = spares.stream().map(Spare::content).toList();
        List<Content> earlier = contents(swapOuts.stream().flatMap(swapOut -> swapOut.bowls().stream()));
        boolean unknown = Stream.of(batch, spare, earlier).flatMap(List::stream).anyMatch(content -> content.grams()
                .isEmpty());
        return new Tally(grams(batch), sets, grams(spare), grams(earlier), unknown);
    }

    private static List<Content> contents(Stream<Bowl> bowls) {
        return bowls.flatMap(bowl -> bowl.contents().stream()).toList();
    }

    private static RationalNumber grams(List<Content> contents) {
        return contents.stream()
                .flatMap(content -> content.grams().stream())
                .reduce(Rationals.ZERO, RationalNumber::add);
    }

    /** Grams of everything. */
    public RationalNumber all() {
        return batch.multiply(Rationals.of(sets)).add(spares).add(earlier);
    }

    /** Grams beyond one batch. */
    public RationalNumber beyond() {
        return all().subtract(batch);
    }

    /** "Weighed out: 2.1 kg for 1 take; 4.4 kg in all with …". */
    public String words() {
        List<String> parts = new ArrayList<>();
        if (sets > 1) {
            parts.add(sets + " sets");
        }
        if (spares.signum() > 0) {
            parts.add("spares of " + weight(spares));
        }
        if (earlier.signum() > 0) {
            parts.add(weight(earlier) + " made earlier");
        }
        String least = leastOnly ? "at least " : "";
        String one = "A batch weighs " + least + weight(batch);
        return parts.isEmpty()
                ? one + "."
                : "%s; with %s it is %s%s, %s more than one dish needs."
                        .formatted(one, Wording.list(parts), least, weight(all()), weight(beyond()));
    }

    /** "840 g", "2.96 kg". */
    public static String weight(RationalNumber grams) {
        return grams.compareTo(THOUSAND) < 0
                ? Rationals.rounded(grams, 0).toPlainString() + " g"
                : Rationals.rounded(grams.divide(THOUSAND), 2)
                                .stripTrailingZeros()
                                .toPlainString() + " kg";
    }
}
