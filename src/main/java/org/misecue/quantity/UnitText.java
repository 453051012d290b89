package org.misecue.quantity;

/** How a unit is written after its number, and said. */
record UnitText(String one, String many, String spokenOne, String spokenMany, boolean fractions) {

    static UnitText of(Unit unit) {
        return switch (unit) {
            case GRAM -> metric("g", "gram");
            case KILOGRAM -> metric("kg", "kilogram");
            case MILLILITRE -> metric("ml", "millilitre");
            case LITRE -> new UnitText("litre", "litres", "litre", "litres", false);
            case TEASPOON -> household("tsp", "teaspoon");
            case TABLESPOON -> household("tbsp", "tablespoon");
            case CUP -> inFull("cup");
            case FLUID_OUNCE -> household("fl oz", "fluid ounce");
            case PINT -> inFull("pint");
            case OUNCE -> household("oz", "ounce");
            case POUND -> household("lb", "pound");
            case STICK -> inFull("stick");
            case EACH -> new UnitText("", "", "", "", true);
            case PINCH -> new UnitText("pinch", "pinches", "pinch", "pinches", true);
            case CELSIUS -> new UnitText("°C", "°C", "degree Celsius", "degrees Celsius", false);
            case FAHRENHEIT -> new UnitText("°F", "°F", "degree Fahrenheit", "degrees Fahrenheit", false);
            case GAS_MARK -> new UnitText("gas mark", "gas mark", "gas mark", "gas mark", true);
            case MINUTE -> inFull("minute");
            case HOUR -> inFull("hour");
            case CENTIMETRE -> metric("cm", "centimetre");
            case INCH -> new UnitText("in", "in", "inch", "inches", true);
        };
    }

    private static UnitText metric(String sign, String name) {
        return new UnitText(sign, sign, name, name + "s", false);
    }

    private static UnitText household(String sign, String name) {
        return new UnitText(sign, sign, name, name + "s", true);
    }

    private static UnitText inFull(String name) {
        return new UnitText(name, name + "s", name, name + "s", true);
    }

    /** "an hour", "a cup". */
    String spokenWithArticle() {
        return (spokenOne.matches("(?:hour|ounce|inch).*") ? "an " : "a ") + spokenOne;
    }
}
