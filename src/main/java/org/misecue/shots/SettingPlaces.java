package org.misecue.shots;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.misecue.quantity.QuantityWriter;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;

/** Gives each figure of a step to the action it is said with; an oven that is turned down gets a shot of its dial. */
final class SettingPlaces {

    static final List<String> OVENS = List.of("heat-oven", "bake");
    private static final List<String> TINS = List.of("line-tin", "grease", "fill-tin", "fill", "press", "bake");
    private static final List<String> WAITS = List.of("rest", "cool", "chill", "prove", "soak");
    private static final Pattern NUMBER = Pattern.compile("\\d+");

    private SettingPlaces() {}

    static void share(Step step, List<Action> actions, ShotTemplates templates) {
        for (Setting setting : step.settings()) {
            int place = place(setting, step.text());
            action(setting, place, actions)
                    .or(() -> own(setting, place, actions, templates))
                    .or(() -> nearest(actions, place))
                    .ifPresent(action -> action.settings().add(setting));
        }
    }

    /** Where its first figure stands in the text, or the end of it. */
    private static int place(Setting setting, String text) {
        Matcher figure = NUMBER.matcher(QuantityWriter.text(setting.quantity()));
        if (!figure.find()) {
            return text.length();
        }
        Matcher found = Pattern.compile("(?<!\\d)" + figure.group() + "(?!\\d)").matcher(text);
        return found.find() ? found.start() : text.length();
    }

    private static Optional<Action> action(Setting setting, int place, List<Action> actions) {
        return keys(setting).stream()
                .flatMap(key -> Stream.concat(
                        actions.stream()
                                .filter(action -> is(action, key) && action.place() <= place)
                                .sorted(Comparator.comparingInt(Action::place).reversed()),
                        actions.stream().filter(action -> is(action, key))))
                .findFirst();
    }

    private static List<String> keys(Setting setting) {
        String what = setting.what().toLowerCase(Locale.ROOT);
        return switch (setting.kind()) {
            case OVEN_TEMPERATURE -> OVENS;
            case PAN -> TINS;
            default -> what.equals("rest") ? WAITS : List.of(what);
        };
    }

    private static boolean is(Action action, String key) {
        return action.template().technique().equals(key);
    }

    /** The dial where the oven is turned down, the waiting where nothing else is done. */
    private static Optional<Action> own(Setting setting, int place, List<Action> actions, ShotTemplates templates) {
        String technique = keys(setting).get(0);
        boolean waits = setting.kind() == Setting.Kind.DURATION && WAITS.contains(technique);
        if (setting.kind() != Setting.Kind.OVEN_TEMPERATURE && !waits || !templates.has(technique)) {
            return Optional.empty();
        }
        Action action = Action.of(templates.of(technique), place, place);
        actions.add(action);
        actions.sort(Comparator.comparingInt(Action::place));
        return Optional.of(action);
    }

    private static Optional<Action> nearest(List<Action> actions, int place) {
        return actions.stream()
                .filter(action -> action.place() <= place)
                .reduce((earlier, later) -> later)
                .or(() -> actions.stream().findFirst());
    }
}
