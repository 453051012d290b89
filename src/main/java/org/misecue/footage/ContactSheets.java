package org.misecue.footage;

import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import org.misecue.notice.BadInput;

/** Sheets of a film's pictures with their time codes: all in one way through the film, each handed out when it is done. */
public final class ContactSheets {

    /** The longer side of a picture, in pixels. */
    private static final int SIDE = 320;

    private final FilmInfo film;
    private final Pen pen;
    private final Map<SheetPlan, SortedSet<Duration>> wanted = new LinkedHashMap<>();
    private final Map<SheetPlan, Sheet> begun = new HashMap<>();

    private ContactSheets(FilmInfo film, Pen pen, List<SheetPlan> plans) {
        this.film = film;
        this.pen = pen;
        for (SheetPlan plan : plans) {
            SortedSet<Duration> moments = Evenly.moments(plan, film);
            if (!moments.isEmpty()) {
                wanted.put(plan, moments);
            }
        }
    }

    /**
     * Draws sheets; those of which the film has nothing are left out.
     *
     * @param film what the film holds
     * @param done takes each finished sheet as PNG
     * @return false where the lookout stopped it; sheets that were not finished are not handed out
     * @throws BadInput if the film cannot be used or has no picture
     */
    public static boolean draw(
            Path path, FilmInfo film, List<SheetPlan> plans, Lookout lookout, BiConsumer<SheetPlan, byte[]> done) {
        try (Pen pen = new Pen()) {
            ContactSheets sheets = new ContactSheets(film, pen, plans);
            SortedSet<Duration> all = new TreeSet<>();
            sheets.wanted.values().forEach(all::addAll);
            return Frames.each(path, all, SIDE, (at, picture) -> {
                sheets.place(at, picture, done);
                return lookout.goOn(at);
            });
        }
    }

    private void place(Duration at, Rgb picture, BiConsumer<SheetPlan, byte[]> done) {
        wanted.forEach((plan, moments) -> {
            if (moments.contains(at)) {
                Sheet sheet = begun.computeIfAbsent(
                        plan, one -> new Sheet(pen, one.heading(), moments.size(), one.columns(), picture));
                sheet.place(picture, timecode(at));
                if (moments.last().equals(at)) {
                    begun.remove(plan);
                    done.accept(plan, sheet.png());
                }
            }
        });
    }

    /** The camera's; the film's own where it wrote none; the time where frames last differently long. */
    private String timecode(Duration at) {
        Optional<Timecode> first = film.starts().or(() -> film.picture()
                .filter(picture -> !picture.variableRate())
                .map(picture -> new Timecode(picture.rate(), false, 0)));
        return first.map(start -> start.plus(at).toString()).orElseGet(() -> Moments.text(at));
    }
}
