package org.misecue.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.misecue.page.Pages;

/**
 * What is to be said, to be held up behind the camera: a page of A4 across for each shot, in the largest letters that it
 * takes. Letters are never smaller than {@link #SMALLEST}; a longer text goes on over the page. Their capitals are then
 * 15 mm high, which at two metres is five times what a sharp eye needs.
 */
public final class CueCards {

    /** Points. */
    static final int SMALLEST = 60;

    private static final int LARGEST = 96;
    private static final int STEP = 6;

    /** The page of A4 within its margins of 12 mm, without the heading; points, a little less than there is. */
    static final float WIDTH = 760;

    private static final float HEIGHT = 455;
    private static final float LINE = 1.1f;
    private static final float GAP = 0.25f;

    private CueCards() {}

    /** A page to print with {@link org.misecue.page.Pdf}. */
    public static String html(ShotPlan plan, ShotOrder order) {
        return Pages.fill("shots/cards.jte", Map.of("title", plan.title(), "cards", of(plan, order)));
    }

    static List<CueCard> of(ShotPlan plan, ShotOrder order) {
        return plan.in(order).stream()
                .filter(shot -> !shot.sayings().isEmpty())
                .flatMap(shot -> cards(shot).stream())
                .toList();
    }

    private static List<CueCard> cards(Shot shot) {
        int size = LARGEST;
        while (size > SMALLEST && height(shot.sayings(), size) > HEIGHT) {
            size -= STEP;
        }
        int letters = size;
        List<List<Saying>> pages = pages(shot.sayings(), letters);
        return IntStream.range(0, pages.size())
                .mapToObj(i -> new CueCard(shot, i + 1, pages.size(), letters, pages.get(i)))
                .toList();
    }

    private static List<List<Saying>> pages(List<Saying> sayings, int size) {
        List<List<Saying>> pages = new ArrayList<>();
        List<Saying> page = new ArrayList<>();
        for (Saying saying :
                sayings.stream().flatMap(each -> pieces(each, size)).toList()) {
            page.add(saying);
            if (page.size() > 1 && height(page, size) > HEIGHT) {
                page.remove(page.size() - 1);
                pages.add(List.copyOf(page));
                page.clear();
                page.add(saying);
            }
        }
        pages.add(List.copyOf(page));
        return pages;
    }

    /** Words that fill more than a page by themselves are parted between words. */
    private static Stream<Saying> pieces(Saying saying, int size) {
        if (height(List.of(saying), size) <= HEIGHT) {
            return Stream.of(saying);
        }
        List<Saying> pieces = new ArrayList<>();
        String piece = "";
        for (String word : saying.words().split(" ")) {
            String longer = piece.isEmpty() ? word : piece + " " + word;
            if (!piece.isEmpty() && height(List.of(new Saying("", longer, "")), size) > HEIGHT) {
                pieces.add(new Saying("", piece, ""));
                longer = word;
            }
            piece = longer;
        }
        pieces.add(new Saying("", piece, ""));
        return pieces.stream();
    }

    private static float height(List<Saying> sayings, int size) {
        return (float) sayings.stream()
                .mapToDouble(saying -> (lines(saying, size) * LINE + GAP) * size)
                .sum();
    }

    /** One where all of it fits; otherwise the figure stands on lines of its own. */
    private static int lines(Saying saying, int size) {
        int together = Lettering.lines(saying.words(), size, WIDTH);
        return together == 1
                ? 1
                : Stream.of(saying.before(), saying.figure(), saying.after())
                        .filter(part -> !part.isEmpty())
                        .mapToInt(part -> Lettering.lines(part, size, WIDTH))
                        .sum();
    }
}
