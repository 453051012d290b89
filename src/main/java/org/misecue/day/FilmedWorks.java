package org.misecue.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.misecue.shots.Shot;
import org.misecue.shots.ShotKind;

/** Shots as works: those of one set-up that follow each other are filmed together. */
final class FilmedWorks {

    /** Minutes of a take that shows no work; common practice, no source. */
    private static final int A_TAKE = 1;

    private final Works works;
    private final int lineUp;

    /** @param lineUp minutes to frame, focus and slate a shot */
    FilmedWorks(Works works, int lineUp) {
        this.works = works;
        this.lineUp = lineUp;
    }

    /** Shots of one set-up that follow each other. */
    record Block(List<Shot> shots) {

        String setUp() {
            return shots.get(0).setup();
        }

        List<String> techniques() {
            return shots.stream().map(Shot::technique).distinct().toList();
        }

        /** Whether it is the turning of an oven's dial. */
        boolean isDial() {
            return shots.get(0).technique().equals(Dials.TECHNIQUE);
        }

        Works.Filmed filmed() {
            return new Works.Filmed(shots.stream().map(Shot::number).toList(), setUp());
        }
    }

    /** In the order told; the dial of an oven is a block of its own. */
    static List<Block> blocks(List<Shot> filmed) {
        List<Block> blocks = new ArrayList<>();
        for (Shot shot : filmed) {
            if (blocks.isEmpty() || !goesOn(blocks.get(blocks.size() - 1), shot)) {
                blocks.add(new Block(new ArrayList<>()));
            }
            blocks.get(blocks.size() - 1).shots().add(shot);
        }
        return blocks;
    }

    private static boolean goesOn(Block block, Shot next) {
        return block.setUp().equals(next.setup())
                && block.isDial() == next.technique().equals(Dials.TECHNIQUE);
    }

    /** Minutes to film a block in which the work by hand takes so many; all takes of a shot show it. */
    int minutes(Block block, int each) {
        return block.shots().stream()
                .mapToInt(shot -> lineUp + shot.takes() * (showsWork(shot) ? Math.max(A_TAKE, each) : A_TAKE))
                .sum();
    }

    /** Minutes of work by hand for each shot that shows some. */
    static int each(int minutes, List<Shot> filmed) {
        long showing = filmed.stream().filter(FilmedWorks::showsWork).count();
        return Math.round((float) minutes / Math.max(1, showing));
    }

    private static boolean showsWork(Shot shot) {
        return shot.kind() == ShotKind.ACTION && !shot.technique().equals(Dials.TECHNIQUE);
    }

    /** Works for shots that belong to no step, one after the other. */
    List<Integer> apart(List<Shot> filmed, String what) {
        List<Integer> places = new ArrayList<>();
        for (Block block : blocks(filmed)) {
            String names = block.techniques().stream()
                    .map(technique -> technique.replace('-', ' '))
                    .collect(Collectors.joining(", "));
            places.add(works.add(
                    new Work(minutes(block, A_TAKE), ON_CAMERA, Optional.empty(), Optional.of(block.setUp())),
                    Entry.Kind.FILM,
                    what + ": " + names,
                    0,
                    block.filmed(),
                    List.of()));
        }
        works.chain(places);
        return places;
    }

    /** What a shot takes that needs no tool. */
    static final Map<String, Integer> ON_CAMERA = Map.of(Project.PRESENTER, 1, Project.CAMERA, 1);
}
