package org.misecue.spoken;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Unit;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;

/**
 * Finds ingredients named in the stream: by the recipe's own words, by the pantry's names in other Englishes, and by
 * words that sound like the recipe's.
 */
public final class NameListener {

    private static final int LONGEST_NAME = 5;
    private static final int SHORTEST_JOINED = 7;
    private static final int SHORTEST_HALF = 5;

    /** Pieces that begin the next thought more often than they end a word. */
    private static final Set<String> SMALL_PIECES =
            Words.set("a an the of and in is so you we i to no not but or if on at it that this then for with my");

    /** Words behind an ingredient that make it another one: "coconut essence", "milk powder", "lemon cordial". */
    private static final Set<String> FORMS =
            Words.set("essence extract powder syrup flour milk oil liqueur cordial jam sauce vinegar brandy essence "
                    + "marmalade curd spread");

    private static final Set<String> UNIT_SIGNS = Words.set("g kg mg ml cl dl l oz lb tsp tbsp c f");

    private static final int ADJECTIVE_REACH = 15;
    private static final Set<String> AFTER_ADJECTIVE = Set.of("one", "ones", "that", "is");
    private static final Set<String> IN_THE_MAKING =
            Words.set("dough batter paste mixture bread cakes board stick berry");

    /** Forms of one flavouring that stand in for each other. */
    private static final Set<String> FLAVOURINGS = Set.of("essence", "extract", "paste", "bean", "pod");

    /** Words of a name that mean nothing by themselves. */
    private static final Set<String> LEANING =
            Words.set("large medium small fresh fine ground dried whole plain white dark light soft strong warm cold "
                    + "full fat extra good quality raw ripe free range hot boiling low fast action instant pure thick "
                    + "double single heavy baking mixed powder powdered paste extract raising self brown active easy "
                    + "bake of and the a in with for packed neutral clear runny set halve half piece red green black "
                    + "golden fluid liquid purpose all sea table top seed leaf stick clove pod cooking natural unfed "
                    + "flaky roasted cracked vegan unsweetened sweetened unsalted salted organic skinless boneless toasted "
                    + "chopped sliced grated melted softened chilled frozen tinned canned dairy gluten reduced semi skimmed "
                    + "granulated coarse flaked slivered blanched smooth crunchy chunky bread wholemeal shelled roughly "
                    + "finely lightly freshly shredded desiccated condensed evaporated thickened whipping cooked pure hot "
                    + "setting gram ounce cup pint litre teaspoon tablespoon spoon pound peeled cored juice zest peel bar bars jar tin packet pot carton bottle tub half lukewarm tepid boiled sifted beaten "
                    + "sweet sour sharp wild smoked spiced rich crisp candied crystallised mature mild baby");

    private final WordStream words;
    private final Pantry pantry;
    private final List<Set<String>> lineWords = new ArrayList<>();
    private final List<Optional<Ingredient>> lineIngredients = new ArrayList<>();
    private final List<String> lineTexts = new ArrayList<>();
    private final List<String> nouns = new ArrayList<>();
    private final Set<String> vocabulary = new HashSet<>();
    private final Set<String> standing = new HashSet<>();
    private final Map<String, Set<Integer>> aliases = new HashMap<>();
    private final SoundAlikes soundAlikes;
    private int last;
    private Set<Integer> lastLines = Set.of();
    private final Map<String, Optional<Ingredient>> looked = new HashMap<>();

    public NameListener(WordStream words, Recipe recipe, Pantry pantry) {
        this(words, recipe, pantry, true);
    }

    /** @param bySound whether words that only sound like the recipe's are taken for them */
    public NameListener(WordStream words, Recipe recipe, Pantry pantry, boolean bySound) {
        this.words = words;
        this.pantry = pantry;
        for (IngredientLine line : recipe.lines()) {
            Set<String> own = Words.content(line.ingredient());
            lineWords.add(own);
            lineTexts.add(line.text().toLowerCase(Locale.ROOT));
            boolean counted = line.quantity()
                    .filter(written -> written.unit() == Unit.EACH)
                    .isPresent();
            nouns.add(counted ? own.stream().reduce((first, second) -> second).orElse("") : "");
            lineIngredients.add(pantry.find(line.ingredient()));
            vocabulary.addAll(own);
            standing.addAll(standing(own));
            lineIngredients.get(lineIngredients.size() - 1).ifPresent(known -> addAliases(known, lineWords.size() - 1));
        }
        Set<String> sounding = new HashSet<>(vocabulary);
        sounding.addAll(aliases.keySet());
        this.soundAlikes = new SoundAlikes(bySound ? sounding : Set.of());
    }

    /** Single words that the pantry has for a line ("bicarb", "ghee"): they may be misheard like the recipe's own. */
    private void addAliases(Ingredient known, int line) {
        Stream.concat(known.names().stream(), known.heard().stream())
                .map(name -> Words.singular(name.toLowerCase(Locale.ROOT)))
                .filter(name -> name.chars().allMatch(Character::isLetter) && name.length() >= SHORTEST_HALF)
                .filter(name -> !vocabulary.contains(name) && !LEANING.contains(name))
                .forEach(name -> aliases.computeIfAbsent(name, k -> new LinkedHashSet<>())
                        .add(line));
    }

    /** The words by which a line is known; where all lean on others ("ground cloves"), the last one. */
    private static Set<String> standing(Set<String> own) {
        Set<String> standing = new HashSet<>(own);
        standing.removeAll(LEANING);
        if (standing.isEmpty()) {
            own.stream().reduce((first, second) -> second).ifPresent(standing::add);
        }
        return standing;
    }

    /** In the order of the stream; none overlap. */
    public List<NameHit> all() {
        List<NameHit> hits = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            Optional<NameHit> hit = at(at);
            hit.ifPresent(found -> {
                hits.add(found);
                last = found.end();
                lastLines = found.lines();
            });
            at = hit.map(NameHit::end).orElse(at + 1);
        }
        return List.copyOf(hits);
    }

    private Optional<NameHit> at(int start) {
        if (isUnitSign(start)) {
            return Optional.empty();
        }
        Optional<NameHit> own = byRecipe(start);
        Optional<NameHit> known = byPantry(start);
        if (own.isPresent() && known.isPresent()) {
            return known.get().end() > own.get().end() ? known : own;
        }
        return own.isPresent() ? own : known;
    }

    /** The "g" of "100 g ground hazelnuts", which is no piece of a word. */
    private boolean isUnitSign(int start) {
        String before = words.text(start - 1);
        return UNIT_SIGNS.contains(words.text(start))
                && !before.isEmpty()
                && !Character.isLetter(before.charAt(before.length() - 1));
    }

    /** The longest run of words that some line of the recipe has all of. */
    private Optional<NameHit> byRecipe(int start) {
        Set<Integer> lines = Set.of();
        boolean stands = false;
        int end = start;
        while (end - start < LONGEST_NAME && (end == start || !words.wall(end))) {
            Heard own = ownWord(end);
            Set<Integer> having = end == start && aliases.containsKey(own.word())
                    ? aliases.getOrDefault(own.word(), Set.of())
                    : linesWith(own.word(), end == start ? null : lines);
            if (having.isEmpty()) {
                break;
            }
            Set<Integer> counted = counted(end, having);
            lines = counted.isEmpty() ? having : counted;
            stands |= standing.contains(own.word()) || aliases.containsKey(own.word()) || !counted.isEmpty();
            end = own.end();
        }
        boolean named = end > start
                && (stands
                        || (isOneThing(lines)
                                && (end - start > 1 || isMeasured(start) || (isOf(start) && isKin(lines)))));
        if (!named) {
            return Optional.empty();
        }
        return isAnotherForm(end, lines)
                ? Optional.of(new NameHit(start, end + 1, Set.of(), words.normal(start, end + 1)))
                : Optional.of(new NameHit(start, end, lines, words.normal(start, end)));
    }

    /** One line, or the same ingredient in several parts. */
    private boolean isOneThing(Set<Integer> lines) {
        return lines.stream().map(lineWords::get).distinct().count() == 1;
    }

    /** "six whites", "a dozen pods": in the plural the last word stands for what is counted. */
    private Set<Integer> counted(int at, Set<Integer> lines) {
        String one = Words.singular(words.text(at));
        return words.text(at).equals(one) && !words.text(at - 1).equals("one")
                ? Set.of()
                : lines.stream().filter(line -> nouns.get(line).equals(one)).collect(Collectors.toSet());
    }

    /** "fifty grams of plain": what is measured may be called by its adjective alone. */
    private boolean isOf(int start) {
        String before = words.text(start - 1);
        boolean theOne = before.equals("the")
                && (AFTER_ADJECTIVE.contains(words.text(start + 1)) || beginsNumber(start + 1))
                && start - last <= ADJECTIVE_REACH;
        return before.equals("of")
                || theOne
                || (before.equals("the") && words.text(start - 2).equals("of"));
    }

    private boolean beginsNumber(int at) {
        return NumberWords.isOne(words.text(at))
                || (words.text(at).equals("a") && NumberWords.isOne(words.text(at + 1)));
    }

    /** "rye flour … and the white": of what was named last, or another sort of it. */
    private boolean isKin(Set<Integer> lines) {
        return lastLines.containsAll(lines)
                || lines.stream().allMatch(line -> lastLines.stream().anyMatch(last -> lineWords.get(last).stream()
                        .anyMatch(word ->
                                !LEANING.contains(word) && lineWords.get(line).contains(word))));
    }

    /** "seventy five grams of granulated", "a hundred is wholemeal": measured by an adjective that only one line has. */
    private boolean isMeasured(int start) {
        boolean joined =
                words.text(start - 1).equals("of") || words.text(start - 1).equals("is");
        boolean ofIt = words.text(start - 1).equals("is")
                && Set.of("it", "that", "them").contains(words.text(start - 2))
                && words.text(start - 3).equals("of");
        boolean measured = UnitWords.at(words, start - 2).isPresent() || NumberWords.isOne(words.text(start - 2));
        return ofIt || (joined && measured);
    }

    private boolean isAnotherForm(int end, Set<Integer> lines) {
        String next = words.text(end);
        boolean flavouring = FLAVOURINGS.contains(next)
                && lines.stream().flatMap(line -> lineWords.get(line).stream()).anyMatch(FLAVOURINGS::contains);
        return FORMS.contains(next) && !words.wall(end) && !flavouring;
    }

    private Set<Integer> linesWith(String word, @org.jspecify.annotations.Nullable Set<Integer> among) {
        Set<Integer> having = new LinkedHashSet<>();
        for (int line = 0; line < lineWords.size(); line++) {
            if (lineWords.get(line).contains(word) && (among == null || among.contains(line))) {
                having.add(line);
            }
        }
        return having;
    }

    /** A word of the recipe and where it ends; recognisers cut "buttermilk" and "demerara" in pieces. */
    private Heard ownWord(int start) {
        String singular = Words.singular(words.text(start));
        boolean known = vocabulary.contains(singular) || aliases.containsKey(singular) || singular.isEmpty();
        Optional<Heard> joined = joined(start, known);
        if (joined.isPresent() || known) {
            return joined.orElse(new Heard(singular, start + 1));
        }
        return soundAlikes
                .of(singular)
                .or(() -> isMeasuredOut(start) ? soundAlikes.loosely(singular) : Optional.empty())
                .or(() -> compoundOf(singular))
                .map(own -> new Heard(own, start + 1))
                .orElse(new Heard(singular, start + 1));
    }

    /** "a cup of card": what stands there is measured, so it is food, and no food has this name. */
    private boolean isMeasuredOut(int start) {
        return words.text(start - 1).equals("of")
                && UnitWords.at(words, start - 2).isPresent()
                && !words.wall(start)
                && pantry.heardAs(words.text(start)).isEmpty();
    }

    /** Two or three pieces that together are, or sound like, one of the recipe's words. */
    private Optional<Heard> joined(int start, boolean firstIsKnown) {
        for (int pieces = 3; pieces > 1; pieces--) {
            String whole = whole(start, pieces);
            if (vocabulary.contains(whole)) {
                return Optional.of(new Heard(whole, start + pieces));
            }
        }
        Optional<String> longer = firstIsKnown ? almost(whole(start, 2)) : Optional.empty();
        if (longer.isPresent()) {
            return Optional.of(new Heard(longer.get(), start + 2));
        }
        for (int pieces = 2; pieces <= 3 && !firstIsKnown; pieces++) {
            String whole = whole(start, pieces);
            boolean small = SMALL_PIECES.contains(words.text(start + pieces - 1));
            Optional<String> own =
                    whole.length() >= SHORTEST_JOINED && !small ? soundAlikes.of(whole) : soundAlikes.nearly(whole);
            if (own.isPresent()) {
                int end = start + pieces;
                return Optional.of(new Heard(own.get(), end));
            }
        }
        return Optional.empty();
    }

    /** "brown in" for browning: a long word that only lacks its last letter. */
    private Optional<String> almost(String whole) {
        return vocabulary.stream()
                .filter(word -> whole.length() >= SHORTEST_JOINED
                        && word.length() == whole.length() + 1
                        && word.startsWith(whole))
                .findFirst();
    }

    /** The pieces as one word; empty where a sentence ends or a number stands between them. */
    private String whole(int start, int pieces) {
        boolean inside = start + pieces <= words.size() && words.wallWithin(start, start + pieces) == start + pieces;
        if (!inside) {
            return "";
        }
        String joined = words.normal(start, start + pieces).replace(" ", "");
        return joined.chars().allMatch(Character::isLetter) ? Words.singular(joined) : "";
    }

    /** "crumbs" for breadcrumbs: the second half of a compound, unless it is a food of its own, as the flour of cornflour is. */
    private Optional<String> compoundOf(String heard) {
        if (heard.length() < SHORTEST_HALF) {
            return Optional.empty();
        }
        return vocabulary.stream()
                .filter(word -> word.length() > heard.length() + 2 && word.endsWith(heard))
                .filter(word -> pantry.heardAs(heard).isEmpty() && !IN_THE_MAKING.contains(heard))
                .min(Comparator.naturalOrder());
    }

    private record Heard(String word, int end) {}

    /** The longest name that the pantry knows; it may be one of the recipe's ingredients in another English. */
    private Optional<NameHit> byPantry(int start) {
        String first = words.text(start);
        if (first.isEmpty() || !pantry.mayBegin(first, first + words.text(start + 1))) {
            return Optional.empty();
        }
        for (int length = LONGEST_NAME; length >= 1; length--) {
            int end = start + length;
            if (!startsName(start, end) || (length == 1 && LEANING.contains(Words.singular(words.text(start))))) {
                continue;
            }
            Optional<Ingredient> known = known(start, end);
            if (known.isPresent()) {
                Set<Integer> lines = linesOf(known.get());
                if (lines.isEmpty()) {
                    lines = linesWriting(words.normal(start, end));
                }
                String name = pantry.heardAs(words.normal(start, end)).isPresent()
                        ? words.normal(start, end)
                        : known.get().name();
                return Optional.of(new NameHit(start, end, lines, name));
            }
        }
        return Optional.empty();
    }

    /** "cake flour", where that is how the list has it, whatever it is taken for. */
    private Set<Integer> linesWriting(String name) {
        return name.indexOf(' ') < 0
                ? Set.of()
                : IntStream.range(0, lineTexts.size())
                        .filter(line -> lineTexts.get(line).contains(" " + name))
                        .boxed()
                        .collect(Collectors.toSet());
    }

    private Optional<Ingredient> known(int start, int end) {
        String name = words.normal(start, end);
        int space = name.indexOf(' ');
        Optional<Ingredient> known = looked.computeIfAbsent(name, pantry::heardAs);
        if (known.isPresent() || space < 0) {
            return known;
        }
        String joined = name.substring(0, space) + name.substring(space + 1);
        return looked.computeIfAbsent(joined, pantry::heardAs);
    }

    /** The pantry overlooks numbers in a name; here a number before or after it is somebody's amount. */
    private boolean startsName(int start, int end) {
        return end <= words.size()
                && Character.isLetter(words.text(start).charAt(0))
                && Character.isLetter(words.text(end - 1).charAt(0));
    }

    private Set<Integer> linesOf(Ingredient ingredient) {
        Set<Integer> lines = new LinkedHashSet<>();
        for (int line = 0; line < lineIngredients.size(); line++) {
            if (lineIngredients.get(line).filter(ingredient::equals).isPresent()) {
                lines.add(line);
            }
        }
        return lines;
    }
}
