package org.misecue.search;

import java.util.List;

/**
 * The words that are shown of a window.
 *
 * @param overTheBorder whether words of the next cue are among them
 */
record Quote(String text, List<Hit.Mark> marks, boolean overTheBorder) {

    /** Longer passages are shown in part. */
    private static final int LONGEST = 240;

    private static final int BEFORE_THE_MATCH = 80;
    private static final String CUT = "…";

    static Quote whole(Window window) {
        return cut(window, 0, Math.min(window.ownLength(), LONGEST), List.of(), false);
    }

    static Quote around(Window window, List<Hit.Mark> marks) {
        boolean over = marks.get(marks.size() - 1).to() > window.ownLength();
        int end = over ? window.text().length() : window.ownLength();
        if (end <= LONGEST) {
            return cut(window, 0, end, marks, over);
        }
        int from = Math.max(0, Math.min(marks.get(0).from() - BEFORE_THE_MATCH, end - LONGEST));
        return cut(window, from, Math.min(end, from + LONGEST), marks, over);
    }

    /** Cuts at spaces, and shifts the marks. */
    private static Quote cut(Window window, int from, int to, List<Hit.Mark> marks, boolean over) {
        String text = window.text();
        int passageEnd = window.ownLength();
        int start = from == 0 ? 0 : text.lastIndexOf(' ', from) + 1;
        int nextSpace = to == text.length() ? to : text.indexOf(' ', to);
        int end = nextSpace < 0 ? text.length() : nextSpace;
        String before = start == 0 ? "" : CUT;
        int shift = before.length() - start;
        List<Hit.Mark> shifted = marks.stream()
                .filter(mark -> mark.from() >= start && mark.to() <= end)
                .map(mark -> new Hit.Mark(mark.from() + shift, mark.to() + shift))
                .toList();
        String after = end == passageEnd || end == text.length() ? "" : CUT;
        return new Quote(before + text.substring(start, end) + after, shifted, over);
    }
}
