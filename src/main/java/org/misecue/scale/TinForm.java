package org.misecue.scale;

import java.util.Optional;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/**
 * What makes a tin hold what it holds, besides its depth. Where a form is sold by a name that tells no exact volume, its
 * usual one is common practice, no source: two makers' two-pound loaf tins differ by a quarter.
 */
public sealed interface TinForm {

    /**
     * π as the ratio 355 ÷ 113, which is right to six decimal places. Between two round tins it cancels out, so their
     * factor is exact; between a round one and another the error is below a millionth.
     */
    RationalNumber PI = Rationals.of(355, 113);

    /** How deep a cake tin is that states no depth, in centimetres: 2 inches or 5 cm. */
    RationalNumber USUAL_DEPTH = Rationals.of(5);

    /** The area of the base in square centimetres; empty for what is not sold by its base. */
    default Optional<RationalNumber> area() {
        return Optional.empty();
    }

    /** How much goes in, in millilitres, as far as the form alone tells. */
    default RationalNumber usualVolume() {
        return area().orElse(Rationals.ZERO).multiply(USUAL_DEPTH);
    }

    /** Whether the volume is stated, and not merely usual. */
    default boolean statesVolume() {
        return false;
    }

    /** "20 cm round". */
    String words();

    /** @param diameter a length above zero */
    record Round(Quantity diameter) implements TinForm {
        public Round {
            above(diameter, Dimension.LENGTH);
        }

        @Override
        public Optional<RationalNumber> area() {
            return Optional.of(disc(diameter));
        }

        @Override
        public String words() {
            return QuantityWriter.text(diameter) + " round";
        }
    }

    /** @param side a length above zero */
    record Square(Quantity side) implements TinForm {
        public Square {
            above(side, Dimension.LENGTH);
        }

        @Override
        public Optional<RationalNumber> area() {
            return Optional.of(base(side).multiply(base(side)));
        }

        @Override
        public String words() {
            return QuantityWriter.text(side) + " square";
        }
    }

    /**
     * Oblong tins, and loaf tins by length and width.
     *
     * @param length above zero
     * @param width above zero
     */
    record Rectangle(Quantity length, Quantity width) implements TinForm {
        public Rectangle {
            above(length, Dimension.LENGTH);
            above(width, Dimension.LENGTH);
        }

        @Override
        public Optional<RationalNumber> area() {
            return Optional.of(base(length).multiply(base(width)));
        }

        @Override
        public String words() {
            return QuantityWriter.text(length) + " × " + QuantityWriter.text(width);
        }
    }

    /**
     * A ring: its hole takes about a quarter of the base, and it is about 8 cm deep (common practice, no source: a 25 cm
     * one holds some 2.9 l).
     *
     * @param diameter over all, above zero
     */
    record Ring(Quantity diameter) implements TinForm {

        private static final RationalNumber BESIDE_THE_HOLE = Rationals.of(3, 4);
        private static final RationalNumber USUAL_RING_DEPTH = Rationals.of(8);

        public Ring {
            above(diameter, Dimension.LENGTH);
        }

        @Override
        public Optional<RationalNumber> area() {
            return Optional.of(disc(diameter).multiply(BESIDE_THE_HOLE));
        }

        @Override
        public RationalNumber usualVolume() {
            return area().orElseThrow().multiply(USUAL_RING_DEPTH);
        }

        @Override
        public String words() {
            return QuantityWriter.text(diameter) + " ring";
        }
    }

    /**
     * A loaf tin sold by the weight of its loaf.
     *
     * @param loaf a mass above zero
     */
    record Loaf(Quantity loaf) implements TinForm {

        /** Of each pound, in millilitres. */
        private static final RationalNumber ROOM = Rationals.of(750);

        public Loaf {
            above(loaf, Dimension.MASS);
        }

        @Override
        public RationalNumber usualVolume() {
            return pounds().multiply(ROOM);
        }

        /** Half a kilogram is called a pound by those who sell tins. */
        RationalNumber pounds() {
            boolean metric = loaf.unit() == Unit.GRAM || loaf.unit() == Unit.KILOGRAM;
            RationalNumber pounds =
                    loaf.in(Unit.POUND, Household.METRIC).amount().least().orElseThrow();
            RationalNumber half = Rationals.of(1, 2);
            RationalNumber near = Rationals.nearest(pounds, half);
            return metric && near.signum() > 0 ? near : pounds;
        }

        @Override
        public String words() {
            return QuantityWriter.text(loaf) + " loaf";
        }
    }

    /**
     * A sheet of holes.
     *
     * @param number 1 or more
     * @param size of each
     */
    record Holes(int number, HoleSize size) implements TinForm {

        public Holes {
            if (number < 1) {
                throw new IllegalArgumentException("a tin has one hole at least, not " + number);
            }
        }

        @Override
        public RationalNumber usualVolume() {
            return Rationals.of((long) number * size.millilitres());
        }

        @Override
        public String words() {
            return number + "-hole " + size.word();
        }
    }

    /** How large a hole is; millilitres to the brim, common practice, no source. */
    enum HoleSize {
        MINI("mini muffin", 35),
        BUN("bun", 50),
        MUFFIN("muffin", 110),
        JUMBO("jumbo muffin", 220);

        private final String word;
        private final int millilitres;

        HoleSize(String word, int millilitres) {
            this.word = word;
            this.millilitres = millilitres;
        }

        public String word() {
            return word;
        }

        public int millilitres() {
            return millilitres;
        }
    }

    /**
     * Whatever holds a measured amount of water.
     *
     * @param volume above zero
     */
    record Holds(Quantity volume) implements TinForm {
        public Holds {
            above(volume, Dimension.VOLUME);
        }

        @Override
        public RationalNumber usualVolume() {
            return base(volume);
        }

        @Override
        public boolean statesVolume() {
            return true;
        }

        @Override
        public String words() {
            return QuantityWriter.text(volume);
        }
    }

    private static RationalNumber disc(Quantity diameter) {
        return base(diameter).multiply(base(diameter)).multiply(PI).divide(Rationals.of(4));
    }

    /** Centimetres or millilitres. */
    private static RationalNumber base(Quantity size) {
        return size.leastInBase(Household.METRIC).orElse(Rationals.ZERO);
    }

    private static void above(Quantity size, Dimension dimension) {
        if (size.dimension() != dimension || base(size).signum() <= 0) {
            throw new IllegalArgumentException(
                    "a tin's size is more than nothing, and this is " + QuantityWriter.text(size));
        }
    }
}
