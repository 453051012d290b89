package org.misecue.shown;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.misecue.footage.Grey;

/** A part of the picture where writing came to stand, for as long as it stands. */
final class Patch {

    /** For so many pictures a square must have changed before the patch did. */
    static final int LASTING = 3;

    /** As many pictures are taken for reading. */
    private static final int PICTURES = 6;
    /** After so many it is read from those that were taken. */
    private static final int PATIENCE = 12;
    /** The share of the edges below which the whole is gone. */
    private static final double GONE = 0.5;
    /** The share that stands on where only noise around it is gone. */
    private static final double SHED = 0.12;

    private static final int SHED_EDGES = 100;
    /** So much of it must be there in a picture to read from. */
    private static final double CLEAR = 0.7;
    /** So much of a line's box must lie where the new edges are, and so many edges in it. */
    private static final double OWN = 0.3;

    private static final int OWN_EDGES = 6;
    /** Lines that came within so many pictures came together. */
    private static final int TOGETHER = 2;

    /** So near, in pixels, to the side of the small picture a line may be cut. */
    private static final int EDGE = 2;

    private final Box box;
    private final int width;
    private final Box part;
    private final Trace trace;
    private final int opened;
    private final int notBefore;
    private final int begins;
    private final double letter;
    private final List<Grey> pictures = new ArrayList<>();
    private final List<Integer> takenAt = new ArrayList<>();
    private final Map<ReadLine, Integer> came = new HashMap<>();
    private List<ReadLine> lines = List.of();
    private boolean read;
    private int lastSeen;
    private int changedFor;
    private int looks;

    /**
     * @param box in the small pictures, where the new edges are
     * @param part in the whole pictures, what is read: it reaches further, so that no letter is cut
     * @param notBefore the picture before which it cannot have begun
     */
    Patch(StandingEdges edges, Box box, Box part, int notBefore) {
        this.box = box;
        this.width = edges.width();
        this.part = part;
        this.notBefore = notBefore;
        trace = Trace.of(edges, box);
        letter = WritingFinder.letter(edges, box);
        opened = edges.now();
        begins = Math.max(notBefore, trace.cameAt(box, opened));
        lastSeen = opened;
    }

    Box box() {
        return box;
    }

    /** The picture at which it was found. */
    int opened() {
        return opened;
    }

    /** The picture at which it began. */
    int begins() {
        return begins;
    }

    /** The picture at which it was seen last. */
    int lastSeen() {
        return lastSeen;
    }

    List<ReadLine> lines() {
        return lines;
    }

    boolean isRead() {
        return read;
    }

    /** The box around all lines. */
    Box written() {
        return lines.stream().map(ReadLine::box).reduce(Box::with).orElse(box);
    }

    /** Its lines by the picture at which they came, those together that came together. */
    Map<Integer, List<ReadLine>> linesByBeginning() {
        Map<Integer, List<ReadLine>> groups = new TreeMap<>();
        for (ReadLine line : lines) {
            int at = came.getOrDefault(line, begins);
            int group = groups.keySet().stream()
                    .filter(other -> Math.abs(other - at) <= TOGETHER)
                    .findFirst()
                    .orElse(at);
            groups.computeIfAbsent(group, start -> new ArrayList<>()).add(line);
        }
        return groups;
    }

    /** Looks at the next picture's edges. */
    void see(StandingEdges edges) {
        if (trace.there(edges) >= GONE) {
            lastSeen = edges.now();
        }
        changedFor = read && trace.hasChangedSquare(edges) ? changedFor + 1 : 0;
        if (!read) {
            trace.look(edges);
            if (++looks >= LASTING && trace.there(edges) < CLEAR) {
                trace.steady();
            }
        }
    }

    /** Whether most of it went before it was read, but so much stands on that it was noise that went. */
    boolean isShed(StandingEdges edges) {
        return !read && (trace.there(edges) >= SHED || trace.there(edges) * trace.size() >= SHED_EDGES);
    }

    boolean isGone(StandingEdges edges) {
        return edges.now() - lastSeen >= 2;
    }

    boolean isChanged() {
        return changedFor >= LASTING;
    }

    boolean wantsPicture(StandingEdges edges) {
        return !read && (pictures.isEmpty() || trace.there(edges) >= CLEAR);
    }

    /** Takes a picture to read from. */
    void take(Grey whole, int now) {
        pictures.add(Tone.cut(whole, part));
        takenAt.add(now);
    }

    /** Whether there are enough pictures to read from, or more are not to be had. */
    boolean isRipe(StandingEdges edges) {
        return !read && (pictures.size() >= PICTURES || edges.now() - opened >= PATIENCE);
    }

    /**
     * Reads it, from pictures up to one of them; from then on only the edges of its lines count.
     *
     * @param factor how much larger the whole pictures are
     */
    void read(Eye eye, double factor, int upTo) {
        read = true;
        List<Grey> usable = IntStream.range(0, pictures.size())
                .filter(i -> takenAt.get(i) <= upTo)
                .mapToObj(pictures::get)
                .toList();
        pictures.clear();
        if (usable.isEmpty()) {
            return;
        }
        trace.steady();
        Exposure exposure = new Exposure(usable, letter * factor, factor, trace.strokes(part, factor));
        lines = eye.read(exposure).stream()
                .map(line -> line.at(line.box().movedBy(part.left(), part.top()).times(1 / factor)))
                .filter(this::isOwn)
                .map(line -> isAtEdge(line.box()) ? line.doubted() : line)
                .toList();
        lines.forEach(line -> came.put(line, Math.max(notBefore, trace.cameAt(line.box(), begins))));
        trace.within(lines.stream().map(ReadLine::box).toList());
    }

    /** Where the picture ends, so may a figure. */
    private boolean isAtEdge(Box line) {
        return line.left() <= EDGE || line.right() >= width - EDGE;
    }

    /** Whether a line came with the patch; others may reach into the part that was read. */
    private boolean isOwn(ReadLine line) {
        return trace.count(line.box()) >= OWN_EDGES
                && line.box().and(box).area() > line.box().area() * OWN;
    }
}
