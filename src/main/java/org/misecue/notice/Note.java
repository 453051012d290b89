package org.misecue.notice;

/** Something the person should know that does not stop the work: one sentence, with its place. */
public record Note(Place place, String sentence) {

    @Override
    public String toString() {
        return place + ": " + sentence;
    }
}
