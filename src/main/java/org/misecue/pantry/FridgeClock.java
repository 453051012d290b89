package org.misecue.pantry;

import java.util.Locale;

/** How long chilled food may stand out of the fridge, by country: hints only, local food law comes first. */
public enum FridgeClock {
    UK(
            "keep it at 8 °C or below, better 5 °C; add up all its time out of the fridge, and be quick",
            "UK food-safety pages: the law of England, Wales and Northern Ireland asks for 8 °C, the advice is 5 °C"),
    US(
            "out of the fridge at most 2 hours in all, 1 hour where it is hotter than 90 °F (32 °C)",
            "US Department of Agriculture: 40–140 °F (4.4–60 °C)"),
    AU("out of the fridge less than 4 hours in all between 5 and 60 °C, then throw it away", "Queensland Health");

    private final String words;
    private final String source;

    FridgeClock(String words, String source) {
        this.words = words;
        this.source = source;
    }

    /** The clock of a language's country; the UK's, which has no hours to lean on, where the country has none here. */
    public static FridgeClock of(Locale language) {
        return switch (language.getCountry()) {
            case "US", "CA" -> US;
            case "AU", "NZ" -> AU;
            default -> UK;
        };
    }

    /** Half a sentence in the imperative. */
    public String words() {
        return words;
    }

    public String source() {
        return source;
    }
}
