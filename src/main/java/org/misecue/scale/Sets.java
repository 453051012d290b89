package org.misecue.scale;

/**
 * How often a batch is weighed out: once for each take and once for each spare.
 *
 * @param takes 1 to 20
 * @param spare 0 to 20: sets that stand by for a take that goes wrong
 */
public record Sets(int takes, int spare) {

    public static final int MOST = 20;

    /** One take and nothing spare. */
    public static final Sets ONE = new Sets(1, 0);

    /** @throws IllegalArgumentException if a number is out of its range */
    public Sets {
        if (takes < 1 || takes > MOST || spare < 0 || spare > MOST) {
            throw new IllegalArgumentException("takes go from 1 to %d and spare sets from 0 to %d, not %d and %d"
                    .formatted(MOST, MOST, takes, spare));
        }
    }

    public int all() {
        return takes + spare;
    }

    /** "2 takes and 1 spare". */
    public String words() {
        String some = takes == 1 ? "1 take" : takes + " takes";
        return spare == 0 ? some : some + " and " + spare + " spare";
    }
}
