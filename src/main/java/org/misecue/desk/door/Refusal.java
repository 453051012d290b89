package org.misecue.desk.door;

/** A request that is not served, with the sentence for whoever sent it. */
public final class Refusal extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final int status;

    /** @param status of HTTP, 400 to 499 */
    public Refusal(int status, String sentence) {
        super(sentence, null, false, false);
        this.status = status;
    }

    public int status() {
        return status;
    }
}
