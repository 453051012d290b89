package org.misecue.desk.media;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a request wants of a file, by RFC 9110, 14. */
sealed interface Wanted {

    /** All of it. */
    record Whole() implements Wanted {}

    /**
     * One stretch of it.
     *
     * @param first byte, counted from 0
     * @param length above 0
     */
    record Part(long first, long length) implements Wanted {

        /** As in {@code Content-Range}. */
        String of(long size) {
            return "bytes " + first + "-" + (first + length - 1) + "/" + size;
        }
    }

    /** What the file does not have. */
    record Nothing() implements Wanted {}

    /** Who asks for more stretches than a player or a reader would, gets the whole (RFC 9110, 14.2 and 17.15). */
    int MOST = 16;

    String UNIT = "bytes=";
    Pattern RANGE = Pattern.compile("(\\d+)-(\\d*)|-(\\d+)");

    /**
     * Reads a {@code Range}. One that is not written as it should be, or counts in another unit, is passed over, as the RFC
     * has it. Several stretches are joined where they touch; those that do not, give the whole, never a file in pieces.
     */
    static Wanted read(String range, long size) {
        if (!range.toLowerCase(Locale.ROOT).startsWith(UNIT)) {
            return new Whole();
        }
        String[] specs = range.substring(UNIT.length()).split(",", MOST + 2);
        if (specs.length > MOST) {
            return new Whole();
        }
        List<Part> parts = new ArrayList<>();
        int read = 0;
        for (String spec : specs) {
            String text = spec.strip();
            if (text.isEmpty()) {
                continue;
            }
            Matcher matcher = RANGE.matcher(text);
            if (!matcher.matches() || endsBeforeItBegins(matcher)) {
                return new Whole();
            }
            read++;
            part(matcher, size, parts);
        }
        if (read == 0) {
            return new Whole();
        }
        return parts.isEmpty() ? new Nothing() : joined(parts);
    }

    private static boolean endsBeforeItBegins(Matcher range) {
        return range.group(3) == null && !range.group(2).isEmpty() && number(range.group(2)) < number(range.group(1));
    }

    private static void part(Matcher range, long size, List<Part> into) {
        long first;
        long last = size - 1;
        if (range.group(3) != null) {
            long wanted = number(range.group(3));
            first = wanted == 0 ? size : Math.max(0, size - wanted);
        } else {
            first = number(range.group(1));
            last = range.group(2).isEmpty() ? last : Math.min(last, number(range.group(2)));
        }
        if (first <= last) {
            into.add(new Part(first, last - first + 1));
        }
    }

    /** Numbers beyond any file are the largest there is. */
    private static long number(String digits) {
        try {
            return Long.parseLong(digits);
        } catch (NumberFormatException e) {
            return Long.MAX_VALUE;
        }
    }

    private static Wanted joined(List<Part> parts) {
        parts.sort(Comparator.comparing(Part::first));
        long first = parts.get(0).first();
        long end = first;
        for (Part part : parts) {
            if (part.first() > end) {
                return new Whole();
            }
            end = Math.max(end, part.first() + part.length());
        }
        return new Part(first, end - first);
    }
}
