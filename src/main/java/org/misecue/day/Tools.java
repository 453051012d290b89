package org.misecue.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.misecue.recipe.Stretch;

/** What equipment the work by hand keeps busy, and how long it takes with what there is. */
final class Tools {

    static final String HOB = "hob";
    static final String MIXER = "mixer";

    private static final Set<String> ON_HOB = Set.of("simmer", "boil", "caramelise", "melt", "warm", "fry", "toast");
    private static final Set<String> IN_MIXER = Set.of("cream", "beat", "whip", "knead");

    private final boolean mixer;

    Tools(boolean mixer) {
        this.mixer = mixer;
    }

    /** "hob", "mixer", or neither. */
    List<String> of(List<String> techniques) {
        List<String> tools = new ArrayList<>();
        if (techniques.stream().anyMatch(ON_HOB::contains)) {
            tools.add(HOB);
        }
        if (mixer && usesMixer(techniques)) {
            tools.add(MIXER);
        }
        return tools;
    }

    /** A presenter and the tools, with a camera where it is filmed. */
    Map<String, Integer> takes(List<String> techniques, boolean camera) {
        Map<String, Integer> takes = new HashMap<>();
        takes.put(Project.PRESENTER, 1);
        if (camera) {
            takes.put(Project.CAMERA, 1);
        }
        of(techniques).forEach(tool -> takes.put(tool, 1));
        return takes;
    }

    /** By hand, what a machine would do takes half as long again; common practice, no source. */
    int minutes(Stretch stretch) {
        int minutes = (int) Math.max(1, stretch.handsOn().toMinutes());
        return usesMixer(stretch.techniques()) && !mixer ? minutes + (minutes + 1) / 2 : minutes;
    }

    private static boolean usesMixer(List<String> techniques) {
        return techniques.stream().anyMatch(IN_MIXER::contains);
    }
}
