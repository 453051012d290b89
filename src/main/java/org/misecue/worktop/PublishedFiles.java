package org.misecue.worktop;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;

/** What goes beside the film, as files. Each is made when somebody asks for it; a draft says that it is one. */
public final class PublishedFiles {

    private static final String TEXT = "description.txt";
    private static final String PAGE = "recipe.html";
    private static final String PRINT = "recipe.pdf";
    private static final String DATA = "recipe.jsonld";

    /** Their names in {@code out/}. */
    public static final List<String> NAMES = List.of(TEXT, PAGE, PRINT, DATA);

    private final Worktop worktop;

    public PublishedFiles(Worktop worktop) {
        this.worktop = worktop;
    }

    /** The text for the description box, with a head while it is a draft. */
    public String text() {
        return new Release(worktop).draftHead() + worktop.description().text();
    }

    /** @param name one of {@link #NAMES} */
    public byte[] bytes(String name) {
        return switch (name) {
            case TEXT -> text().getBytes(UTF_8);
            case PAGE -> worktop.recipePage().getBytes(UTF_8);
            case PRINT -> worktop.recipePrint();
            case DATA -> worktop.recipeData().getBytes(UTF_8);
            default -> throw new IllegalArgumentException(name);
        };
    }
}
