package org.misecue.episode;

import tech.units.indriya.function.RationalNumber;

public sealed interface Batch {
    record Times(RationalNumber factor) implements Batch {}

    record Makes(int pieces) implements Batch {}

    record Tin(String words) implements Batch {}

    static Batch written() {
        return new Times(RationalNumber.ONE);
    }
}
