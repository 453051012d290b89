package org.misecue.desk.counter;

import java.util.List;
import org.misecue.desk.door.Who;

/** The pages of an episode, in the order of the job. */
public enum Tab {
    BOWLS("Bowls", "bowls", Who.GUEST),
    DAY("Day", "day", Who.GUEST),
    FIND("Find", "find", Who.OWNER),
    VERDICTS("Check", "check", Who.OWNER),
    TEXT("Text", "text", Who.OWNER),
    FILES("Files", "files", Who.OWNER);

    private final String label;
    private final String path;
    private final Who least;

    Tab(String label, String path, Who least) {
        this.label = label;
        this.path = path;
        this.least = least;
    }

    /** As it stands on the page. */
    public String label() {
        return label;
    }

    /** The last part of its address. */
    public String path() {
        return path;
    }

    /** Those that somebody may open. */
    public static List<Tab> of(Who who) {
        return List.of(values()).stream()
                .filter(tab -> who.compareTo(tab.least) >= 0)
                .toList();
    }
}
