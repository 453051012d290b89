package org.misecue.search;

import java.util.Optional;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.Unit;
import org.misecue.quantity.WrittenQuantity;

/**
 * An amount in a query.
 *
 * @param key its value
 * @param length how many characters of the query it is
 */
record AskedAmount(String key, int length) {

    private static final QuantityReader READER = new QuantityReader();

    /** What the text begins with, where that is an amount. */
    static Optional<AskedAmount> at(String text) {
        return READER.read(text).filter(written -> isAmount(written, text)).flatMap(written -> AmountKeys.asked(
                        written.quantity())
                .map(key -> new AskedAmount(key, written.end())));
    }

    /** A number at the end, with nothing after it to be counted, is only a word; so is the number in "a few". */
    private static boolean isAmount(WrittenQuantity written, String text) {
        if (written.quantity().dimension() == Dimension.SMIDGEN) {
            return false;
        }
        return written.quantity().unit() != Unit.EACH
                || written.packing().isEmpty()
                        && READER.beginsWithFigures(text)
                        && !text.substring(written.end()).isBlank();
    }
}
