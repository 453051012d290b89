package org.misecue.recipe;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.misecue.quantity.FirstSigns;

/** What is done in a step, told from its words by the table {@code techniques.csv}; a new technique is a new row there. */
final class Techniques {

    /** One row of the table; of several phrases the first that fits counts. */
    record Technique(String key, List<Cued> phrases, boolean alone, Duration hands, boolean listed) {}

    private record Phrase(Technique technique, Cued words) {}

    private static final class Standard {
        static final Techniques TABLE = load();
    }

    /** What may not stand before a technique; there a run of blanks without bound would be tried from each of its signs. */
    private static final Pattern BEFORE = Pattern.compile("\\(\\?<[!=](?:[^()]|\\([^()]*\\))*\\)");

    private static final String ONE_BLANK = "\\h";

    private static final Cued FOR = Cued.inAnyCase("\\bfor\\h+(?:the\\h+)?$");
    private static final Cued THE = Cued.inAnyCase("\\b(?:the|your|some)\\h+(?:dry\\h+|wet\\h+)?$");
    private final List<Technique> rows;
    private final Map<String, Boolean> alone;
    /** The phrases by the two letters that they begin with. */
    private final List<Phrase[]> byLetters;

    private Techniques(List<Technique> rows) {
        this.rows = rows;
        this.byLetters = byLetters(rows);
        this.alone = rows.stream().collect(Collectors.toMap(Technique::key, Technique::alone, (first, other) -> first));
    }

    static Techniques standard() {
        return Standard.TABLE;
    }

    /** Whether what goes on needs nobody; a time without words about it is one of waiting. */
    boolean runsAlone(String key) {
        return alone.getOrDefault(key, true);
    }

    /** The keys of those that steps list. */
    List<String> listed() {
        return rows.stream()
                .filter(Technique::listed)
                .map(Technique::key)
                .distinct()
                .toList();
    }

    /** Every technique of a step, in the order of its words. */
    Sightings in(Wording wording) {
        String step = wording.text();
        List<Sightings.Sighting> found = new ArrayList<>();
        for (int at = 0; at + 1 < step.length(); at++) {
            int letters = FirstSigns.pair(step, at);
            if (letters >= 0 && (at == 0 || !isInWord(step.codePointBefore(at)))) {
                addAt(at, byLetters.get(letters), wording, found);
            }
        }
        found.removeIf(each -> isPurpose(wording, each) || isThing(wording, each));
        found.sort(Comparator.comparingInt(Sightings.Sighting::start).thenComparing(each -> -each.end()));
        return new Sightings(wording, List.copyOf(found));
    }

    /** What begins here; a technique goes on only behind its last words. */
    private static void addAt(int start, Phrase[] phrases, Wording step, List<Sightings.Sighting> found) {
        for (Phrase phrase : phrases) {
            Optional<Matcher> words = phrase.words.at(step, start);
            if (words.isPresent()
                    && found.stream().noneMatch(each -> each.technique() == phrase.technique && each.end() > start)) {
                found.add(new Sightings.Sighting(
                        phrase.technique, start, words.get().end()));
            }
        }
    }

    private static boolean isInWord(int sign) {
        return sign == '-' || Character.isLetter(sign);
    }

    /** "For brushing" says what something will be for, not what is done now. */
    private static boolean isPurpose(Wording step, Sightings.Sighting each) {
        return each.in(step).endsWith("ing") && FOR.endsAt(step, each.start());
    }

    /** "The chopped nuts" are chopped before, and "the dry mix" is a thing. */
    private static boolean isThing(Wording step, Sightings.Sighting each) {
        return !each.in(step).strip().contains(" ") && THE.endsAt(step, each.start());
    }

    private static List<Phrase[]> byLetters(List<Technique> rows) {
        List<Phrase> all = rows.stream()
                .flatMap(row -> row.phrases.stream().map(words -> new Phrase(row, words)))
                .toList();
        return IntStream.range(0, FirstSigns.PAIRS)
                .mapToObj(letters -> all.stream()
                        .filter(phrase -> phrase.words.mayBeginWith(letters))
                        .toArray(Phrase[]::new))
                .toList();
    }

    private static Techniques load() {
        return new Techniques(
                TableFile.rows("techniques.csv").stream().map(Techniques::row).toList());
    }

    private static Technique row(String line) {
        // The stroke also divides regular expressions; columns have blanks around it.
        String[] cells = line.split(" \\| ", -1);
        String key = cells[0].strip();
        List<Cued> phrases = Arrays.stream(cells[1].split(" ; ", -1))
                .map(words -> BEFORE.matcher(words.strip())
                        .replaceAll(before ->
                                Matcher.quoteReplacement(before.group().replace(" ", ONE_BLANK))))
                .map(words -> words.replace(" ", "\\h+"))
                .map(Cued::inAnyCase)
                .toList();
        return new Technique(
                key.toLowerCase(Locale.ROOT),
                phrases,
                cells[2].strip().equals("alone"),
                Duration.ofMinutes(Long.parseLong(cells[3].strip())),
                !key.equals(key.toUpperCase(Locale.ROOT)));
    }
}
