package org.misecue.pantry;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What an ingredient may carry, as finely as any of the three lists names it, with the word that each list uses for it:
 * wheat is “cereals containing gluten: wheat” in the EU, “wheat” in the US, “wheat” and “gluten” in Australia and New
 * Zealand. A list without a word for it does not name it; that says nothing about a food being free of it. Sources: see
 * {@link AllergenList}.
 */
public enum Substance {
    WHEAT(Allergen.GLUTEN, "wheat", "wheat", "wheat", "gluten"),
    RYE(Allergen.GLUTEN, "rye", "", "gluten"),
    BARLEY(Allergen.GLUTEN, "barley", "", "gluten"),
    OATS(Allergen.GLUTEN, "oats", "", "gluten"),
    /** The cereal is not known: the US list is answered as if it were wheat, to be careful. */
    GLUTEN(Allergen.GLUTEN, "", "wheat", "wheat", "gluten"),
    CRUSTACEANS(Allergen.CRUSTACEANS, "", "crustacean shellfish", "crustacean"),
    EGGS(Allergen.EGGS, "", "eggs", "egg"),
    FISH(Allergen.FISH, "", "fish", "fish"),
    PEANUTS(Allergen.PEANUTS, "", "peanuts", "peanut"),
    SOYBEANS(Allergen.SOYBEANS, "", "soybeans", "soy"),
    MILK(Allergen.MILK, "", "milk", "milk"),
    ALMOND(Allergen.NUTS, "almonds", "tree nuts: almonds", "almond"),
    HAZELNUT(Allergen.NUTS, "hazelnuts", "tree nuts: hazelnuts", "hazelnut"),
    WALNUT(Allergen.NUTS, "walnuts", "tree nuts: walnuts", "walnut"),
    CASHEW(Allergen.NUTS, "cashews", "tree nuts: cashews", "cashew"),
    PECAN(Allergen.NUTS, "pecan nuts", "tree nuts: pecans", "pecan"),
    BRAZIL_NUT(Allergen.NUTS, "Brazil nuts", "tree nuts: Brazil nuts", "Brazil nut"),
    PISTACHIO(Allergen.NUTS, "pistachio nuts", "tree nuts: pistachios", "pistachio"),
    MACADAMIA(Allergen.NUTS, "macadamia nuts", "tree nuts: macadamia nuts", "macadamia"),
    /** Some nut, not known which: Australia and New Zealand ask for its own name. */
    NUTS(Allergen.NUTS, "", "tree nuts", "tree nuts, each by its name"),
    CELERY(Allergen.CELERY, "", ""),
    MUSTARD(Allergen.MUSTARD, "", ""),
    SESAME(Allergen.SESAME, "", "sesame", "sesame"),
    SULPHITES(Allergen.SULPHITES, "", "", "sulphites"),
    LUPIN(Allergen.LUPIN, "", "", "lupin"),
    MOLLUSCS(Allergen.MOLLUSCS, "", "", "mollusc"),
    /** Not among the EU's nuts. On the US list: from memory. */
    PINE_NUT("tree nuts: pine nuts", "pine nut"),
    /** On none of the three lists today; US labels counted it among the tree nuts until January 2025: from memory. */
    COCONUT(""),
    /** On none of the three lists today; US labels counted it among the tree nuts until January 2025: from memory. */
    CHESTNUT("");

    private final Optional<Allergen> allergen;
    private final String which;
    private final String us;
    private final List<String> auNz;

    Substance(Allergen allergen, String which, String us, String... auNz) {
        this.allergen = Optional.of(allergen);
        this.which = which;
        this.us = us;
        this.auNz = List.of(auNz);
    }

    Substance(String us, String... auNz) {
        this.allergen = Optional.empty();
        this.which = "";
        this.us = us;
        this.auNz = List.of(auNz);
    }

    /** As a row of the pantry writes it: {@code wheat}, {@code brazil nut}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static Optional<Substance> ofKey(String key) {
        return Arrays.stream(values())
                .filter(one -> one.key().equalsIgnoreCase(key))
                .findFirst();
    }

    /** Which of the EU's fourteen it is; empty for what the EU does not list. */
    public Optional<Allergen> allergen() {
        return allergen;
    }

    /** The words by which a list names it, such as “wheat” and “gluten”; empty where the list does not name it. */
    public List<String> named(AllergenList list) {
        return switch (list) {
            case EU ->
                allergen.map(one -> which.isEmpty() ? one.label() : one.label() + ": " + which).stream()
                        .toList();
            case US -> us.isEmpty() ? List.of() : List.of(us);
            case AU_NZ -> auNz;
        };
    }
}
