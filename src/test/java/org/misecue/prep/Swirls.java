package org.misecue.prep;

import static org.misecue.quantity.Unit.CELSIUS;
import static org.misecue.quantity.Unit.CENTIMETRE;
import static org.misecue.quantity.Unit.EACH;
import static org.misecue.quantity.Unit.GRAM;
import static org.misecue.quantity.Unit.MILLILITRE;
import static org.misecue.quantity.Unit.MINUTE;
import static org.misecue.quantity.Unit.PINCH;
import static org.misecue.quantity.Unit.TABLESPOON;
import static org.misecue.quantity.Unit.TEASPOON;

import org.misecue.quantity.Quantity;
import org.misecue.recipe.Setting;

/** An invented bake that has everything: a dry mix, parts, eggs, proving, a filling, an icing, things to hand. */
public final class Swirls {

    private Swirls() {}

    public static TestKitchen recipe() {
        return recipe("Plum and cardamom swirls");
    }

    public static TestKitchen recipe(String title) {
        return new TestKitchen(title)
                .component("dough")
                .line("500", GRAM, "strong white bread flour", "")
                .line("1", TEASPOON, "fine salt", "")
                .line("1.5", TEASPOON, "ground cardamom", "")
                .line("7", GRAM, "fast-action dried yeast", "")
                .line("60", GRAM, "caster sugar", "")
                .line("250", MILLILITRE, "whole milk", "warmed")
                .line("75", GRAM, "unsalted butter", "softened")
                .line("1", EACH, "large egg", "at room temperature")
                .component("filling")
                .line("300", GRAM, "plums", "stoned and diced")
                .line("80", GRAM, "light brown sugar", "")
                .line("50", GRAM, "unsalted butter", "softened")
                .line("1", TABLESPOON, "cornflour", "")
                .component("icing")
                .line("120", GRAM, "icing sugar", "sifted")
                .line("3", TABLESPOON, "double cream", "")
                .line("1", PINCH, "salt", "")
                .unmeasured("flaked almonds", "to scatter")
                .unmeasured("butter", "for greasing")
                .step(
                        "Whisk the flour, salt and cardamom together, then stir in the yeast and sugar.",
                        "whisk",
                        5,
                        0,
                        "0/0",
                        "0/1",
                        "0/2",
                        "0/3",
                        "0/4")
                .step(
                        "Add three quarters of the milk, the egg and the butter and knead for 10 minutes, adding the rest"
                                + " of the milk if the dough is dry.",
                        "knead",
                        15,
                        0,
                        "0/5/three quarters",
                        "0/5/the rest",
                        "0/7",
                        "0/6")
                .step("Cover and prove for 1 hour, until doubled.", "prove", 2, 60)
                .setting(Setting.Kind.DURATION, Quantity.of(60, MINUTE), "prove", 1)
                .step(
                        "Simmer the plums with half of the sugar until jammy. Stir in the cornflour and cool.",
                        "simmer cool",
                        10,
                        20,
                        "1/0",
                        "1/1/half",
                        "1/3")
                .setting(Setting.Kind.DURATION, Quantity.of(20, MINUTE), "cool", 1)
                .step(
                        "Roll out to a rectangle of 40 × 30 cm, spread with the butter, the rest of the sugar and the plums,"
                                + " roll up and cut into 12. Set in a greased 23 cm square tin.",
                        "roll-out shape cut grease",
                        15,
                        0,
                        "1/2",
                        "1/1/the rest",
                        "2/4")
                .setting(Setting.Kind.PAN, Quantity.of(23, CENTIMETRE), "square tin", 1)
                .step(
                        "Heat the oven to 180 °C. Bake for 25 minutes, until golden, then cool in the tin.",
                        "bake cool",
                        3,
                        40)
                .setting(Setting.Kind.OVEN_TEMPERATURE, Quantity.of(180, CELSIUS), "", 1)
                .setting(Setting.Kind.DURATION, Quantity.of(25, MINUTE), "bake", 1)
                .step(
                        "Whisk the icing sugar with the cream and the salt, drizzle over the swirls and scatter with the"
                                + " almonds.",
                        "whisk glaze scatter",
                        8,
                        0,
                        "2/0",
                        "2/1",
                        "2/2",
                        "2/3");
    }
}
