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
 * @param form what its base is, or what it holds
 * @param depth of its wall, a length above zero; empty where not stated
 * @param count how many tins, 1 or more
 */
public record Tin(TinForm form, Optional<Quantity> depth, int count) {

    /** By what two tins are held against each other; the sentence goes with the factor. */
    enum Measure {
        AREA,
        VOLUME,
        /** Sheets of like holes, and loaf tins, by what they are sold as. */
        NAME,
        /** By what such tins usually hold: a guess that water can check. */
        USUAL
    }

    /** @throws IllegalArgumentException if the depth is no length above zero, or there is no tin */
    public Tin {
        depth.ifPresent(Tin::centimetres);
        if (count < 1) {
            throw new IllegalArgumentException("one tin at least is needed, not " + count);
        }
    }

    public static Tin of(TinForm form) {
        return new Tin(form, Optional.empty(), 1);
    }

    public static Tin round(Quantity diameter) {
        return of(new TinForm.Round(diameter));
    }

    public static Tin square(Quantity side) {
        return of(new TinForm.Square(side));
    }

    public static Tin rectangle(Quantity length, Quantity width) {
        return of(new TinForm.Rectangle(length, width));
    }

    public Tin deep(Quantity wall) {
        return new Tin(form, Optional.of(wall), count);
    }

    public Tin times(int tins) {
        return new Tin(form, depth, tins);
    }

    /** The area of all bases together, in square centimetres; empty for tins that are not sold by their base. */
    public Optional<RationalNumber> area() {
        return form.area().map(one -> one.multiply(Rationals.of(count)));
    }

    /** The volume of all tins together, in millilitres; empty where it is not stated. */
    public Optional<RationalNumber> volume() {
        return form.statesVolume()
                ? Optional.of(form.usualVolume().multiply(Rationals.of(count)))
                : area().flatMap(base -> depth.map(deep -> base.multiply(centimetres(deep))));
    }

    /** The volume in millilitres, or what such tins usually hold. */
    RationalNumber taken() {
        return volume().orElseGet(() -> form.usualVolume().multiply(Rationals.of(count)));
    }

    /** How many times as much goes into the other tin: see {@link #measureTo} for by what. */
    public RationalNumber factorTo(Tin other) {
        return switch (measureTo(other)) {
            case VOLUME -> other.volume().orElseThrow().divide(volume().orElseThrow());
            case AREA -> other.area().orElseThrow().divide(area().orElseThrow());
            case NAME -> other.named().divide(named());
            case USUAL -> other.taken().divide(taken());
        };
    }

    /** By volume where both state it, otherwise by the area of the bases, by their names, or by what is usual. */
    Measure measureTo(Tin other) {
        if (volume().isPresent() && other.volume().isPresent()) {
            return Measure.VOLUME;
        }
        boolean rings = form instanceof TinForm.Ring != other.form instanceof TinForm.Ring;
        if (area().isPresent() && other.area().isPresent() && !rings) {
            return Measure.AREA;
        }
        boolean loaves = form instanceof TinForm.Loaf && other.form instanceof TinForm.Loaf;
        boolean holes = form instanceof TinForm.Holes one
                && other.form instanceof TinForm.Holes two
                && one.size() == two.size();
        return loaves || holes ? Measure.NAME : Measure.USUAL;
    }

    private RationalNumber named() {
        RationalNumber one = form instanceof TinForm.Loaf loaf ? loaf.pounds() : form.usualVolume();
        return one.multiply(Rationals.of(count));
    }

    private static RationalNumber centimetres(Quantity side) {
        return side.in(Unit.CENTIMETRE, Household.METRIC)
                .amount()
                .least()
                .filter(value -> value.signum() > 0)
                .orElseThrow(() -> new IllegalArgumentException(
                        "a tin's depth is a length above zero, not " + QuantityWriter.text(side)));
    }

    /** "20 cm round, 5 cm deep", "33 cm × 23 cm", "2 × 20 cm round". */
    @Override
    public String toString() {
        return (count == 1 ? "" : count + " × ")
                + form.words()
                + depth.map(deep -> ", " + QuantityWriter.text(deep) + " deep").orElse("");
    }
}
