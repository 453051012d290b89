package org.misecue.pantry;

import java.util.List;
import java.util.Locale;

/**
 * Whose eggs a recipe means. Every country sells other weights under the same words, and a recipe that names no size
 * means the usual one.
 */
public enum EggMarket {
    /** The EU and the UK, by {@link EggClass}; small and extra large are open on one side, their ends are from memory. */
    EU(
            EggSize.MIDDLE + "EU and UK weight class",
            EggSize.inShell("medium", EggClass.MEDIUM.fromGrams(), EggClass.LARGE.fromGrams()),
            EggSize.inShell("small", 43, EggClass.MEDIUM.fromGrams()),
            EggSize.inShell("large", EggClass.LARGE.fromGrams(), EggClass.VERY_LARGE.fromGrams()),
            EggSize.inShell("extra large", EggClass.VERY_LARGE.fromGrams(), 83)),
    /** USDA minimum ounces per dozen, small 18 to jumbo 30 (egg-safety page), as whole grams per egg. */
    US(
            "USDA SR26 01123, without shell; white and yolk 66 and 34 % of it (01124, 01125)",
            EggSize.published("large", 57, 64, 50),
            EggSize.published("small", 43, 50, 38),
            EggSize.published("medium", 50, 57, 44),
            EggSize.published("extra large", 64, 71, 56),
            EggSize.published("jumbo", 71, 78, 63)),
    /** By the box, 600 or 700 g a dozen: from memory. */
    AU(
            EggSize.MIDDLE + "Australian box size, from memory",
            EggSize.inShell("extra large", 58, 67),
            EggSize.inShell("medium", 43, 50),
            EggSize.inShell("large", 50, 58),
            EggSize.inShell("jumbo", 67, 76));

    private final String source;
    private final EggSize usual;
    private final List<EggSize> others;

    EggMarket(String source, EggSize usual, EggSize... others) {
        this.source = source;
        this.usual = usual;
        this.others = List.of(others);
    }

    /** The eggs of a language's country; those of the EU and the UK where it names none of the others. */
    public static EggMarket of(Locale language) {
        return switch (language.getCountry()) {
            case "US", "CA" -> US;
            case "AU", "NZ" -> AU;
            default -> EU;
        };
    }

    /** An egg, or a part of one, of the size that the text names; what is no egg, and an own weight, is left alone. */
    Ingredient weighed(Ingredient ingredient, String text) {
        return EggPart.named(ingredient.name())
                .filter(part -> isOurs(ingredient))
                .map(part -> ingredient.weighing(List.of(sizeIn(text).weight(part, source))))
                .orElse(ingredient);
    }

    private static boolean isOurs(Ingredient egg) {
        return Pantry.standard()
                .named(egg.name())
                .filter(row -> row.weights().equals(egg.weights()))
                .isPresent();
    }

    /** "Extra large" before "large"; a size that is not sold here is taken as the usual one. */
    private EggSize sizeIn(String text) {
        String words = " " + String.join(" ", Names.words(text)) + " ";
        String plain = words.replace(" very large ", " extra large ").replace(" xl ", " extra large ");
        EggSize found = usual;
        for (EggSize size : others) {
            boolean finer = !plain.contains(" " + found.word() + " ")
                    || size.word().length() > found.word().length();
            if (plain.contains(" " + size.word() + " ") && finer) {
                found = size;
            }
        }
        return found;
    }
}
