package org.misecue.shots;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.notice.BadInput;
import org.misecue.notice.NearestWord;

/** Reads one shot template, by the rules of {@code shot-templates/schema.json}. */
final class TemplateReader {

    private static final List<String> KEYS = List.of("technique", "words", "adds", "cooks", "coverage", "hazards");
    private static final List<String> COVERAGE_KEYS = List.of(
            "kind", "only", "early", "setup", "camera", "see", "hands", "sound", "lower-third", "takes", "one-chance");
    private static final List<String> HAZARD_KEYS = List.of("what", "care", "holds");
    private static final List<ShotKind> KINDS =
            List.of(ShotKind.ACTION, ShotKind.PICKUP, ShotKind.ESTABLISHING, ShotKind.REVEAL);
    private static final Pattern BLANK = Pattern.compile("\\{([a-z]*)}|[{}]");
    private static final Pattern KEY = Pattern.compile("[a-z]+(?:-[a-z]+)*+");
    private static final Pattern PHRASE = Pattern.compile("\\p{L}.+");
    private static final int MOST_SHOTS = 6;

    private TemplateReader() {}

    /** @throws BadInput with line and column of the first fault */
    static ShotTemplate read(String file, String text) {
        return read(TemplateFields.of(file, text, KEYS));
    }

    /**
     * An episode's own: for a technique that the program knows, or with the words that tell it.
     *
     * @throws BadInput with line and column of the first fault
     */
    static ShotTemplate readOwn(String file, String text, List<String> techniques) {
        TemplateFields fields = TemplateFields.of(file, text, KEYS);
        ShotTemplate template = read(fields);
        if (template.words().isEmpty() && !techniques.contains(template.technique())) {
            String remedy = NearestWord.of(template.technique(), techniques)
                    .map(near -> "did you mean “" + near + "”?")
                    .orElse("add “words: [...]” that tell it in a method.");
            throw new BadInput(
                    fields.place("technique"),
                    "“" + template.technique() + "” is no technique that methods are read for; " + remedy);
        }
        return template;
    }

    private static ShotTemplate read(TemplateFields fields) {
        String technique = fields.text("technique");
        if (!KEY.matcher(technique).matches()) {
            throw new BadInput(
                    fields.place("technique"),
                    "“" + technique + "” is no key of a technique; use small letters and hyphens, as in “rub-in”.");
        }
        List<Coverage> coverage = fields.mappings("coverage", COVERAGE_KEYS).stream()
                .map(TemplateReader::coverage)
                .toList();
        if (coverage.isEmpty() || coverage.size() > MOST_SHOTS) {
            throw fields.wrong("coverage", "a list of 1 to " + MOST_SHOTS + " shots");
        }
        return new ShotTemplate(
                technique,
                words(fields),
                fields.choice("adds", List.of(Adds.values()), Adds::code),
                fields.flag("cooks"),
                coverage,
                fields.mappings("hazards", HAZARD_KEYS).stream()
                        .map(TemplateReader::hazard)
                        .toList());
    }

    private static List<MethodPhrase> words(TemplateFields fields) {
        List<String> words = fields.texts("words");
        if (!words.stream().allMatch(word -> PHRASE.matcher(word).matches())) {
            throw fields.wrong("words", "beginnings of words, of at least two signs and beginning with a letter");
        }
        return words.stream().map(MethodPhrase::of).toList();
    }

    private static HazardRule hazard(TemplateFields fields) {
        return new HazardRule(new Hazard(fields.text("what"), fields.text("care")), fields.texts("holds"));
    }

    private static Coverage coverage(TemplateFields fields) {
        for (String key : List.of("see", "hands", "lower-third")) {
            fields.optionalText(key).ifPresent(text -> checkBlanks(fields, key, text));
        }
        return new Coverage(
                fields.choice("kind", KINDS, ShotKind::code),
                fields.choice("only", List.of(Only.values()), Only::code),
                fields.flag("early"),
                fields.text("setup"),
                fields.text("camera"),
                fields.text("see"),
                fields.optionalText("hands").orElse(""),
                fields.text("sound"),
                fields.optionalText("lower-third"),
                fields.digit("takes"),
                fields.flag("one-chance"));
    }

    private static void checkBlanks(TemplateFields fields, String key, String text) {
        Matcher matcher = BLANK.matcher(text);
        while (matcher.find()) {
            if (matcher.group(1) == null || !Blanks.NAMES.contains(matcher.group(1))) {
                throw new BadInput(
                        fields.place(key),
                        "“" + matcher.group() + "” is not known; use {" + String.join("}, {", Blanks.NAMES) + "}.");
            }
        }
    }
}
