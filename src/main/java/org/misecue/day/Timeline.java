package org.misecue.day;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Draws the day: a row for everybody and everything that can be busy, time from left to right. SVG 1.1, nothing fetched. */
public final class Timeline {

    private static final int LEFT = 118;
    private static final int WIDTH = 1000;
    private static final int ROW = 34;
    private static final int BAR = 26;
    private static final int TOP = 34;
    private static final int LEGEND = 44;
    private static final double LETTER = 5.9;
    private static final String ASIDE = "set aside";
    private static final String JOBS = "small jobs";

    /** The kinds of bar that the legend explains. */
    private static final List<Entry.Kind> SHOWN =
            List.of(Entry.Kind.FILM, Entry.Kind.TAKE_OUT, Entry.Kind.HANDS, Entry.Kind.WAIT, Entry.Kind.HEAT);

    private final DayPlan plan;
    private final Optional<LocalDateTime> now;
    private final LocalDateTime from;
    private final double minutes;
    private final StringBuilder svg = new StringBuilder();

    private Timeline(DayPlan plan, Optional<LocalDateTime> now) {
        this.plan = plan;
        this.now = now;
        LocalDateTime earliest = plan.entries().stream()
                .map(Entry::start)
                .filter(start -> !start.isBefore(plan.firstShot().minusHours(3)))
                .min(LocalDateTime::compareTo)
                .orElse(plan.firstShot());
        this.from = earliest.truncatedTo(ChronoUnit.HOURS);
        LocalDateTime latest = plan.entries().stream()
                .map(Entry::end)
                .max(LocalDateTime::compareTo)
                .orElse(plan.end());
        this.minutes = Math.max(60, Duration.between(from, latest).toMinutes() + 10);
    }

    /** @param now draws a line at the time; empty for none */
    public static String svg(DayPlan plan, Optional<LocalDateTime> now) {
        return new Timeline(plan, now).draw();
    }

    private String draw() {
        Map<String, List<Entry>> rows = rows();
        int lanes = rows.values().stream()
                .mapToInt(entries -> lanes(entries).size())
                .sum();
        int height = TOP + lanes * ROW + LEGEND;
        put(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\" role=\"img\" font-family=\"Liberation Sans, Arial, sans-serif\">",
                LEFT + WIDTH + 12, height, LEFT + WIDTH + 12, height);
        put(
                "<title>%s: the day from %s to %s</title>",
                text(plan.title()), from.toLocalTime(), plan.end().toLocalTime());
        put(
                "<defs><pattern id=\"wait\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"><rect width=\"6\" height=\"6\" fill=\"#f4e7c8\"/><line x1=\"0\" y1=\"0\" x2=\"0\" y2=\"6\" stroke=\"#d9b45f\" stroke-width=\"2\"/></pattern>"
                        + "<pattern id=\"heat\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\"><rect width=\"6\" height=\"6\" fill=\"#fbe3d8\"/><circle cx=\"3\" cy=\"3\" r=\"1.4\" fill=\"#b4441f\"/></pattern></defs>");
        hours(height);
        int y = TOP;
        for (Map.Entry<String, List<Entry>> row : rows.entrySet()) {
            y = row(row.getKey(), row.getValue(), y);
        }
        now.ifPresent(time -> {
            put(
                    "<line x1=\"%s\" y1=\"%d\" x2=\"%s\" y2=\"%d\" stroke=\"#0b5394\" stroke-width=\"2\"/>",
                    x(time), TOP - 12, x(time), height - LEGEND);
            put(
                    "<text x=\"%s\" y=\"%d\" font-size=\"11\" font-weight=\"bold\" fill=\"#0b5394\" text-anchor=\"middle\">now %s</text>",
                    x(time), TOP - 15, time.toLocalTime());
        });
        legend(height - LEGEND + 26);
        put("</svg>");
        return svg.toString();
    }

    /** People first, then equipment, then what waits without any. */
    private Map<String, List<Entry>> rows() {
        Map<String, List<Entry>> people =
                new TreeMap<>(Comparator.comparing((String who) -> who.startsWith(Project.PRESENTER) ? 0 : 1)
                        .thenComparing(who -> who));
        Map<String, List<Entry>> things = new TreeMap<>();
        List<Entry> jobs = new ArrayList<>();
        List<Entry> aside = new ArrayList<>();
        for (Entry entry : plan.entries()) {
            if (entry.start().isBefore(from)) {
                continue;
            }
            entry.who().forEach(who -> people.computeIfAbsent(who, any -> new ArrayList<>())
                    .add(entry));
            entry.with().forEach(with -> things.computeIfAbsent(with, any -> new ArrayList<>())
                    .add(entry));
            if (entry.kind() == Entry.Kind.JOB) {
                jobs.add(entry);
            } else if (entry.who().isEmpty() && entry.with().isEmpty()) {
                aside.add(entry);
            }
        }
        Map<String, List<Entry>> rows = new LinkedHashMap<>(people);
        things.entrySet().stream()
                .filter(row -> row.getKey().startsWith("oven"))
                .forEach(row -> rows.put(row.getKey(), row.getValue()));
        things.forEach(rows::putIfAbsent);
        put(rows, ASIDE, aside);
        put(rows, JOBS, jobs);
        return rows;
    }

    private static void put(Map<String, List<Entry>> rows, String name, List<Entry> entries) {
        if (!entries.isEmpty()) {
            rows.put(name, entries);
        }
    }

    /** Entries of one row that overlap lie under each other. */
    private static List<List<Entry>> lanes(List<Entry> entries) {
        List<List<Entry>> lanes = new ArrayList<>();
        for (Entry entry : entries) {
            lanes.stream()
                    .filter(lane -> !lane.get(lane.size() - 1).end().isAfter(entry.start()))
                    .findFirst()
                    .orElseGet(() -> {
                        List<Entry> lane = new ArrayList<>();
                        lanes.add(lane);
                        return lane;
                    })
                    .add(entry);
        }
        return lanes;
    }

    private int row(String name, List<Entry> entries, int top) {
        int y = top;
        put(
                "<text x=\"6\" y=\"%d\" font-size=\"13\" font-weight=\"bold\" fill=\"#22201c\">%s</text>",
                y + 20, text(name));
        for (List<Entry> lane : lanes(entries)) {
            for (Entry entry : lane) {
                bar(entry, name, y + (ROW - BAR) / 2);
            }
            y += ROW;
        }
        put("<line x1=\"0\" y1=\"%d\" x2=\"%d\" y2=\"%d\" stroke=\"#b9ad98\"/>", y, LEFT + WIDTH, y);
        return y;
    }

    private void bar(Entry entry, String row, int y) {
        double width =
                Math.max(3, WIDTH * Duration.between(entry.start(), entry.end()).toMinutes() / minutes);
        put(
                entry.done() ? "<g opacity=\"0.45\"><title>done: %s–%s %d %s</title>" : "<g><title>%s–%s %d %s</title>",
                entry.start().toLocalTime(),
                entry.end().toLocalTime(),
                entry.id(),
                text(entry.what()));
        put(
                "<rect x=\"%s\" y=\"%d\" width=\"%s\" height=\"%d\" rx=\"3\" fill=\"%s\" stroke=\"#22201c\" stroke-width=\"%s\"/>",
                x(entry.start()), y, number(width), BAR, fill(entry.kind()), entry.critical() ? "2.6" : "0.7");
        String label = label(entry, row, width);
        if (!label.isEmpty()) {
            put(
                    "<text x=\"%s\" y=\"%d\" font-size=\"11\" fill=\"#22201c\">%s</text>",
                    number(Double.parseDouble(x(entry.start())) + 3), y + 17, text(label));
        }
        put("</g>");
    }

    /** The number always where it fits, then as many of the words as fit. */
    private static String label(Entry entry, String row, double width) {
        int letters = (int) ((width - 5) / LETTER);
        String number = String.valueOf(entry.id());
        if (letters < number.length()) {
            return "";
        }
        boolean camera = row.startsWith(Project.CAMERA) && !entry.setUp().isEmpty();
        String words = number + " " + (camera ? entry.setUp() : entry.what());
        if (words.length() <= letters) {
            return words;
        }
        return letters < number.length() + 4
                ? number
                : words.substring(0, letters - 1).stripTrailing() + "…";
    }

    private static String fill(Entry.Kind kind) {
        return switch (kind) {
            case FILM -> "#bcd6c3";
            case TAKE_OUT -> "#e9b49c";
            case HANDS, JOB -> "#d7d3ea";
            case WAIT -> "url(#wait)";
            case HEAT -> "url(#heat)";
            case PAUSE, AWAY -> "#e6e1d8";
        };
    }

    private void hours(int height) {
        for (LocalDateTime hour = from; !hour.isAfter(from.plusMinutes((long) minutes)); hour = hour.plusMinutes(30)) {
            boolean full = hour.getMinute() == 0;
            put(
                    "<line x1=\"%s\" y1=\"%d\" x2=\"%s\" y2=\"%d\" stroke=\"%s\"/>",
                    x(hour), TOP - 6, x(hour), height - LEGEND, full ? "#b9ad98" : "#e6ddcb");
            if (full) {
                put(
                        "<text x=\"%s\" y=\"%d\" font-size=\"12\" fill=\"#22201c\" text-anchor=\"middle\">%s</text>",
                        x(hour), TOP - 12, hour.toLocalTime());
            }
        }
    }

    private void legend(int y) {
        int x = LEFT;
        for (Entry.Kind kind : SHOWN) {
            put(
                    "<rect x=\"%d\" y=\"%d\" width=\"16\" height=\"12\" fill=\"%s\" stroke=\"#22201c\" stroke-width=\"0.7\"/>",
                    x, y - 10, fill(kind));
            put("<text x=\"%d\" y=\"%d\" font-size=\"11\" fill=\"#22201c\">%s</text>", x + 21, y, kind.words());
            x += 40 + kind.words().length() * 7;
        }
        put(
                "<rect x=\"%d\" y=\"%d\" width=\"16\" height=\"12\" fill=\"#ffffff\" stroke=\"#22201c\" stroke-width=\"2.6\"/>",
                x, y - 10);
        put(
                "<text x=\"%d\" y=\"%d\" font-size=\"11\" fill=\"#22201c\">thick edge: the day ends later if this begins later</text>",
                x + 21, y);
    }

    private String x(LocalDateTime time) {
        return number(LEFT + WIDTH * Duration.between(from, time).toMinutes() / minutes);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private void put(String format, Object... values) {
        svg.append(values.length == 0 ? format : String.format(Locale.ROOT, format, values))
                .append('\n');
    }

    private static String text(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
