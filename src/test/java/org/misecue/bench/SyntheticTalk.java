package org.misecue.bench;

import static org.misecue.bench.ArchiveWords.any;

import com.ibm.icu.text.RuleBasedNumberFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.misecue.bench.SyntheticRecipe.Line;

/** Twelve minutes of talk over an invented recipe, step by step, as a recogniser would write it down. */
final class SyntheticTalk {

    /** At two and a half words a second, a usual pace of speech on camera; from memory, no source. */
    private static final int WORDS = 12 * 60 * 5 / 2;

    private static final int MILLIS_PER_WORD = 400;
    private static final int LEAST_IN_CUE = 8;
    private static final int MOST_IN_CUE = 16;

    /** One amount in so many is said otherwise than it is written. */
    private static final int WRONG_ONE_IN = 12;

    private static final RuleBasedNumberFormat SPELLED =
            new RuleBasedNumberFormat(Locale.UK, RuleBasedNumberFormat.SPELLOUT);

    private final SyntheticRecipe recipe;
    private final ArchiveWords words;
    private final Random random;
    private final List<String> said = new ArrayList<>();

    private SyntheticTalk(SyntheticRecipe recipe, ArchiveWords words, Random random) {
        this.recipe = recipe;
        this.words = words;
        this.random = random;
    }

    /** As a WebVTT file. */
    static String over(SyntheticRecipe recipe, ArchiveWords words, Random random) {
        SyntheticTalk talk = new SyntheticTalk(recipe, words, random);
        talk.speak();
        return talk.cues();
    }

    private void speak() {
        say(any(words.openings(), random), anyLine());
        int steps = recipe.steps().size();
        for (int i = 0; i < steps; i++) {
            for (Line line : recipe.steps().get(i).lines()) {
                say(any(words.amounts(), random), line);
                say(any(words.talk(), random), line);
            }
            while (said.size() < WORDS * (i + 1) / steps) {
                say(any(words.talk(), random), anyLine());
            }
        }
        say(any(words.closings(), random), anyLine());
    }

    private Line anyLine() {
        return any(recipe.lines(), random);
    }

    private void say(String sentence, Line line) {
        String fitting = line.unit().isEmpty() ? sentence.replace("N of I", "N I") : sentence;
        for (String word : fitting.split(" ")) {
            String spoken =
                    switch (word) {
                        case "N" -> spoken(line);
                        case "I" -> line.name();
                        case "P" -> words.place(random);
                        case "TITLE" -> recipe.title();
                        default -> word;
                    };
            said.addAll(List.of(spoken.toLowerCase(Locale.ROOT).split("[ -]")));
        }
    }

    private String spoken(Line line) {
        int amount = random.nextInt(WRONG_ONE_IN) == 0 ? line.amount() + (line.amount() < 10 ? 1 : 25) : line.amount();
        String number = random.nextBoolean() ? Integer.toString(amount) : SPELLED.format(amount);
        return number
                + switch (line.unit()) {
                    case "g" -> " grams";
                    case "ml" -> " mils";
                    case "tsp" -> amount == 1 ? " teaspoon" : " teaspoons";
                    default -> "";
                };
    }

    private String cues() {
        StringBuilder out = new StringBuilder("WEBVTT\n");
        int from = 0;
        while (from < said.size()) {
            int to = Math.min(said.size(), from + LEAST_IN_CUE + random.nextInt(MOST_IN_CUE - LEAST_IN_CUE + 1));
            out.append('\n')
                    .append(clock(from))
                    .append(" --> ")
                    .append(clock(to))
                    .append('\n');
            out.append(String.join(" ", said.subList(from, to))).append('\n');
            from = to;
        }
        return out.toString();
    }

    private static String clock(int words) {
        int millis = words * MILLIS_PER_WORD;
        return String.format(
                Locale.ROOT,
                "%02d:%02d:%02d.%03d",
                millis / 3_600_000,
                millis / 60_000 % 60,
                millis / 1000 % 60,
                millis % 1000);
    }
}
