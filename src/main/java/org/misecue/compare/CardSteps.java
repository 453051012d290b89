package org.misecue.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.misecue.recipe.Setting;

/**
 * Cards are put up a little before or after the words they go with, and a card of the whole recipe belongs to no step: a
 * figure that differs from the setting it was taken for, and is that of another step, is taken for that one, unless it is
 * certain that the first one's step is on.
 */
final class CardSteps {

    private final Lettering lettering;

    CardSteps(Lettering lettering) {
        this.lettering = lettering;
    }

    Comparison placed(Comparison seen) {
        List<SettingVerdict> settings = new ArrayList<>(seen.settings());
        for (int i = 0; i < settings.size(); i++) {
            SettingVerdict wrong = settings.get(i);
            if (wrong.verdict() == Verdict.DIFFERS) {
                int from = i;
                other(settings, wrong).ifPresent(to -> {
                    settings.set(from, silent(wrong.setting()));
                    settings.set(to, agreeing(settings.get(to), wrong));
                });
            }
        }
        return new Comparison(seen.title(), seen.factor(), seen.written(), settings, seen.unwritten(), seen.unplaced());
    }

    private Optional<Integer> other(List<SettingVerdict> settings, SettingVerdict wrong) {
        for (int i = 0; i < settings.size(); i++) {
            SettingVerdict candidate = settings.get(i);
            Setting setting = candidate.setting();
            if (candidate.verdict() != Verdict.DIFFERS
                    && setting.kind() == wrong.setting().kind()
                    && wrong.evidence().stream()
                            .allMatch(one -> isOf(setting, one) && mayBeOn(setting.step(), wrong, one))) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private static boolean isOf(Setting setting, Evidence shown) {
        return shown.quantity()
                .filter(figure -> figure.equals(setting.quantity())
                        || setting.fan().filter(figure::equals).isPresent()
                        || setting.also().contains(figure))
                .isPresent();
    }

    private boolean mayBeOn(int step, SettingVerdict wrong, Evidence shown) {
        Set<Integer> around = lettering.stepsAround(shown.moment());
        return around.isEmpty()
                || around.contains(step)
                || !around.contains(wrong.setting().step());
    }

    private static SettingVerdict silent(Setting setting) {
        return new SettingVerdict(setting, Verdict.UNSPOKEN, Certainty.ofSilence(0), "Nobody says it.", List.of());
    }

    private static SettingVerdict agreeing(SettingVerdict before, SettingVerdict shown) {
        List<Evidence> evidence = new ArrayList<>(before.evidence());
        evidence.addAll(shown.evidence());
        return new SettingVerdict(
                before.setting(), Verdict.AGREES, shown.confidence(), "Shown as written.", List.copyOf(evidence));
    }
}
