package org.misecue.episode;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.scale.Batch;

/**
 * What a new episode's {@code episode.yaml} says before anybody wrote in it.
 *
 * @param title of the episode
 * @param size how the batch is told: times, makes, tin or have; empty for the recipe's own
 * @param amount the words to it: "24 buns"
 * @param takes how often each bowl is filled, from 1 to 9
 */
public record FirstSettings(String title, String size, String amount, int takes) {

    private static final String TEXT = """
            # Every setting may be left out; take the # off a line to use it.
            title: "%s"
            #language: en-GB
            %s
            %s              # how often each bowl is filled
            #spare: 0              # more sets that stand by for a take that goes wrong
            #first-shot: 2026-05-04 10:00    # jobs are counted back from here
            #made-earlier: [8]     # steps whose result stands ready before the day
            #spares:               # weighed out once more
            #  failures: yes       # one more egg, sugar for a second caramel
            #  hero: yes           # a fresh finish for the beauty shots
            #day:
            #  presenters: 1
            #  cameras: 1
            #  end: 17:30
            #  breaks:
            #    - {from: 12:00, to: 14:00, for: 45 min}
            #  daylight: {from: 10:00, to: 15:30, set-ups: [hero table]}
            #  appointments:
            #    - {at: 11:00, for: 20 min, who: presenter, what: delivery}
            #    - {at: 15:00, shot: 22}
            #  line-up: 2 min      # to frame, focus and slate a shot
            #  set-up: 5 min       # to move camera and lights
            #  shelves: 2          # bakes of one heat in an oven
            #  rings: 4            # of the hob
            #  stand-mixer: yes
            #  after: ["7: 1, 6"]  # step 7 comes after steps 1 and 6
            #narration:
            #  offsets:            # what is added to a file's own times to have its film's
            #    part-2.vtt: "0:12:30"
            #kitchen:
            #  ovens: 1
            #  scale: 1 g          # the smallest step that the scale shows
            #  spoons: metric      # or australia, us, us-label, uk; else the language's country
            #  mixer: 4.8 l        # what the mixer's bowl holds
            #publish:
            #  max-length: 5000    # characters in the description
            #  household: us-label # whose cups: or us, metric, uk, australia
            #  first: metric       # or household: which measure stands first
            #  case: capitals      # or bold: how allergens stand out
            #  method: yes         # or no
            #  film: narration/main.vtt    # whose clock the chapters follow
            """;

    private static final String NO_BATCH =
            "#batch:\n#  times: 2             # or  makes: 24  or  tin: 23 cm round  or  have: 310 g butter";

    private static final Pattern TITLE = Pattern.compile("(?m)^title: \"(.*)\"$");
    private static final Pattern BATCH = Pattern.compile("(?m)^batch:\n {2}(\\w+): \"(.*)\"$");
    private static final Pattern TAKES = Pattern.compile("(?m)^takes: (\\d) ");

    /** @throws BadInput if a size cannot be meant so, or nobody films so many takes */
    public FirstSettings {
        title = oneLine(title);
        amount = size.isEmpty() ? "" : oneLine(amount);
        if (takes < 1 || takes > 9) {
            throw new BadInput(Place.of("Takes"), "expected a number from 1 to 9.");
        }
        batch(size, amount);
    }

    /** For a recipe as it is written. */
    public static FirstSettings of(String title) {
        return new FirstSettings(title, "", "", 1);
    }

    /** The batch that is meant. */
    public Batch batch() {
        return batch(size, amount);
    }

    private static Batch batch(String size, String amount) {
        Place place = Place.of("Batch");
        return switch (size) {
            case "" -> Batch.WRITTEN;
            case "times" -> Batch.times(place, amount);
            case "makes" -> Batch.makes(place, amount);
            case "tin" -> Batch.tin(place, amount);
            case "have" -> Batch.left(place, amount);
            default -> throw new BadInput(place, "expected one of times, makes, tin and have.");
        };
    }

    /** The file. */
    String text() {
        String batch = size.isEmpty() ? NO_BATCH : "batch:\n  %s: \"%s\"".formatted(size, quoted(amount));
        return TEXT.formatted(quoted(title), batch, (takes == 1 ? "#" : "") + "takes: " + takes);
    }

    /** The settings behind a text that {@link #text} made; empty for any other. */
    static Optional<FirstSettings> read(String text) {
        Matcher batch = BATCH.matcher(text);
        boolean sized = batch.find();
        try {
            FirstSettings settings = new FirstSettings(
                    first(TITLE, text).map(FirstSettings::unquoted).orElse(""),
                    sized ? batch.group(1) : "",
                    sized ? unquoted(batch.group(2)) : "",
                    first(TAKES, text).map(Integer::parseInt).orElse(1));
            return Optional.of(settings).filter(one -> one.text().equals(text));
        } catch (BadInput e) {
            return Optional.empty();
        }
    }

    private static Optional<String> first(Pattern pattern, String text) {
        Matcher found = pattern.matcher(text);
        return found.find() ? Optional.of(found.group(1)) : Optional.empty();
    }

    /** Without what YAML could not hold between quotes. */
    private static String oneLine(String words) {
        return words.replaceAll("[\\p{Cc}\\p{Cs}\\u2028\\u2029\\uFEFF\\uFFFE\\uFFFF]", " ")
                .strip();
    }

    /** Inside double quotes of YAML. */
    private static String quoted(String words) {
        return words.replace("\\", "\\\\").replace("\"", "\\\"");
    }

    private static String unquoted(String words) {
        return words.replaceAll("\\\\(.)", "$1");
    }
}
