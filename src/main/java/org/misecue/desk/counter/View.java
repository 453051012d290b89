package org.misecue.desk.counter;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import org.misecue.desk.door.Who;

/**
 * What stands around the content of a page.
 *
 * @param title of the page
 * @param episode whose page it is; empty for those of the desk itself
 * @param tab which of its pages
 * @param who looks at it
 * @param archive whether there are other episodes to go to
 * @param scripts names of scripts under {@code assets/} besides the desk's own
 */
public record View(
        String title,
        Optional<OpenEpisode> episode,
        Optional<Tab> tab,
        Who who,
        boolean archive,
        List<String> scripts) {

    /** For a page of an episode. */
    public static View of(Context request, Counter counter, OpenEpisode episode, Tab tab, String... scripts) {
        return new View(
                tab.label() + ": " + episode.title(),
                Optional.of(episode),
                Optional.of(tab),
                Who.of(request),
                counter.isArchive() && Who.of(request) == Who.OWNER,
                List.of(scripts));
    }

    /** For a page of the desk itself. */
    public static View of(Context request, String title, String... scripts) {
        return new View(title, Optional.empty(), Optional.empty(), Who.of(request), false, List.of(scripts));
    }

    /** The pages that this person may open. */
    public List<Tab> tabs() {
        return Tab.of(who);
    }

    public boolean isOn(Tab one) {
        return tab.filter(one::equals).isPresent();
    }
}
