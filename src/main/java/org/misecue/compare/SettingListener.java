package org.misecue.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.misecue.compare.Settled.Said;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Setting.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/** Sorts what was said of the oven, of times, tins and yield to the written settings, before ingredients get the rest. */
final class SettingListener {

    private static final Set<String> OVEN_WORDS =
            Set.of("oven", "ovens", "fan", "preheat", "preheated", "temperature", "degrees", "thermometer");
    private static final Set<String> TIN_WORDS =
            Words.set("tin tins pan pans square round loaf dish tray ring springform mould cutter deep sandwich");
    private static final Set<String> MAKING = Set.of("makes", "make", "serves", "serve", "feeds", "feed", "gives");
    private static final Set<String> CUTTING = Set.of("cut", "divide", "divided", "slice", "portion", "it", "them");

    private static final Set<String> YIELD_WORDS =
            Words.set("slice square bun biscuit cookie piece portion people serving loaf roll bar cake tart scone "
                    + "cracker pie teacake finger wedge helping muffin pastry ball");

    private static final int NEAR_OVEN = 14;
    private static final RationalNumber COOLEST = Rationals.of(80);
    private static final RationalNumber HOTTEST_C = Rationals.of(270);
    private static final RationalNumber HOTTEST_F = Rationals.of(520);

    private final Hearing heard;
    private final Map<Setting, List<Said>> said = new HashMap<>();

    SettingListener(Hearing heard) {
        this.heard = heard;
    }

    List<Said> saidOf(Setting setting) {
        return said.getOrDefault(setting, List.of());
    }

    /** Whether the amount belongs to a setting, or at least to no ingredient. */
    boolean take(SpokenQuantity words) {
        Optional<Dimension> dimension = words.unit().map(Unit::dimension);
        if (words.manner() == Manner.HEAT || isBareHeat(words)) {
            takeHeat(words);
            return true;
        }
        if (dimension.equals(Optional.of(Dimension.DURATION))) {
            DurationMatch.best(words, settings(Kind.DURATION), heard)
                    .ifPresent(setting -> keep(setting, words, words.quantity().orElseThrow()));
            return true;
        }
        if (dimension.equals(Optional.of(Dimension.LENGTH))) {
            takeLength(words);
            return true;
        }
        return words.manner() == Manner.BARE && takeYield(words);
    }

    private List<Setting> settings(Kind kind) {
        return heard.recipe.allSettings().stream()
                .filter(setting -> setting.kind() == kind)
                .toList();
    }

    private void keep(Setting setting, SpokenQuantity words, Quantity quantity) {
        said.computeIfAbsent(setting, k -> new ArrayList<>()).add(new Said(words, quantity));
    }

    private boolean isBareHeat(SpokenQuantity words) {
        Optional<RationalNumber> value = words.amount().least();
        if (words.manner() != Manner.BARE || value.isEmpty()) {
            return false;
        }
        boolean ovenLike = value.get().compareTo(COOLEST) >= 0
                && value.get().compareTo(HOTTEST_F) <= 0
                && Rationals.isWhole(value.get().divide(Rationals.of(5)));
        return ovenLike && ovenNear(words);
    }

    /** The oven is spoken of, and no ingredient stands between. */
    private boolean ovenNear(SpokenQuantity words) {
        for (int at = words.start() - 1; at >= Math.max(0, words.start() - NEAR_OVEN); at--) {
            if (OVEN_WORDS.contains(heard.words.text(at))) {
                int from = at;
                return heard.names.stream().noneMatch(name -> name.start() > from && name.end() <= words.start());
            }
        }
        for (int at = words.end(); at < words.end() + 4; at++) {
            if (OVEN_WORDS.contains(heard.words.text(at))) {
                return true;
            }
        }
        return false;
    }

    private void takeHeat(SpokenQuantity words) {
        List<Setting> ovens = settings(Kind.OVEN_TEMPERATURE);
        if (ovens.isEmpty() || words.amount().least().isEmpty()) {
            return;
        }
        boolean fahrenheitOnly = words.amount().least().get().compareTo(HOTTEST_C) > 0;
        int step = heard.stepAt(words.start());
        Setting nearest = ovens.stream()
                .min(java.util.Comparator.comparingInt(oven -> Math.abs(oven.step() - step)))
                .orElseThrow();
        Unit written = nearest.quantity().unit();
        Unit unit = words.unit().orElse(fahrenheitOnly ? Unit.FAHRENHEIT : written);
        Quantity quantity = new Quantity(words.amount(), unit);
        if (unit != Unit.CELSIUS
                || ovenNear(words)
                || words.amount().least().get().compareTo(Rationals.of(120)) >= 0) {
            keep(nearest, words, quantity);
        }
    }

    private void takeLength(SpokenQuantity words) {
        boolean tinNear = false;
        for (int at = words.start() - 12; at < words.end() + 6; at++) {
            tinNear |= TIN_WORDS.contains(heard.words.text(at));
        }
        List<Setting> pans = settings(Kind.PAN);
        if (tinNear && !pans.isEmpty()) {
            keep(pans.get(0), words, words.quantity().orElseThrow());
        }
    }

    private boolean takeYield(SpokenQuantity words) {
        List<Setting> yields = settings(Kind.YIELD);
        if (yields.isEmpty() || !isCount(words.amount())) {
            return false;
        }
        Setting yield = yields.get(0);
        Set<String> nouns = Words.content(yield.what());
        String next = Words.singular(heard.words.text(words.end()));
        String afterNext = Words.singular(heard.words.text(words.end() + 1));
        boolean named = nouns.contains(next) || nouns.contains(afterNext) || YIELD_WORDS.contains(next);
        boolean made = makingBefore(words.start());
        boolean ofIngredient = heard.names.stream()
                .anyMatch(name -> name.start() >= words.end() && name.start() <= words.end() + 1 && name.inRecipe());
        if ((named || (made && !ofIngredient)) && plausible(words, yield)) {
            keep(yield, words, new Quantity(words.amount(), Unit.EACH));
            return true;
        }
        return false;
    }

    /** "makes ten", "cuts into ten", "serves about eight", "you'll get sixteen". */
    private boolean makingBefore(int start) {
        for (int at = start - 1; at >= start - 4; at--) {
            String word = heard.words.text(at);
            if (MAKING.contains(word)) {
                return true;
            }
            if (word.equals("into")) {
                return CUTTING.contains(Words.singular(heard.words.text(at - 1)))
                        || CUTTING.contains(Words.singular(heard.words.text(at - 2)));
            }
        }
        return false;
    }

    private static boolean isCount(Amount amount) {
        return amount.least().filter(Rationals::isWhole).isPresent();
    }

    /** "one slice", "two biscuits" are pieces of the bake, not the number it makes. */
    private boolean plausible(SpokenQuantity words, Setting yield) {
        double a = words.amount().least().map(RationalNumber::doubleValue).orElse(0.0);
        double b = yield.quantity()
                .amount()
                .least()
                .map(RationalNumber::doubleValue)
                .orElse(0.0);
        return a > 0 && b > 0 && Math.max(a / b, b / a) <= 3;
    }
}
