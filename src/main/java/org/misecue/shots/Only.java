package org.misecue.shots;

/** When a shot of a template is filmed. */
enum Only {
    ALWAYS("always"),
    WITH_INGREDIENTS("with-ingredients"),
    WITHOUT_INGREDIENTS("without-ingredients");

    private final String code;

    Only(String code) {
        this.code = code;
    }

    String code() {
        return code;
    }

    boolean allows(boolean ingredientsGoIn) {
        return this == ALWAYS || (this == WITH_INGREDIENTS) == ingredientsGoIn;
    }
}
