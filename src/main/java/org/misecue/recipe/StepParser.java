package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;

/** Reads one step of the method: settings, techniques, effort; its uses come from the {@link UseFinder}. */
final class StepParser {

    private StepParser() {}

    /** {@code known} are the settings of the recipe as a whole; a tin that stands there is not repeated. */
    static Step parse(int number, Outline.MethodLine method, UseFinder finder, List<Setting> known, Larder larder) {
        Wording text = larder.wording(method.line().text());
        int line = method.line().number();
        List<Setting> settings = new ArrayList<>(OvenReader.read(text, number, line));
        Sightings sightings = Techniques.standard().in(text);
        settings.addAll(DurationReader.read(sightings, number, line));
        TinReader.read(text, number, line).stream()
                .filter(tin -> known.stream().noneMatch(each -> sameTin(each, tin)))
                .forEach(settings::add);
        Effort effort = Effort.of(sightings, settings);
        return new Step(
                number,
                text.text(),
                line,
                finder.uses(text, method.part()),
                List.copyOf(settings),
                sightings.techniques().stream().map(Techniques.Technique::key).toList(),
                effort.handsOn(),
                effort.unattended());
    }

    private static boolean sameTin(Setting one, Setting other) {
        return one.kind() == Setting.Kind.PAN && one.quantity().equals(other.quantity());
    }
}
