package org.misecue.shown;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Makes cards of readings: what was read again because something near it changed is still the same card. */
final class CardMerger {

    /** So far apart in time two readings may be of one card. */
    private static final Duration GAP = Duration.ofMillis(500);
    /** Of the longer text, so much may differ. */
    private static final double DIFFERENT = 0.25;
    /** Where so much of it differs it is another text. */
    private static final double OTHER = 0.5;

    /** In pixels of the small picture. */
    private static final int ALIGNED = 8;

    /** Of a fragment's box, what lies within the longer line's. */
    private static final double MOSTLY = 0.7;

    private CardMerger() {}

    /** A line over its whole time. */
    private record Stay(Duration from, Duration to, List<ReadLine> seen) {

        Stay with(Stay other) {
            List<ReadLine> all = new ArrayList<>(seen);
            all.addAll(other.seen);
            return new Stay(
                    from.compareTo(other.from) < 0 ? from : other.from,
                    to.compareTo(other.to) > 0 ? to : other.to,
                    all);
        }

        Stay notBefore(Duration time) {
            return new Stay(from.compareTo(time) < 0 ? time : from, to, seen);
        }

        Stay doubted() {
            return new Stay(from, to, seen.stream().map(ReadLine::doubted).toList());
        }

        ReadLine best() {
            return seen.stream()
                    .max(Comparator.comparingInt((ReadLine line) -> line.doubtful() ? 0 : 1)
                            .thenComparingInt(ReadLine::sure))
                    .orElseThrow();
        }

        /** Readings of one line whose figures differ are one more reason for doubt. */
        CardLine line() {
            ReadLine best = best();
            boolean disputed = seen.stream()
                    .anyMatch(line -> !line.doubtful() && !figures(line.text()).equals(figures(best.text())));
            return new CardLine(best.text(), best.doubtful() || disputed);
        }
    }

    private record Group(Duration from, Duration to, List<Stay> stays) {}

    static List<Card> cards(String film, List<Reading> readings) {
        List<Group> groups = new ArrayList<>();
        List<Reading> ordered = new ArrayList<>(readings);
        ordered.sort(Comparator.comparing(Reading::from).thenComparing(Reading::to));
        for (Reading reading : ordered) {
            List<Stay> fresh = new ArrayList<>();
            for (ReadLine line : reading.lines()) {
                Stay stay = new Stay(reading.from(), reading.to(), List.of(line));
                if (!joined(groups, stay)) {
                    fresh.add(stay);
                }
            }
            if (!fresh.isEmpty()) {
                groups.add(new Group(reading.from(), reading.to(), fresh));
            }
        }
        oneAfterAnother(groups);
        withoutFragments(groups);
        return groups.stream()
                .filter(group -> !group.stays().isEmpty())
                .map(group -> card(film, group))
                .sorted(Comparator.comparing(Card::from).thenComparing(Card::to))
                .toList();
    }

    /** Of two texts that stood at one place, the later came when the earlier had gone. */
    private static void oneAfterAnother(List<Group> groups) {
        List<Stay> all =
                groups.stream().flatMap(group -> group.stays().stream()).toList();
        for (Group group : groups) {
            group.stays().replaceAll(stay -> all.stream()
                    .filter(other -> isBefore(other, stay))
                    .map(Stay::to)
                    .max(Comparator.naturalOrder())
                    .map(stay::notBefore)
                    .orElse(stay));
        }
    }

    private static boolean isBefore(Stay one, Stay other) {
        boolean overlap = one.to().compareTo(other.to()) < 0 && other.from().compareTo(one.to()) < 0;
        if (one == other || !overlap || one.to().minus(one.from()).compareTo(GAP.multipliedBy(2)) < 0) {
            return false;
        }
        ReadLine first = one.best();
        ReadLine second = other.best();
        String a = bare(first.text());
        String b = bare(second.text());
        boolean related = distance(a, b) <= OTHER * Math.max(a.length(), b.length()) || b.contains(a) || a.contains(b);
        return !first.doubtful() && !related && samePlace(first, second) && areAligned(first.box(), second.box());
    }

    /** As texts are that take each other's place; part of a line need not be. */
    private static boolean areAligned(Box one, Box other) {
        return Math.abs(one.left() - other.left()) <= ALIGNED
                || Math.abs(one.left() + one.right() - other.left() - other.right()) <= 2 * ALIGNED;
    }

    private static boolean samePlace(ReadLine one, ReadLine other) {
        return one.box().grown(4, 2).and(other.box()).area()
                > 0.5 * Math.min(one.box().area(), other.box().area());
    }

    /** What is part of a longer line that stands at the same time is no line; its figures must be the longer's. */
    private static void withoutFragments(List<Group> groups) {
        List<Stay> all =
                groups.stream().flatMap(group -> group.stays().stream()).toList();
        for (Group group : groups) {
            group.stays().removeIf(stay -> all.stream().anyMatch(whole -> isFragment(stay, whole)));
        }
        List<Stay> kept =
                groups.stream().flatMap(group -> group.stays().stream()).toList();
        for (Group group : groups) {
            group.stays().replaceAll(stay -> isDisputed(stay, all) || isContested(stay, kept) ? stay.doubted() : stay);
        }
    }

    /** Whether nearly the same was read at the same place and time with other figures. */
    private static boolean isContested(Stay stay, List<Stay> all) {
        ReadLine line = stay.best();
        String text = bare(line.text());
        return all.stream()
                .filter(other -> other != stay
                        && other.from().plus(GAP).compareTo(stay.to()) < 0
                        && stay.from().plus(GAP).compareTo(other.to()) < 0)
                .map(Stay::best)
                .filter(other -> samePlace(line, other))
                .anyMatch(other -> !figures(line.text()).equals(figures(other.text()))
                        && distance(text, bare(other.text()))
                                <= DIFFERENT
                                        * Math.max(
                                                text.length(),
                                                bare(other.text()).length()));
    }

    private static boolean isDisputed(Stay whole, List<Stay> all) {
        return all.stream()
                .filter(stay -> isFragment(stay, whole))
                .anyMatch(stay -> !isWithin(
                        figures(stay.best().text()), figures(whole.best().text())));
    }

    private static boolean isFragment(Stay stay, Stay of) {
        boolean sameTime = of.from().compareTo(stay.to()) < 0 && stay.from().compareTo(of.to()) < 0;
        if (stay == of || !sameTime) {
            return false;
        }
        Box part = stay.best().box();
        Box whole = of.best().box();
        boolean inside = whole.grown(4, 4).and(part).area() > MOSTLY * part.area();
        return inside
                && bare(of.best().text()).length() > bare(stay.best().text()).length();
    }

    private static boolean joined(List<Group> groups, Stay stay) {
        for (int g = groups.size() - 1; g >= 0; g--) {
            List<Stay> stays = groups.get(g).stays();
            for (int i = 0; i < stays.size(); i++) {
                if (isSame(stays.get(i), stay)) {
                    stays.set(i, stays.get(i).with(stay));
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isSame(Stay before, Stay now) {
        boolean near = now.from().compareTo(before.to().plus(GAP)) <= 0
                && before.from().compareTo(now.to().plus(GAP)) <= 0;
        if (!near) {
            return false;
        }
        ReadLine one = before.best();
        ReadLine other = now.best();
        return samePlace(one, other) && alike(one, other);
    }

    /**
     * Other figures are another text, except where a doubtful reading only missed some of them. A doubtful reading
     * with other figures stays a card of its own: somebody has to look anyway.
     */
    private static boolean alike(ReadLine one, ReadLine other) {
        String a = figures(one.text());
        String b = figures(other.text());
        boolean missed = one.doubtful() != other.doubtful() && (one.doubtful() ? isWithin(a, b) : isWithin(b, a));
        String left = bare(one.text());
        String right = bare(other.text());
        return (a.equals(b) || missed) && distance(left, right) <= DIFFERENT * Math.max(left.length(), right.length());
    }

    /** Whether one text comes of another by leaving signs out. */
    private static boolean isWithin(String shorter, String longer) {
        int at = 0;
        for (int i = 0; i < longer.length() && at < shorter.length(); i++) {
            at += shorter.charAt(at) == longer.charAt(i) ? 1 : 0;
        }
        return at == shorter.length();
    }

    private static String figures(String text) {
        return text.replaceAll("[–—]", "-")
                .replaceAll("(?<!\\d)[-/.,]|[-/.,](?!\\d)", "")
                .replaceAll("[^\\d½⅓⅔¼¾⅛⅜⅝⅞/.,-]", "");
    }

    private static String bare(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("\\s+", "");
    }

    static int distance(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int change = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[to.length()];
    }

    private static Card card(String film, Group group) {
        List<Stay> stays = new ArrayList<>(group.stays());
        stays.sort(Comparator.comparingInt((Stay stay) -> stay.best().box().top())
                .thenComparingInt(stay -> stay.best().box().left()));
        Duration from =
                stays.stream().map(Stay::from).min(Comparator.naturalOrder()).orElse(group.from());
        Duration to =
                stays.stream().map(Stay::to).max(Comparator.naturalOrder()).orElse(group.to());
        return new Card(film, from, to, stays.stream().map(Stay::line).toList());
    }
}
