package org.misecue.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The rows that say when an oven heats: before each bake that does not find its heat from the one before. */
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
        List<Integer> inOvens = timed.bakes();
        for (int place = 0; place < inOvens.size(); place++) {
            int at = inOvens.get(place);
            if (!timed.work(at).isDial()) {
                row(at, before(at, inOvens.subList(0, place)), firstId + inMethod.indexOf(at))
                        .ifPresent(entries::add);
            }
        }
        return entries;
    }

    /** What was last in the same oven, or turned its dial. */
    private Optional<Integer> before(int at, List<Integer> earlier) {
        return earlier.stream().filter(other -> oven(other) == oven(at)).reduce((one, other) -> other);
    }

    /** A dial has been turned; or the oven has its heat from the bake before; or it is switched on. */
    private Optional<Entry> row(int at, Optional<Integer> before, int id) {
        int heating = heat(at).heating();
        if (before.filter(other -> timed.work(other).isDial()).isPresent()) {
            int on = timed.end(before.get());
            return Optional.of(row(at, id, on, on + heating, "The %s heats to %s; ready at %s"));
        }
        boolean hot = before.filter(other -> timed.end(other) >= timed.start(at) - heating
                        && heat(other).celsius() == heat(at).celsius())
                .isPresent();
        return hot
                ? Optional.empty()
                : Optional.of(
                        row(at, id, timed.start(at) - heating, timed.start(at), "Switch the %s to %s; ready at %s"));
    }

    private Entry row(int at, int id, int from, int ready, String words) {
        String oven = name(oven(at));
        String degrees = heat(at).celsius() == 0 ? "its heat" : heat(at).celsius() + " °C";
        return new Entry(
                id,
                Entry.Kind.HEAT,
                words.formatted(oven, degrees, timed.time(ready).toLocalTime()),
                timed.task(at).step(),
                timed.time(from),
                timed.time(ready),
                List.of(),
                List.of(oven),
                List.of(),
                "",
                false,
                false);
    }

    private int oven(int at) {
        return timed.schedule().ovens().get(at);
    }

    private Work.Heat heat(int at) {
        return timed.work(at).heat().orElseThrow();
    }
}
