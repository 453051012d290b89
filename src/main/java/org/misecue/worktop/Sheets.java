package org.misecue.worktop;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.misecue.align.StepSpan;
import org.misecue.episode.OutFolder;
import org.misecue.footage.ContactSheets;
import org.misecue.footage.FilmInfo;
import org.misecue.footage.Lookout;
import org.misecue.footage.SheetPlan;

/** Contact sheets of an episode's films: one of each step that is on in a film, and one of the whole film. */
public final class Sheets {

    private static final int OF_A_STEP = 12;
    private static final int OF_A_FILM = 24;

    private final Worktop worktop;
    private final OutFolder out;

    public Sheets(Worktop worktop) {
        this.worktop = worktop;
        this.out = worktop.episode().out();
    }

    /**
     * Makes the sheets of a film in {@code out/sheets/}; each appears when it is finished.
     *
     * @param made takes the place of each
     * @return false where the lookout stopped it
     * @throws org.misecue.notice.BadInput if the film cannot be used or a sheet cannot be written
     */
    public boolean make(Path film, FilmInfo info, Lookout lookout, Consumer<Path> made) {
        return ContactSheets.draw(
                film,
                info,
                plans(film, info),
                lookout,
                (plan, png) -> made.accept(out.write(folder(film) + plan.name(), png)));
    }

    private List<SheetPlan> plans(Path film, FilmInfo info) {
        String name = worktop.episode().name(film);
        int columns = info.picture().filter(one -> one.height() > one.width()).isPresent() ? 6 : 4;
        List<SheetPlan> plans = new ArrayList<>();
        steps(film)
                .forEach((step, stretches) -> plans.add(new SheetPlan(
                        "step-%02d.png".formatted(step),
                        "Step %d · %s".formatted(step, name),
                        stretches,
                        OF_A_STEP,
                        columns)));
        List<SheetPlan.Stretch> whole = List.of(new SheetPlan.Stretch(Duration.ZERO, info.length()));
        plans.add(new SheetPlan("film.png", "The whole film · " + name, whole, OF_A_FILM, columns));
        return plans;
    }

    private SortedMap<Integer, List<SheetPlan.Stretch>> steps(Path film) {
        SortedMap<Integer, List<SheetPlan.Stretch>> steps = new TreeMap<>();
        if (worktop.narrations().isEmpty()) {
            return steps;
        }
        for (StepSpan span : worktop.alignment().spans()) {
            if (span.step() > 0
                    && worktop.filmOf(span.source()).filter(film::equals).isPresent()) {
                steps.computeIfAbsent(span.step(), step -> new ArrayList<>())
                        .add(new SheetPlan.Stretch(span.start(), span.end()));
            }
        }
        return steps;
    }

    private String folder(Path film) {
        return "sheets/" + worktop.resultName(film) + "/";
    }
}
