package org.misecue.compare;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.misecue.compare.Attacher.Place;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.SpokenQuantity;
import tech.units.indriya.function.RationalNumber;

/** The turns of phrase in which journeys are told. */
final class Telling {

    private static final RationalNumber QUARTER = Rationals.of(1, 4);
    private static final RationalNumber HUNDRED = Rationals.of(100);

    private Telling() {}

    static String score(double score) {
        return String.format(Locale.ROOT, "%.1f", score);
    }

    /** "“butter”, 3 words before (9.1)". */
    static String by(Place place) {
        NameHit name = place.name();
        SpokenQuantity said = place.said();
        String distance = name.end() <= said.start()
                ? words(said.start() - name.end(), "before")
                : name.start() >= said.end() ? words(name.start() - said.end(), "after") : "in the same words";
        return "“" + name.name() + "” " + distance + " (" + score(place.score()) + ")";
    }

    private static String words(int between, String direction) {
        return between == 0 ? "right " + direction + " it" : (between + 1) + " words " + direction + " it";
    }

    /** What was understood: "heard as 4 tbsp", "heard as 1 spoonful", "heard as a share". */
    static String heard(SpokenQuantity said) {
        String amount = QuantityWriter.text(said.quantity().orElse(new Quantity(said.amount(), Unit.EACH)));
        return "heard as "
                + switch (said.manner()) {
                    case SHARE, PERCENT -> "a share";
                    case SPOONS -> amount + (amount.equals("1") ? " spoonful" : " spoonfuls");
                    case PACKED -> amount + (amount.equals("1") ? " pack" : " packs");
                    default -> amount;
                };
    }

    static String all(List<Ledger.Entry> standing) {
        return standing.stream()
                .map(entry -> QuantityWriter.text(entry.quantity()))
                .collect(Collectors.joining(" and "));
    }

    /** "points at 100 g of caster sugar", "points at ½ of 100 g of caster sugar". */
    static String pointed(RationalNumber factor, Quantity base, Set<Integer> lines, Hearing heard) {
        String whose = lines.isEmpty()
                ? ""
                : " of " + lines.stream().map(heard::lineName).sorted().collect(Collectors.joining(", "));
        String times = factor.equals(Rationals.ONE)
                ? ""
                : factor.compareTo(Rationals.ONE) > 0 ? times(factor) + " × " : times(factor) + " of ";
        return "points at " + times + QuantityWriter.text(base) + whose;
    }

    /** Percentages are told as such; halves, quarters and thirds as fractions. */
    private static String times(RationalNumber factor) {
        boolean percent = Rationals.isWhole(factor.multiply(HUNDRED)) && !Rationals.isWhole(factor.divide(QUARTER));
        return percent
                ? Rationals.rounded(factor.multiply(HUNDRED), 0).toPlainString() + " %"
                : QuantityWriter.number(factor, Unit.EACH);
    }

    static String sentence(String clauses) {
        return clauses.substring(0, 1).toUpperCase(Locale.ROOT) + clauses.substring(1) + ".";
    }
}
