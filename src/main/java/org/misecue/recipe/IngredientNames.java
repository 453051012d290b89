package org.misecue.recipe;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The phrases by which a method may call an ingredient: "light muscovado sugar", "muscovado sugar", "sugar".
 *
 * @param strong names that mean this ingredient
 * @param weak names that may mean it where no other ingredient answers to them
 */
record IngredientNames(Set<String> strong, Set<String> weak) {

    /** Last words that say less than the words before them: "vanilla extract" is called "the vanilla". */
    private static final Set<String> GENERIC = Set.of(
            "extract",
            "essence",
            "paste",
            "powder",
            "granule",
            "pod",
            "half",
            "purée",
            "puree",
            "pulp",
            "clove",
            "leaf",
            "flake",
            "chip",
            "kernel",
            "stick",
            "bean",
            "nib",
            "piece",
            "concentrate",
            "seed",
            "sprig",
            "drop");

    private static final Set<String> ADJECTIVES = Set.of(
            "large",
            "small",
            "medium",
            "icing",
            "caster",
            "granulated",
            "demerara",
            "muscovado",
            "unsalted",
            "salted",
            "fine",
            "plain",
            "dark",
            "light",
            "whole",
            "ground",
            "fresh",
            "dried",
            "baking",
            "instant",
            "soft",
            "cold",
            "warm",
            "hot",
            "boiling",
            "lukewarm",
            "tepid",
            "iced",
            "pure",
            "full-fat",
            "free-range",
            "roasted",
            "toasted",
            "raw",
            "golden",
            "white",
            "black",
            "brown",
            "red",
            "green",
            "strong",
            "powdered",
            "fast-action",
            "easy-bake",
            "active",
            "dry",
            "mixed",
            "candied",
            "ripe",
            "smoked",
            "unfed",
            "neutral",
            "thick",
            "flaky",
            "desiccated",
            "flaked",
            "blanched",
            "good",
            "good-quality",
            "runny",
            "clear",
            "smooth",
            "crunchy");
    /** Names whose last word alone means something else. */
    private static final Set<String> COMPOUNDS = Set.of(
            "peanut butter",
            "almond butter",
            "cocoa butter",
            "coconut milk",
            "condensed milk",
            "evaporated milk",
            "coconut oil",
            "coconut cream",
            "rose water",
            "orange blossom water",
            "orange flower water",
            "ice cream",
            "sour cream",
            "soured cream",
            "cream cheese",
            "baking powder",
            "baking soda",
            "mustard powder",
            "custard powder",
            "cream of tartar",
            "bicarbonate of soda",
            "almond milk",
            "oat milk",
            "sparkling water",
            "soda water");

    private static final Map<String, List<String>> ALSO = Map.ofEntries(
            Map.entry("bicarbonate of soda", List.of("bicarbonate", "bicarb", "soda", "baking soda")),
            Map.entry("baking soda", List.of("bicarbonate of soda", "bicarb", "soda")),
            Map.entry("cream of tartar", List.of("tartar")),
            Map.entry("purée", List.of("puree")),
            Map.entry("egg", List.of("egg white", "egg yolk", "white", "yolk", "egg wash")),
            Map.entry("lemon", List.of("lemon zest", "lemon juice", "zest", "juice", "lemon slice")),
            Map.entry("espresso powder", List.of("coffee", "espresso", "instant coffee")),
            Map.entry("espresso", List.of("coffee")),
            Map.entry("orange", List.of("orange zest", "orange juice", "zest", "juice")),
            Map.entry("lime", List.of("lime zest", "lime juice", "zest", "juice")));

    private static final Cued BEHIND = Cued.of("\\h(?:in|with|from)\\h.*");
    private static final Cued AND = Cued.of("\\h+(?:and|&)\\h+");

    /** Whether a word tells what kind or state a thing is in and never names one: "caster", "toasted". */
    static boolean isAdjective(String word) {
        return ADJECTIVES.contains(word) || word.endsWith("ed");
    }

    /** By its own words and by the other names that the pantry has for it. */
    static IngredientNames of(String ingredient, Larder larder) {
        Set<String> strong = new LinkedHashSet<>();
        Set<String> weak = new LinkedHashSet<>();
        if (ingredient.length() > IngredientLineParser.LONGEST) {
            return new IngredientNames(strong, weak); // a line that was not read names nothing
        }
        for (String each : sides(BEHIND.replaceFirst(Wording.of(ingredient), ""))) {
            add(each, strong, weak);
        }
        PantryPhrases phrases = PantryPhrases.of(larder.pantry());
        larder.find(ingredient).ifPresent(known -> weak.addAll(phrases.of(known)));
        weak.removeAll(strong);
        weak.remove("");
        return new IngredientNames(strong, weak);
    }

    /** "Lemon zest and juice" is lemon zest, and lemon juice; "salt and pepper" two things. */
    private static List<String> sides(Wording ingredient) {
        if (!AND.mayStandIn(ingredient)) {
            return List.of(ingredient.text());
        }
        String[] halves = AND.pattern().split(ingredient.text());
        List<String> sides = new ArrayList<>(List.of(halves));
        if (halves.length == 2 && halves[0].contains(" ") && !halves[1].contains(" ")) {
            sides.add(halves[0].substring(0, halves[0].lastIndexOf(' ')) + " " + halves[1]);
        }
        return sides;
    }

    private static void add(String ingredient, Set<String> strong, Set<String> weak) {
        Words words = Words.of(ingredient);
        int size = words.size();
        if (size == 0) {
            return;
        }
        String head = words.list().get(size - 1).singular();
        for (int from = 0; from < size; from++) {
            String phrase = words.phrase(from, size);
            boolean lone = from == size - 1 && size > 1;
            String longer = from > 0 ? words.phrase(from - 1, size) : phrase;
            if (lone && (COMPOUNDS.contains(longer) || head.equals("powder"))) {
                weak.add(phrase);
            } else {
                strong.add(phrase);
            }
            ALSO.getOrDefault(phrase, List.of()).forEach(weak::add);
        }
        if (GENERIC.contains(head)) {
            addBefore(words, strong);
        } else if (size > 1) {
            addBefore(words, weak);
        }
        for (String fruit : List.of("zest", "juice", "rind", "peel")) {
            if (head.equals(fruit) && size > 1) {
                weak.add(words.list().get(size - 2).singular());
            }
        }
        strong.remove("");
    }

    /** The telling words before the last: "coffee" of "instant coffee granules". */
    private static void addBefore(Words words, Set<String> names) {
        for (int at = 0; at < words.size() - 1; at++) {
            String word = words.list().get(at).singular();
            if (!ADJECTIVES.contains(word) && !word.equals("of") && word.length() > 2) {
                names.add(word);
            }
        }
    }
}
