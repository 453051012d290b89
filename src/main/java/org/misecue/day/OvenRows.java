package org.misecue.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The rows that say when an oven is switched on: before each bake that does not find its heat from the one before. */
final class OvenRows {

    private final Timed timed;
    private final int ovens;

    OvenRows(Timed timed, int ovens) {
        this.timed = timed;
        this.ovens = ovens;
    }

    /** "oven", or "oven 2" where there are several. */
    String name(int number) {
        return ovens == 1 ? DayBuilder.OVEN : DayBuilder.OVEN + " " + (number + 1);
    }

    /** @param firstId the number of the row for the method's first bake; each bake keeps its own */
    List<Entry> rows(int firstId) {
        List<Entry> entries = new ArrayList<>();
        List<Integer> inMethod = timed.day().bakes();
        List<Integer> bakes = timed.bakes();
        for (int place = 0; place < bakes.size(); place++) {
            int at = bakes.get(place);
            if (!isHot(at, bakes.subList(0, place))) {
                entries.add(row(at, firstId + inMethod.indexOf(at)));
            }
        }
        return entries;
    }

    private Entry row(int at, int id) {
        Work.Heat heat = heat(at);
        String oven = name(oven(at));
        String degrees = heat.celsius() == 0 ? "its heat" : heat.celsius() + " °C";
        return new Entry(
                id,
                Entry.Kind.HEAT,
                "Switch the %s to %s; ready at %s"
                        .formatted(oven, degrees, timed.time(timed.start(at)).toLocalTime()),
                timed.task(at).step(),
                timed.time(timed.start(at) - heat.heating()),
                timed.time(timed.start(at)),
                List.of(),
                List.of(oven),
                List.of(),
                "",
                false,
                false);
    }

    private boolean isHot(int at, List<Integer> before) {
        return before.stream()
                .anyMatch(other -> oven(other) == oven(at)
                        && timed.end(other) >= timed.start(at) - heat(at).heating()
                        && timed.work(other).heat().equals(Optional.of(heat(at))));
    }

    private int oven(int at) {
        return timed.schedule().ovens().get(at);
    }

    private Work.Heat heat(int at) {
        return timed.work(at).heat().orElseThrow();
    }
}
