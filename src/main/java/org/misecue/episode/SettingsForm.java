package org.misecue.episode;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.misecue.episode.EpisodeSettings.Kitchen;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.scale.Sets;
import org.yaml.snakeyaml.nodes.MappingNode;

/** The settings that exist, each with its bounds and an example for whoever mistypes it. */
final class SettingsForm {

    private static final List<String> KEYS = List.of(
            "title",
            "language",
            "batch",
            "takes",
            "spare",
            "kitchen",
            "publish",
            "first-shot",
            "spares",
            "made-earlier",
            "day",
            "narration");
    private static final Pattern STEP = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,2})?)\\s*(?:g|grams?)?");
    private static final Pattern LITRES = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,2})?)\\s*(?:l|lit(?:re|er)s?)?");
    private static final DateTimeFormatter DAY_AND_TIME = DateTimeFormatter.ofPattern(
                    "uuuu-MM-dd[' ']['T']H:mm", Locale.ROOT)
            .withResolverStyle(ResolverStyle.STRICT);
    private final StrictMap top;

    SettingsForm(String file, MappingNode root) {
        this.top = new StrictMap(file, "", root, KEYS);
    }

    EpisodeSettings settings() {
        EpisodeSettings usual = EpisodeSettings.DEFAULT;
        return new EpisodeSettings(
                top.text("title", "title: Plum plait").filter(title -> !title.isEmpty()),
                language(),
                top.section("batch", BatchForm.KEYS).map(BatchForm::batch).orElse(usual.batch()),
                new Sets(
                        top.whole("takes", 1, 9, usual.sets().takes()),
                        top.whole("spare", 0, 9, usual.sets().spare())),
                top.section("kitchen", List.of("ovens", "scale", "spoons", "mixer"))
                        .map(SettingsForm::kitchen)
                        .orElse(usual.kitchen()),
                top.section("publish", PublishForm.KEYS)
                        .map(PublishForm::publish)
                        .orElse(usual.publish()),
                firstShot(),
                standby(),
                top.section("day", DayForm.KEYS).map(DayForm::day).orElse(usual.day()),
                top.section("narration", NarrationForm.KEYS)
                        .map(NarrationForm::offsets)
                        .orElse(usual.offsets()));
    }

    private Standby standby() {
        Standby usual = Standby.USUAL;
        Optional<StrictMap> spares = top.section("spares", List.of("failures", "hero"));
        Set<Integer> steps = top.texts("made-earlier", "[8]").stream()
                .map(this::step)
                .collect(Collectors.toCollection(TreeSet::new));
        return new Standby(
                spares.map(map -> map.choice("failures", "yes", "no", usual.failures()))
                        .orElse(usual.failures()),
                spares.map(map -> map.choice("hero", "yes", "no", usual.hero())).orElse(usual.hero()),
                steps);
    }

    private int step(String text) {
        if (text.matches("[1-9]\\d{0,2}")) {
            return Integer.parseInt(text);
        }
        throw top.wrongItem("made-earlier", text, "the number of a step", "made-earlier: [8]");
    }

    private Locale language() {
        Optional<String> tag = top.text("language", "language: en-GB");
        if (tag.isEmpty()) {
            return EpisodeSettings.DEFAULT.language();
        }
        Locale locale = Locale.forLanguageTag(tag.get());
        if (!locale.getLanguage().equals("en")) {
            throw top.wrong("language", "English, the only language that is understood", "language: en-GB");
        }
        return locale;
    }

    private Optional<LocalDateTime> firstShot() {
        Optional<String> text = top.text("first-shot", "first-shot: 2026-05-04 10:00");
        try {
            return text.map(time -> LocalDateTime.parse(time, DAY_AND_TIME));
        } catch (DateTimeParseException e) {
            throw top.wrong("first-shot", "a day and a time", "first-shot: 2026-05-04 10:00");
        }
    }

    private static Kitchen kitchen(StrictMap map) {
        Kitchen usual = EpisodeSettings.DEFAULT.kitchen();
        return new Kitchen(
                map.whole("ovens", 1, 9, usual.ovens()),
                map.text("scale", "scale: 1 g").map(text -> step(map, text)).orElse(usual.scale()),
                map.text("spoons", "spoons: australia").map(text -> household(map, "spoons", text)),
                map.text("mixer", "mixer: 4.8 l").map(text -> mixer(map, text)));
    }

    private static Quantity mixer(StrictMap map, String text) {
        Matcher matcher = LITRES.matcher(text);
        if (matcher.matches()) {
            BigDecimal litres = new BigDecimal(matcher.group(1));
            if (litres.compareTo(new BigDecimal("0.5")) >= 0 && litres.compareTo(BigDecimal.valueOf(100)) <= 0) {
                return Quantity.of(Rationals.of(litres), Unit.LITRE);
            }
        }
        throw map.wrong("mixer", "what the mixer's bowl holds, from 0.5 l to 100 l", "mixer: 4.8 l");
    }

    private static Quantity step(StrictMap map, String text) {
        Matcher matcher = STEP.matcher(text);
        if (matcher.matches()) {
            BigDecimal grams = new BigDecimal(matcher.group(1));
            if (grams.signum() > 0 && grams.compareTo(BigDecimal.valueOf(100)) <= 0) {
                return Quantity.of(Rationals.of(grams), Unit.GRAM);
            }
        }
        throw map.wrong("scale", "the smallest step the scale shows, from 0.01 g to 100 g", "scale: 1 g");
    }

    static Household household(StrictMap map, String key, String text) {
        return Household.ofKey(text)
                .orElseThrow(() -> map.wrong(key, "one of metric, us, us-label, uk, australia", key + ": us"));
    }
}
