package org.misecue.decide;

import org.misecue.compare.Evidence;
import org.misecue.compare.Finding;

/** Which of several moments are the matter. */
final class Wrong {

    private Wrong() {}

    /** All but those that give exactly what is written, in words that can be relied on. */
    static boolean is(Finding finding, Evidence one) {
        boolean asWritten = finding.written().isPresent() && one.quantity().equals(finding.written());
        return !asWritten || one.doubtful();
    }
}
