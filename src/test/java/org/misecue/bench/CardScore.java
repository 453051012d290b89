package org.misecue.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.WrittenQuantity;
import org.misecue.shown.Card;
import org.misecue.shown.CardLine;

/** How right a reading is, counted over films. */
final class CardScore {

    private static final Pattern START = Pattern.compile("(?<![\\p{L}\\d.,/½¼¾⅓⅔⅛])(?:[\\d½¼¾⅓⅔⅛]|gas mark)");
    private static final double ALIKE = 0.5;
    private static final Duration FRAME = Duration.ofMillis(200);

    private final QuantityReader reader = new QuantityReader();
    int cards;
    int cardsFound;
    int amounts;
    int right;
    int rightAndSure;
    int doubtful;
    int wrongAndSure;
    int falseLines;
    final List<Long> startErrors = new ArrayList<>();
    final List<Long> endErrors = new ArrayList<>();
    final List<String> rows = new ArrayList<>();

    void add(CardFilm film, List<Card> read) {
        List<Card> unused = new ArrayList<>(read);
        List<CardLine> matched = new ArrayList<>();
        for (CardTruth truth : film.cards()) {
            cards++;
            List<Card> over =
                    read.stream().filter(card -> overlaps(card, truth)).toList();
            Map<Integer, CardLine> pairs = paired(truth.lines(), over);
            matched.addAll(pairs.values());
            for (int i = 0; i < truth.lines().size(); i++) {
                judge(film, truth, truth.lines().get(i), Optional.ofNullable(pairs.get(i)));
            }
            boolean found = !pairs.isEmpty();
            cardsFound += found ? 1 : 0;
            times(film, truth, over, matched);
        }
        for (Card card : unused) {
            for (CardLine line : card.lines()) {
                if (matched.stream().noneMatch(other -> other == line)) {
                    falseLines++;
                    boolean harmful = !line.doubtful() && !amounts(line.text()).isEmpty();
                    wrongAndSure += harmful ? 1 : 0;
                    rows.add((harmful ? "WRONG " : "false ") + film.name() + " " + card.from() + " " + card.to() + " "
                            + line);
                }
            }
        }
    }

    private record Pair(int truth, CardLine read, double likeness) {}

    /** Each line of a card with one of those read, the most alike first: none stands for two. */
    private static Map<Integer, CardLine> paired(List<String> truth, List<Card> over) {
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < truth.size(); i++) {
            for (Card card : over) {
                for (CardLine line : card.lines()) {
                    pairs.add(new Pair(i, line, likeness(truth.get(i), line.text())));
                }
            }
        }
        pairs.removeIf(pair -> pair.likeness() < ALIKE);
        pairs.sort(Comparator.comparingDouble(Pair::likeness).reversed());
        Map<Integer, CardLine> paired = new LinkedHashMap<>();
        for (Pair pair : pairs) {
            boolean used = paired.values().stream().anyMatch(line -> line == pair.read());
            if (!used) {
                paired.putIfAbsent(pair.truth(), pair.read());
            }
        }
        return paired;
    }

    /** For longer than between two pictures that are looked at: times cannot be read more finely. */
    private static boolean overlaps(Card card, CardTruth truth) {
        return card.from().plus(FRAME).compareTo(truth.to()) < 0
                && card.to().compareTo(truth.from().plus(FRAME)) > 0;
    }

    private void judge(CardFilm film, CardTruth truth, String line, Optional<CardLine> read) {
        List<String> wanted = amounts(line);
        List<String> got = read.map(other -> amounts(other.text())).orElse(List.of());
        boolean isDoubtful = read.map(CardLine::doubtful).orElse(false);
        amounts += wanted.size();
        long same = wanted.equals(got)
                ? wanted.size()
                : wanted.stream().filter(got::contains).count();
        right += (int) same;
        rightAndSure += isDoubtful ? 0 : (int) same;
        doubtful += isDoubtful && !wanted.isEmpty() ? wanted.size() : 0;
        boolean wrong = read.isPresent() && !isDoubtful && got.stream().anyMatch(amount -> !wanted.contains(amount));
        wrongAndSure += wrong ? 1 : 0;
        if (!wanted.equals(got)) {
            rows.add((wrong ? "WRONG " : isDoubtful ? "doubt " : "lost  ") + film.name() + " " + truth.from() + " "
                    + truth.look() + " " + film.picture() + " " + film.height() + " "
                    + truth.font().getFontName() + " | "
                    + line + " | " + read.map(CardLine::text).orElse("-"));
        } else if (isDoubtful && !wanted.isEmpty()) {
            rows.add("right?" + " " + film.name() + " " + line + " | "
                    + read.map(CardLine::text).orElse("-"));
        }
    }

    private void times(CardFilm film, CardTruth truth, List<Card> over, List<CardLine> matched) {
        // A line that the next card shows too stands on without a break.
        List<String> own = truth.lines().stream()
                .filter(line -> film.cards().stream()
                        .noneMatch(other -> other != truth && other.lines().contains(line)))
                .toList();
        List<Card> its = over.stream()
                .filter(card ->
                        card.lines().stream().anyMatch(line -> matched.stream().anyMatch(m -> m == line)))
                .filter(card -> own.stream()
                        .anyMatch(line -> card.lines().stream().anyMatch(o -> likeness(line, o.text()) >= ALIKE)))
                .toList();
        its.stream()
                .map(Card::from)
                .min(Comparator.naturalOrder())
                .ifPresent(from -> note(startErrors, film, truth.lines(), truth.from(), from));
        its.stream()
                .map(Card::to)
                .max(Comparator.naturalOrder())
                .ifPresent(to -> note(endErrors, film, truth.lines(), truth.to(), to));
    }

    private void note(List<Long> errors, CardFilm film, List<String> lines, Duration wanted, Duration got) {
        long error = apart(got, wanted);
        errors.add(error);
        if (error > 500) {
            rows.add("time  " + film.name() + " " + lines + " " + wanted + " " + got);
        }
    }

    private static long apart(Duration one, Duration other) {
        return one.minus(other).abs().toMillis();
    }

    /** All amounts of a line, each as the reader understands it. */
    List<String> amounts(String line) {
        List<String> amounts = new ArrayList<>();
        Matcher start = START.matcher(line);
        int at = 0;
        while (start.find(at)) {
            Optional<WrittenQuantity> read = reader.read(line.substring(start.start()));
            read.ifPresent(amount -> amounts.add(amount.quantity().toString()));
            read.flatMap(WrittenQuantity::alternative).ifPresent(other -> amounts.add(other.toString()));
            at = Math.max(
                    start.end(), start.start() + read.map(WrittenQuantity::end).orElse(1));
            if (at > line.length()) {
                break;
            }
        }
        return amounts;
    }

    static double likeness(String one, String other) {
        String a = one.replace(" ", "").toLowerCase(java.util.Locale.ROOT);
        String b = other.replace(" ", "").toLowerCase(java.util.Locale.ROOT);
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return 1 - (double) row[b.length()] / Math.max(1, Math.max(a.length(), b.length()));
    }
}
