package org.misecue.notice;

/**
 * Input that cannot be used. The message is one sentence that says what was expected and how to mend it; the place
 * stands before it. The command ends with exit code 2 and changes no file.
 */
public final class BadInput extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Place place;

    public BadInput(Place place, String sentence) {
        super(place + ": " + sentence);
        this.place = place;
    }

    public BadInput(Place place, String sentence, Throwable cause) {
        super(place + ": " + sentence, cause);
        this.place = place;
    }

    public Place place() {
        return place;
    }
}
