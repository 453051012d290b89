package org.misecue.scale;

import java.util.Optional;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/**
 * One tin, or several alike.
 *
 * @param shape of the base
 * @param length the diameter, the side, or the longer side; in any unit of length, more than zero
 * @param width the shorter side of a rectangle; the same as the length otherwise
 * @param depth how high it is filled, or how deep it is; empty where not stated
 * @param count how many tins, 1 or more
 */
public record Tin(TinShape shape, Quantity length, Quantity width, Optional<Quantity> depth, int count) {

    /**
     * π as the ratio 355 ÷ 113, which is right to six decimal places. Between two round tins it cancels out, so their
     * factor is exact; between a round one and another the error is below a millionth.
     */
    private static final RationalNumber PI = Rationals.of(355, 113);

    private static final RationalNumber QUARTER = Rationals.of(1, 4);

    /** @throws IllegalArgumentException if a side is not a length above zero, or there is no tin */
    public Tin {
        centimetres(length);
        centimetres(width);
        depth.ifPresent(Tin::centimetres);
        if (count < 1) {
            throw new IllegalArgumentException("one tin at least is needed, not " + count);
        }
    }

    public static Tin round(Quantity diameter) {
        return new Tin(TinShape.ROUND, diameter, diameter, Optional.empty(), 1);
    }

    public static Tin square(Quantity side) {
        return new Tin(TinShape.SQUARE, side, side, Optional.empty(), 1);
    }

    public static Tin rectangle(Quantity length, Quantity width) {
        return new Tin(TinShape.RECTANGLE, length, width, Optional.empty(), 1);
    }

    public Tin deep(Quantity depth) {
        return new Tin(shape, length, width, Optional.of(depth), count);
    }

    public Tin times(int tins) {
        return new Tin(shape, length, width, depth, tins);
    }

    /** The area of all bases together, in square centimetres. */
    public RationalNumber area() {
        RationalNumber one = centimetres(length).multiply(centimetres(width));
        RationalNumber base = shape == TinShape.ROUND ? one.multiply(PI).multiply(QUARTER) : one;
        return base.multiply(Rationals.of(count));
    }

    /** The volume of all tins together, in millilitres; empty where the depth is not stated. */
    public Optional<RationalNumber> volume() {
        return depth.map(deep -> area().multiply(centimetres(deep)));
    }

    /** How many times as much goes into the other: by volume where both depths are stated, otherwise by area. */
    public RationalNumber factorTo(Tin other) {
        if (depth.isPresent() && other.depth.isPresent()) {
            return other.volume().orElseThrow().divide(volume().orElseThrow());
        }
        return other.area().divide(area());
    }

    private static RationalNumber centimetres(Quantity side) {
        return side.in(Unit.CENTIMETRE, Household.METRIC)
                .amount()
                .least()
                .filter(value -> value.signum() > 0)
                .orElseThrow(() -> new IllegalArgumentException(
                        "a tin's size is a length above zero, not " + QuantityWriter.text(side)));
    }

    /** "20 cm round", "33 × 23 cm", "2 × 20 cm round". */
    @Override
    public String toString() {
        String tins = count == 1 ? "" : count + " × ";
        return switch (shape) {
            case ROUND -> tins + QuantityWriter.text(length) + " round";
            case SQUARE -> tins + QuantityWriter.text(length) + " square";
            case RECTANGLE -> tins + QuantityWriter.text(length) + " × " + QuantityWriter.text(width);
        };
    }
}
