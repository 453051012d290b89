package org.misecue.shots;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** Reads one shot template, by the rules of {@code shot-templates/schema.json}. */
final class TemplateReader {

    private static final Set<String> KEYS = Set.of("technique", "words", "adds", "coverage", "hazards");
    private static final Set<String> COVERAGE_KEYS =
            Set.of("setup", "camera", "see", "hands", "sound", "lower-third", "takes", "one-chance");
    private static final Set<String> BLANKS = Set.of("ingredients", "amounts");
    private static final Pattern BLANK = Pattern.compile("\\{([^}]*)}");
    private static final Pattern KEY = Pattern.compile("[a-z]+(-[a-z]+)*");
    private static final int MOST_SHOTS = 6;

    private TemplateReader() {}

    /** @throws BadInput with line and column of the first fault */
    static ShotTemplate read(String file, String text) {
        Fields fields = Fields.of(Yaml.read(file, text), KEYS);
        String technique = fields.text("technique");
        if (!KEY.matcher(technique).matches()) {
            throw new BadInput(
                    fields.place("technique"),
                    "\"" + technique + "\" is no key of a technique; use small letters and hyphens, as in \"rub-in\".");
        }
        List<Coverage> coverage =
                fields.items("coverage").stream().map(TemplateReader::coverage).toList();
        if (coverage.isEmpty() || coverage.size() > MOST_SHOTS) {
            throw new BadInput(fields.place("coverage"), "\"coverage\" must list 1 to " + MOST_SHOTS + " shots.");
        }
        return new ShotTemplate(
                technique,
                fields.texts("words").stream()
                        .map(word -> word.toLowerCase(Locale.ROOT))
                        .toList(),
                fields.flag("adds"),
                coverage,
                fields.texts("hazards"));
    }

    private static Coverage coverage(Yaml item) {
        Fields fields = Fields.of(item, COVERAGE_KEYS);
        Coverage coverage = new Coverage(
                fields.text("setup"),
                fields.text("camera"),
                fields.text("see"),
                fields.optionalText("hands").orElse(""),
                fields.text("sound"),
                fields.optionalText("lower-third"),
                fields.digit("takes"),
                fields.flag("one-chance"));
        checkBlanks(fields.place("see"), coverage.see());
        checkBlanks(fields.place("lower-third"), coverage.lowerThird().orElse(""));
        return coverage;
    }

    private static void checkBlanks(Place place, String text) {
        Matcher matcher = BLANK.matcher(text);
        while (matcher.find()) {
            if (!BLANKS.contains(matcher.group(1))) {
                throw new BadInput(place, "\"" + matcher.group() + "\" is not known; use {ingredients} or {amounts}.");
            }
        }
    }
}
