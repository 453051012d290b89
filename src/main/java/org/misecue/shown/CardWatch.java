package org.misecue.shown;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.misecue.footage.Grey;

/**
 * Watches a film's pictures and has those parts read in which writing came to stand. Each part is read once, from
 * several pictures taken together, and again when some of it changes.
 */
final class CardWatch {

    /** How far beyond the new edges is read: in letters' heights, and in pixels of the small picture. */
    private static final int LETTERS_ASIDE = 4;

    private static final int ASIDE = 24;
    private static final int ABOVE = 8;
    /** For so many pictures a change is remembered, until what is left of it is found anew. */
    private static final int REMEMBERED = 50;

    /** Some of what stood in a box changed at a picture. */
    private record Change(Box box, int at) {}

    private final Eye eye;
    private final List<Change> changes = new ArrayList<>();
    private final List<Duration> times = new ArrayList<>();
    private final List<Patch> patches = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    private final StandingEdges edges;
    private final WritingFinder finder;
    private final int wholeWidth;
    private final int wholeHeight;
    private int framesRead;

    /** For small pictures of a size and whole ones of another. */
    CardWatch(Eye eye, int width, int height, int wholeWidth, int wholeHeight) {
        this.eye = eye;
        this.edges = new StandingEdges(width, height);
        this.finder = new WritingFinder(width, height);
        this.wholeWidth = wholeWidth;
        this.wholeHeight = wholeHeight;
    }

    private double factor() {
        return (double) wholeWidth / edges.width();
    }

    /** Takes the next picture in; the whole one is only asked for where it is to be read. */
    void see(Duration at, Grey small, Supplier<Grey> whole) {
        times.add(at);
        edges.see(small);
        for (Patch patch : List.copyOf(patches)) {
            patch.see(edges);
            if (patch.isGone(edges)) {
                if (patch.isShed(edges)) {
                    // Noise came and went with it; what stands on will be found anew.
                    patches.remove(patch);
                    edges.forgetStanding(patch.box());
                } else {
                    close(patch, patch.lastSeen());
                }
            } else if (patch.isChanged()) {
                // What is left of it will be found anew.
                close(patch, edges.now() - Patch.LASTING);
            }
        }
        for (Box box : finder.find(edges)) {
            open(box);
        }
        changes.removeIf(change -> edges.now() - change.at() > REMEMBERED);
        takePictures(whole);
    }

    private void open(Box found) {
        Box box = found;
        int notBefore = changes.stream()
                .filter(change -> change.box().meets(found))
                .mapToInt(Change::at)
                .max()
                .orElse(0);
        int came = Trace.of(edges, found).changedAt(found, edges.now());
        Box near = found.grown(found.height(), 2);
        for (Patch patch : List.copyOf(patches)) {
            if (!patch.isRead() && patch.box().meets(near) && patch.opened() >= came) {
                // Both came together, or nearly.
                patches.remove(patch);
                edges.forget(patch.box());
                box = box.with(patch.box());
                continue;
            }
            if (!patch.isRead() && patch.box().meets(near)) {
                read(patch, Math.max(patch.opened(), came - 1));
            }
            if (patch.isRead()
                    && patch.lines().stream().anyMatch(line -> line.box().meets(near))) {
                close(patch, Math.max(patch.begins(), came - 1));
                box = box.with(patch.written());
                notBefore = came;
            } else if (patch.isRead() && patch.lines().isEmpty()) {
                patches.remove(patch);
            }
        }
        Patch patch = new Patch(edges, box, part(box), notBefore);
        edges.remember(box);
        patches.add(patch);
    }

    private Box part(Box box) {
        int aside = Math.max(ASIDE, LETTERS_ASIDE * Math.min(box.height(), 20) / 2);
        return box.grown(aside, ABOVE).times(factor()).and(new Box(0, 0, wholeWidth, wholeHeight));
    }

    private void takePictures(Supplier<Grey> whole) {
        List<Patch> waiting =
                patches.stream().filter(patch -> patch.wantsPicture(edges)).toList();
        if (!waiting.isEmpty()) {
            Grey picture = whole.get();
            waiting.forEach(patch -> patch.take(picture, edges.now()));
        }
        for (Patch patch : List.copyOf(patches)) {
            if (patch.isRipe(edges)) {
                read(patch, edges.now());
                if (patch.lines().isEmpty()) {
                    patches.remove(patch);
                }
            }
        }
    }

    private void read(Patch patch, int upTo) {
        framesRead++;
        patch.read(eye, factor(), upTo);
    }

    /** @param last the picture at which it was there for the last time */
    private void close(Patch patch, int last) {
        patches.remove(patch);
        if (!patch.isRead()) {
            read(patch, last);
        }
        for (ReadLine line : patch.lines()) {
            edges.forget(line.box().grown(2, 2));
            changes.add(new Change(line.box(), last + 1));
        }
        Duration to = last + 1 < times.size() ? times.get(last + 1) : times.get(last);
        patch.linesByBeginning()
                .forEach((came, lines) -> readings.add(new Reading(times.get(Math.min(last, came)), to, lines)));
    }

    /** All that was read, once the film is over. */
    List<Reading> finish(Duration length) {
        times.add(length);
        for (Patch patch : List.copyOf(patches)) {
            close(patch, patch.lastSeen());
        }
        return List.copyOf(readings);
    }

    int framesRead() {
        return framesRead;
    }
}
