package org.misecue.pantry;

import java.util.Arrays;
import java.util.Optional;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/** An egg without its shell, and its share that is white or yolk: USDA SR26 01124 and 01125, 33 and 17 g of 50. */
enum EggPart {
    WHOLE("egg", 100),
    WHITE("egg white", 66),
    YOLK("egg yolk", 34);

    private final String name;
    private final long percent;

    EggPart(String name, long percent) {
        this.name = name;
        this.percent = percent;
    }

    /** By the name of the pantry's row. */
    static Optional<EggPart> named(String name) {
        return Arrays.stream(values()).filter(part -> part.name.equals(name)).findFirst();
    }

    RationalNumber of(RationalNumber egg) {
        return egg.multiply(Rationals.of(percent, 100));
    }
}
