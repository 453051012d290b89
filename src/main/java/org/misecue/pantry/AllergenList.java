package org.misecue.pantry;

/** The lists of allergens that a label must follow, each with where it is read. */
public enum AllergenList {
    EU("EU", "Regulation (EU) 1169/2011, Annex II, the fourteen (a copy of the annex; FARRP's summary)"),
    US(
            "US",
            "the nine of FALCPA 2004 and the FASTER Act, sesame from 1 January 2023 (FDA press text); which nuts are"
                    + " tree nuts: from memory"),
    AU_NZ(
            "Australia and New Zealand",
            "Food Standards Code, Schedule 9 (NSW Food Authority; egg, fish, lupin, milk, mollusc, peanut, sesame and"
                    + " soy: from memory)");

    private final String title;
    private final String source;

    AllergenList(String title, String source) {
        this.title = title;
        this.source = source;
    }

    /** Where the list is law, for a heading. */
    public String title() {
        return title;
    }

    /** Where its members come from. */
    public String source() {
        return source;
    }
}
