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

    private static final RationalNumber THOUSAND = Rationals.of(1000);

    private Measures() {}

    public static String text(Quantity quantity) {
        return QuantityWriter.text(quantity);
    }

    /** "1000 g" as "1 kg", from a kilogram or a litre up. */
    static Quantity large(Quantity quantity) {
        Unit large =
                switch (quantity.unit()) {
                    case GRAM -> Unit.KILOGRAM;
                    case MILLILITRE -> Unit.LITRE;
                    default -> quantity.unit();
                };
        Optional<RationalNumber> value = quantity.amount().least().filter(size -> size.compareTo(THOUSAND) >= 0);
        return large == quantity.unit() || value.isEmpty()
                ? quantity
                : Quantity.of(value.get().divide(THOUSAND), large);
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
