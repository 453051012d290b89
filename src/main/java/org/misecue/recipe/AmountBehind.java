package org.misecue.recipe;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.WrittenQuantity;

/**
 * An amount that stands behind the name: "Butter – 100 g", "flour: 200 g, sifted".
 *
 * @param amount what was read
 * @param rest the line without it
 */
record AmountBehind(WrittenQuantity amount, String rest) {

    private static final Pattern START = Pattern.compile("(?<divider>\\h*[:,–—-]\\h+|\\h+)(?=[\\d½¼¾⅓⅔⅛])");

    static Optional<AmountBehind> in(String text, QuantityReader quantities) {
        Matcher start = START.matcher(text);
        while (start.find()) {
            String from = text.substring(start.end());
            Optional<WrittenQuantity> written =
                    quantities.read(from).filter(found -> measures(found, start.group("divider")));
            if (start.start() > 0 && written.isPresent()) {
                String behind = from.substring(written.get().end());
                boolean ends = behind.isBlank() || behind.matches("\\h*[,;(].*");
                if (ends) {
                    return Optional.of(new AmountBehind(written.get(), text.substring(0, start.start()) + behind));
                }
            }
        }
        return Optional.empty();
    }

    /** Pieces need a divider, "eggs: 3"; a bare number behind a name is part of it, "type 00 flour 1". */
    private static boolean measures(WrittenQuantity written, String divider) {
        Dimension dimension = written.quantity().dimension();
        return dimension == Dimension.MASS
                || dimension == Dimension.VOLUME
                || (dimension == Dimension.COUNT && divider.strip().matches("[:–—-]"));
    }
}
