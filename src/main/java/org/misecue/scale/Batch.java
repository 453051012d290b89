package org.misecue.scale;

import java.util.Optional;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.WrittenQuantity;
import tech.units.indriya.function.RationalNumber;

/** The batch that is wanted. */
public sealed interface Batch {

    /** No batch is larger or smaller than this many times the recipe: beyond it a figure was mistyped. */
    RationalNumber MOST = Rationals.of(100);

    RationalNumber LEAST = Rationals.of(1, 100);

    /** As written. */
    Batch WRITTEN = new Factor(Rationals.ONE);

    /** So many times the written batch; more than zero. */
    record Factor(RationalNumber times) implements Batch {
        public Factor {
            requireAboveZero(times);
        }
    }

    /**
     * Enough for a yield.
     *
     * @param count how many, more than zero
     * @param what pieces of what: "buns"; empty for whatever the recipe counts
     */
    record Makes(RationalNumber count, String what) implements Batch {
        public Makes {
            requireAboveZero(count);
        }
    }

    /** Enough to fill a tin as the recipe fills its own. */
    record InTin(Tin tin) implements Batch {}

    /**
     * As much as what is left of one ingredient allows.
     *
     * @param ingredient its name, as on a recipe line
     * @param left how much there is, more than zero, a mass, a measure or a number
     */
    record Left(String ingredient, Quantity left) implements Batch {
        public Left {
            requireAboveZero(left.amount().least().orElse(Rationals.ZERO));
        }
    }

    /**
     * A factor in words: "2", "1.5", "½", "× 3".
     *
     * @param place where the words stand, for the error
     */
    static Batch times(Place place, String words) {
        return new Factor(number(words.replaceFirst("^\\s*[x×]\\s*", ""))
                .filter(factor -> factor.compareTo(LEAST) >= 0 && factor.compareTo(MOST) <= 0)
                .orElseThrow(() -> new BadInput(
                        place,
                        "a batch is from 0.01 to 100 times the recipe, such as 2 or 0.5, not “" + words + "”.")));
    }

    /** A yield in words: "30", "30 buns". */
    static Batch makes(Place place, String words) {
        String[] parts = words.strip().split("\\s+", 2);
        return new Makes(
                number(parts[0])
                        .orElseThrow(() -> new BadInput(
                                place, "a yield is a number, such as 30 or 30 buns, not “" + words + "”.")),
                parts.length > 1 ? parts[1] : "");
    }

    /** A tin in words: "20 cm round", "33 × 23 cm", "two 20 cm round, 5 cm deep", "2 lb loaf", "12-hole muffin", "25 cm ring". */
    static Batch tin(Place place, String words) {
        return new InTin(TinReader.read(words)
                .orElseThrow(() -> new BadInput(
                        place,
                        "a tin is a size and a shape, such as 20 cm round, 33 × 23 cm, 2 lb loaf or 12-hole"
                                + " muffin, not “" + words
                                + "”.")));
    }

    /** What is left of one ingredient in words: "310 g butter", "4 eggs". */
    static Batch left(Place place, String words) {
        Optional<WrittenQuantity> read = new QuantityReader()
                .read(words)
                .filter(written -> written.quantity().amount().least().isPresent())
                .filter(written -> !words.substring(written.end()).isBlank());
        WrittenQuantity written = read.orElseThrow(() -> new BadInput(
                place, "what is left is an amount and a name, such as 310 g butter, not “" + words + "”."));
        return new Left(words.substring(written.end()).strip(), written.quantity());
    }

    private static Optional<RationalNumber> number(String words) {
        String text = words.strip().replace("½", ".5").replace("¼", ".25").replace("¾", ".75");
        if (!text.matches("\\d{0,6}(?:\\.\\d{1,6})?") || text.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Rationals.of(text)).filter(value -> value.signum() > 0);
    }

    private static void requireAboveZero(RationalNumber value) {
        if (value.signum() <= 0) {
            throw new IllegalArgumentException("a batch is more than nothing, not " + Rationals.decimal(value));
        }
    }
}
