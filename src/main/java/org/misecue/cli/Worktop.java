package org.misecue.cli;

import org.misecue.episode.Episode;

/** One episode with everything that is worked out from it, each thing once and only when it is asked for. */
final class Worktop {

    private final Episode episode;

    Worktop(Episode episode) {
        this.episode = episode;
    }

    Episode episode() {
        return episode;
    }
}
