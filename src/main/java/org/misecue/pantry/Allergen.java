package org.misecue.pantry;

/** The fourteen of Annex II to Regulation (EU) 1169/2011, in its order, with the words used on a label. */
public enum Allergen {
    GLUTEN("cereals containing gluten"),
    CRUSTACEANS("crustaceans"),
    EGGS("eggs"),
    FISH("fish"),
    PEANUTS("peanuts"),
    SOYBEANS("soybeans"),
    MILK("milk"),
    NUTS("nuts"),
    CELERY("celery"),
    MUSTARD("mustard"),
    SESAME("sesame"),
    SULPHITES("sulphites"),
    LUPIN("lupin"),
    MOLLUSCS("molluscs");

    private final String label;

    Allergen(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
