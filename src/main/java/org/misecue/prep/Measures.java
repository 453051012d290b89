package org.misecue.prep;

import java.util.Optional;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/** Amounts as the sheets print them. */
public final class Measures {

    private static final RationalNumber SMALL = Rationals.of(10);

    private Measures() {}

    public static String text(Quantity quantity) {
        return QuantityWriter.text(quantity);
    }

    /** The weight to add to a spoon or a piece: "18 g"; empty for what is weighed anyway, or where it is unknown. */
    public static String besides(Content content) {
        Unit unit = content.weighed().unit();
        Optional<RationalNumber> grams = content.grams();
        if (grams.isEmpty() || unit == Unit.GRAM || unit == Unit.KILOGRAM) {
            return "";
        }
        int places = grams.get().compareTo(SMALL) < 0 ? 1 : 0;
        return Rationals.rounded(grams.get(), places).toPlainString() + " g";
    }
}
