package org.misecue.prep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.scale.ScaledRecipe;
import org.misecue.scale.WeighedLine;

/**
 * What to buy: the lines merged by ingredient over components and takes, then rounded up. Different kinds of one thing
 * stay apart, since unsalted butter is not salted butter; a bare "butter" goes with the only kind on the list.
 */
final class ShoppingList {

    /** The aisle of what nobody buys: tap water. */
    private static final String NOT_BOUGHT = "none";

    private static final String OTHER = "other";

    private final Pantry pantry;
    private final PrepSettings settings;
    private final Packer packer;

    ShoppingList(Pantry pantry, PrepSettings settings) {
        this.pantry = pantry;
        this.settings = settings;
        this.packer = new Packer(pantry, settings.household());
    }

    /** @param extras what is wanted once, besides the sets of bowls */
    List<Purchase> of(ScaledRecipe scaled, List<Content> extras) {
        Map<String, List<WeighedLine>> byName = new LinkedHashMap<>();
        List<WeighedLine> lines = Stream.concat(
                        scaled.lines().stream()
                                .map(line ->
                                        line.times(Rationals.of(settings.sets().all()))),
                        extras.stream().map(Content::asLine))
                .toList();
        for (WeighedLine line : lines) {
            byName.computeIfAbsent(buyingName(line.written().ingredient()), key -> new ArrayList<>())
                    .add(line);
        }
        return merged(byName).entrySet().stream()
                .flatMap(entry -> purchases(entry.getKey(), entry.getValue()).stream())
                .filter(purchase -> !purchase.aisle().equals(NOT_BOUGHT))
                .sorted(Comparator.comparing((Purchase purchase) -> Aisles.place(purchase.aisle()))
                        .thenComparing(Purchase::ingredient))
                .toList();
    }

    /** The name as written; the pantry's where it is the same in another number or spelling. */
    private String buyingName(String written) {
        String lower = written.toLowerCase(Locale.ROOT).strip();
        return pantry.find(lower)
                .map(Ingredient::name)
                .filter(name -> lower.equals(name + "s") || lower.equals(name + "es"))
                .orElse(lower);
    }

    /** The first of the names as the recipe writes it, in case the key is only its singular. */
    private static String asWritten(String key, List<WeighedLine> lines) {
        return lines.stream()
                .map(line -> line.written().ingredient().strip())
                .filter(written -> written.toLowerCase(Locale.ROOT).startsWith(key))
                .findFirst()
                .orElse(key);
    }

    /** Puts a generic name to the only specific one of the same pantry row. */
    private Map<String, List<WeighedLine>> merged(Map<String, List<WeighedLine>> byName) {
        Map<String, List<WeighedLine>> out = new LinkedHashMap<>();
        byName.forEach((name, lines) -> {
            Optional<String> row = pantry.find(name).map(Ingredient::name);
            List<String> kinds = byName.keySet().stream()
                    .filter(other -> !other.equals(name) && row.isPresent())
                    .filter(other -> other.endsWith(" " + name)
                            && pantry.find(other).map(Ingredient::name).equals(row))
                    .toList();
            String key = kinds.size() == 1 ? kinds.get(0) : name;
            out.computeIfAbsent(key, any -> new ArrayList<>()).addAll(lines);
        });
        return out;
    }

    private List<Purchase> purchases(String key, List<WeighedLine> lines) {
        String aisle = pantry.find(key).map(Ingredient::aisle).orElse(OTHER);
        List<WeighedLine> weighed = lines.stream()
                .filter(line -> line.weighed().flatMap(q -> q.amount().most()).isPresent())
                .toList();
        List<Quantity> sums = new Totals(settings.household()).of(weighed);
        List<String> remarks = remarks(lines, !weighed.isEmpty());
        String name = asWritten(key, lines);
        if (sums.isEmpty()) {
            return List.of(
                    new Purchase(aisle, name, Optional.empty(), packer.pack(key, aisle, Optional.empty()), remarks));
        }
        return sums.stream()
                .filter(sum -> !isPinchBesides(sum, sums.size()))
                .map(sum -> purchase(aisle, name, sum, packer.pack(key, aisle, Optional.of(sum)), remarks))
                .toList();
    }

    /** Packs do the rounding up; what is sold loose is rounded up itself. */
    private static Purchase purchase(String aisle, String name, Quantity need, Packs packs, List<String> remarks) {
        Quantity shown = packs.packs().isEmpty() ? Totals.roundedUp(need) : Totals.wholeUp(need);
        return new Purchase(aisle, name, Optional.of(shown), packs, remarks);
    }

    /** A pinch beside a weight is no line of its own. */
    private static boolean isPinchBesides(Quantity sum, int sums) {
        return sums > 1 && sum.unit() == Unit.PINCH;
    }

    private static List<String> remarks(List<WeighedLine> lines, boolean andSome) {
        TreeSet<String> remarks = new TreeSet<>();
        for (WeighedLine line : lines) {
            if (andSome
                    && line.weighed()
                            .filter(quantity -> quantity.unit() == Unit.PINCH)
                            .isPresent()
                    && lines.size() > 1) {
                remarks.add("and a pinch");
            }
            if (line.weighed().flatMap(quantity -> quantity.amount().most()).isEmpty()) {
                String purpose = line.written().preparation();
                remarks.add((andSome ? "and some" : "some") + (purpose.isBlank() ? "" : " " + purpose));
            }
            if (!line.written().alternatives().isEmpty()) {
                remarks.add("or " + String.join(" or ", line.written().alternatives()));
            }
            if (line.written().optional()) {
                remarks.add("optional");
            }
        }
        return List.copyOf(remarks);
    }
}
