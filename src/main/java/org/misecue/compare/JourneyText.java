package org.misecue.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.compare.Journey.Stop;
import org.misecue.narration.Clock;

/** Journeys for a terminal of eighty columns. */
public final class JourneyText {

    private static final int WIDTH = 80;
    private static final String SCALE = "Figures in brackets say how well an amount and a name go together: from "
            + Telling.score(Scoring.ENOUGH) + " on it counts, a number without a unit from "
            + Telling.score(Scoring.ENOUGH_FOR_BARE) + "; from " + Telling.score(Scoring.SURE)
            + " on there is no doubt.";

    private static final Pattern SCORE = Pattern.compile("\\(\\d+\\.\\d\\)");

    private JourneyText() {}

    /** @param heardOtherwise sentences about words that somebody corrected */
    public static String of(List<Journey> journeys, List<String> heardOtherwise) {
        List<String> out = new ArrayList<>();
        if (!heardOtherwise.isEmpty()) {
            out.add("");
            out.add("Corrected by ear");
            heardOtherwise.forEach(words -> wrap(out, "  ", words));
        }
        return of(journeys) + out.stream().map(line -> line + "\n").collect(Collectors.joining());
    }

    static String of(List<Journey> journeys) {
        List<String> out = new ArrayList<>();
        boolean scored = journeys.stream()
                .flatMap(journey -> Stream.concat(journey.stops().stream(), journey.nearBy().stream()))
                .anyMatch(stop -> SCORE.matcher(stop.sentence()).find());
        if (scored) {
            wrap(out, "", SCALE);
            out.add("");
        }
        for (int i = 0; i < journeys.size(); i++) {
            if (i > 0) {
                out.add("");
            }
            journey(out, journeys.get(i));
        }
        return String.join("\n", out) + "\n";
    }

    private static void journey(List<String> out, Journey journey) {
        String where = journey.where().isEmpty() ? "" : " (" + journey.where() + ")";
        String verdict = journey.verdict().map(FindingWriter::word).orElse("no verdict");
        wrap(out, "", journey.what() + where + " – " + verdict);
        journey.stops().forEach(stop -> stop(out, stop));
        out.add("");
        journey.outcome().forEach(sentence -> wrap(out, "  ", sentence));
        if (!journey.nearBy().isEmpty()) {
            out.add("");
            out.add("  Also heard near by");
            journey.nearBy().forEach(stop -> stop(out, stop));
        }
    }

    private static void stop(List<String> out, Stop stop) {
        out.add("");
        String time = Clock.hms(stop.evidence().moment().at());
        wrap(out, "  %7s  ".formatted(time), "“" + stop.evidence().quote() + "”");
        wrap(out, " ".repeat(11), stop.sentence());
    }

    /** The text behind its beginning, the later lines as far in. */
    private static void wrap(List<String> out, String beginning, String text) {
        StringBuilder line = new StringBuilder(beginning);
        for (String word : text.split(" (?!%)")) {
            if (line.length() > beginning.length() && line.length() + 1 + word.length() > WIDTH) {
                out.add(line.toString());
                line = new StringBuilder(" ".repeat(beginning.length()));
            }
            line.append(line.length() > beginning.length() ? " " : "").append(word);
        }
        out.add(line.toString());
    }
}
