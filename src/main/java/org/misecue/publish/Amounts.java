package org.misecue.publish;

import java.util.Locale;
import org.misecue.quantity.CupsAndSpoons;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;

/** Amounts as they are published in one language. */
interface Amounts {

    String text(Quantity quantity);

    /** The same in cups and spoons as a person fills them: "1 cup + 3 tbsp". */
    String spoons(Quantity quantity, Household household);

    /** English as the program writes it everywhere; other languages by the rules of ICU. */
    static Amounts in(Labels labels) {
        return labels.language().getLanguage().equals(Locale.ENGLISH.getLanguage())
                ? ENGLISH
                : new ForeignAmounts(labels);
    }

    Amounts ENGLISH = new Amounts() {
        @Override
        public String text(Quantity quantity) {
            return QuantityWriter.text(quantity);
        }

        @Override
        public String spoons(Quantity quantity, Household household) {
            return CupsAndSpoons.text(quantity, household);
        }
    };
}
