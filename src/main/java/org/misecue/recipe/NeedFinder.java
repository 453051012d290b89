package org.misecue.recipe;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Goes through a method stretch by stretch and remembers who holds what: the one that has the dough, the cooled sponge,
 * the plums by now. What the next speaks of then tells whose work it needs.
 */
final class NeedFinder {

    /** What a stretch needs: others by their places, and those of them whose work it takes hot. */
    record Needs(NavigableSet<Integer> before, NavigableSet<Integer> hot) {}

    private static final Set<String> READIES = Set.of("heat-oven", "line-tin", "grease");
    private static final Set<String> COOKS = Set.of("bake", "fry", "simmer", "boil");
    private static final Set<String> OF_DOUGH = Set.of("roll-out", "knead", "shape", "laminate", "prove");
    private static final Set<String> FLOURS = Set.of("flour", "semolina", "cornflour", "cocoa", "oat");

    private static final int NOBODY = -1;

    private final Recipe recipe;
    private final List<Stretch> stretches;
    private final Map<String, Integer> holders = new HashMap<>();
    private final Map<List<Integer>, Integer> lineHolders = new HashMap<>();
    /** Work that nobody has taken up yet. */
    private final NavigableSet<Integer> openEnds = new TreeSet<>();
    /** What was cooked, wherever it is by now. */
    private final NavigableSet<Integer> cooked = new TreeSet<>();

    private int lastWork = NOBODY;

    NeedFinder(Recipe recipe, List<Stretch> stretches) {
        this.recipe = recipe;
        this.stretches = stretches;
    }

    /** What each stretch needs, by its place in the list. */
    List<Needs> find() {
        List<Needs> all = new ArrayList<>();
        for (int at = 0; at < stretches.size(); at++) {
            all.add(next(at));
        }
        preparations().forEach((preparation, user) -> all.get(user).before().add(preparation));
        return all;
    }

    private Needs next(int at) {
        Stretch stretch = stretches.get(at);
        NavigableSet<Integer> before = new TreeSet<>();
        NavigableSet<Integer> hot = new TreeSet<>();
        if (stretch.turn() > 1) {
            before.add(at - 1);
        }
        if (onlyReadies(stretch)) {
            return new Needs(before, hot);
        }
        List<Use> fresh = stretch.uses().stream().filter(this::isFresh).toList();
        StepTalk talk = StepTalk.of(stretch.text(), own(fresh));
        for (StepTalk.Mention mention : talk.mentions()) {
            Set<Integer> holder = holders(mention);
            before.addAll(holder);
            if (mention.hot()) {
                hot.addAll(holder);
            }
        }
        stretch.uses().stream()
                .filter(use -> !isFresh(use))
                .map(use -> lineHolders.get(key(use)))
                .filter(Objects::nonNull)
                .forEach(before::add);
        boolean speaksOfNone = before.isEmpty();
        if (lastWork != NOBODY && (talk.goesOn() || speaksOfNone && fresh.isEmpty())) {
            before.add(lastWork);
        }
        if (stretch.techniques().stream().anyMatch(OF_DOUGH::contains)) {
            dough().filter(holder -> fresh.isEmpty() || !holdsFlour(fresh)).ifPresent(before::add);
        }
        for (List<String> phrase : talk.strangers()) {
            phrase.stream().map(holders::get).filter(Objects::nonNull).forEach(before::add);
            if (phrase.stream().noneMatch(this::isKnown)) {
                before.addAll(openEnds);
            }
        }
        boolean alone = lastWork == NOBODY || !speaksOfNone || standsAlone(fresh, talk);
        int workBefore = lastWork;
        remember(at, fresh, talk, before);
        if (!alone) {
            before.add(workBefore); // after it, but not with what it made
        }
        return new Needs(before, hot);
    }

    /** Who has the dough: what is rolled out, kneaded or shaped is that, named or not. */
    private Optional<Integer> dough() {
        return Stream.of("dough", "pastry", "flour")
                .map(holders::get)
                .filter(Objects::nonNull)
                .findFirst();
    }

    private boolean holdsFlour(List<Use> fresh) {
        return words(fresh).stream().anyMatch(FLOURS::contains);
    }

    /** For each stretch that only readies oven or tin the first one after it that bakes or fills. */
    private Map<Integer, Integer> preparations() {
        Map<Integer, Integer> users = new TreeMap<>();
        for (int at = 0; at < stretches.size(); at++) {
            Stretch stretch = stretches.get(at);
            if (onlyReadies(stretch)) {
                boolean tin = stretch.techniques().stream().anyMatch(key -> !key.equals("heat-oven"));
                List<Integer> later = IntStream.range(at + 1, stretches.size())
                        .filter(other -> !onlyReadies(stretches.get(other)))
                        .boxed()
                        .toList();
                int from = at;
                later.stream()
                        .filter(other -> stretches.get(other).techniques().contains("bake")
                                || tin && StepTalk.fills(stretches.get(other).text()))
                        .findFirst()
                        .or(() -> later.stream().findFirst())
                        .ifPresent(user -> users.put(from, user));
            }
        }
        return users;
    }

    /** Heating the oven and lining tins needs nobody's work. */
    private boolean onlyReadies(Stretch stretch) {
        boolean weighs = stretch.uses().stream().anyMatch(use -> use.in(recipe)
                .quantity()
                .flatMap(quantity -> quantity.amount().least())
                .isPresent());
        return !stretch.techniques().isEmpty() && READIES.containsAll(stretch.techniques()) && !weighs;
    }

    /** Used for the first time, or a share that was left for this step; what was put by is not. */
    private boolean isFresh(Use use) {
        boolean share = use.part().isPresent() || !use.words().isEmpty();
        return !lineHolders.containsKey(key(use)) || (share && !use.words().equals(Use.RESERVED));
    }

    /** Words of what goes in, and of the part of the dish where that begins now. */
    private Set<String> own(List<Use> fresh) {
        Set<String> own = words(fresh);
        fresh.stream()
                .flatMap(use -> words(recipe.components().get(use.component()).name()))
                .filter(word -> !holders.containsKey(word))
                .forEach(own::add);
        return own;
    }

    /** "The cake" that no step has called so is what was cooked, or whatever is not yet used up. */
    private Set<Integer> holders(StepTalk.Mention mention) {
        Integer known = holders.get(mention.word());
        if (known != null) {
            return Set.of(known);
        }
        if (!mention.definite() || !MethodWords.isMade(mention.word())) {
            return Set.of();
        }
        return cooked.isEmpty() ? Set.copyOf(openEnds) : Set.copyOf(cooked);
    }

    private boolean isKnown(String word) {
        return holders.containsKey(word) || MethodWords.isMade(word);
    }

    /** New things only, of another part of the dish than the work before, or said to be done beside it. */
    private boolean standsAlone(List<Use> fresh, StepTalk talk) {
        boolean onePart = recipe.components().size() == 1;
        boolean begun = fresh.stream()
                .anyMatch(use -> lineHolders.keySet().stream().anyMatch(key -> key.get(0) == use.component()));
        return !fresh.isEmpty() && (talk.beside() || !begun && !onePart);
    }

    private void remember(int at, List<Use> fresh, StepTalk talk, Set<Integer> before) {
        holders.replaceAll((word, holder) -> before.contains(holder) ? at : holder);
        lineHolders.replaceAll((line, holder) -> before.contains(holder) ? at : holder);
        for (Use use : fresh) {
            lineHolders.put(key(use), at);
            words(use.in(recipe).ingredient()).forEach(word -> holders.put(word, at));
            words(recipe.components().get(use.component()).name())
                    .filter(word -> word.length() > 3)
                    .forEach(word -> holders.put(word, at));
        }
        talk.made().forEach(word -> holders.put(word, at));
        talk.mentions().stream()
                .filter(mention -> mention.definite() || MethodWords.isMade(mention.word()))
                .forEach(mention -> holders.putIfAbsent(mention.word(), at));
        holders.put("mixture", at);
        holders.put("mix", at);
        if (holdsFlour(fresh)) {
            holders.put("dry", at);
        }
        openEnds.removeAll(before);
        openEnds.add(at);
        lastWork = at;
        if (cooked.removeAll(before) || isCooked(stretches.get(at))) {
            cooked.add(at);
        }
    }

    private static boolean isCooked(Stretch stretch) {
        return stretch.waits().stream().anyMatch(wait -> wait.where() == Wait.Where.OVEN)
                || stretch.techniques().stream().anyMatch(COOKS::contains);
    }

    private Set<String> words(List<Use> uses) {
        Set<String> words = new HashSet<>();
        uses.forEach(use -> words(use.in(recipe).ingredient()).forEach(words::add));
        return words;
    }

    private static Stream<String> words(String name) {
        return Words.of(name.toLowerCase(Locale.ROOT)).list().stream()
                .map(Words.Word::singular)
                .filter(word -> word.length() > 2 && !StepTalk.isSmallWord(word) && !IngredientNames.isAdjective(word));
    }

    private static List<Integer> key(Use use) {
        return List.of(use.component(), use.line());
    }
}
