package org.misecue.recipe;

import java.util.List;

/** Words by which a method calls several ingredients at once: "the spices", "the dry ingredients", "the nuts". */
final class FoodGroups {

    private static final String SPICES =
            "cinnamon|ginger|nutmeg|cloves?|allspice|cardamom|mace|spice|anise|turmeric|paprika|cumin|coriander|saffron|chilli|fennel|caraway";
    private static final String SEEDS = "seeds|linseeds?|flaxseeds?|chia|nigella";
    private static final String HERBS =
            "herbs?|chives?|dill|parsley|mint|basil|thyme|rosemary|sage|tarragon|oregano|chervil|marjoram|coriander";
    private static final String NUTS =
            "almonds?|walnuts?|pecans?|hazelnuts?|pistachios?|cashews?|macadamias?|nuts?|peanuts?";
    private static final String FRUIT =
            "currants?|raisins?|sultanas?|dates?|apricots?|cherries|cranberries|figs?|peel|prunes?|fruit|blueberries|raspberries|apples?|pears?";

    /**
     * A phrase that means a group.
     *
     * @param phrase the words of the step
     * @param members what the names of its members hold
     */
    record Group(Cued phrase, Cued members) {}

    private static final List<Group> GROUPS = List.of(
            new Group(word("(?:all\\h+)?(?:the\\h+)?spices"), word(SPICES)),
            new Group(word("(?:the\\h+)(?:chopped\\h+|toasted\\h+)?nuts"), word(NUTS)),
            new Group(word("(?:the\\h+)berries"), word("\\p{L}*berr(?:y|ies)")),
            new Group(
                    word(
                            "(?:(?:all\\h+)?the\\h+(?:mixed\\h+|toasted\\h+)?|mixed\\h+|(?<=[,;]\\h))seeds(?!\\h+(?:of|from))"),
                    word(SEEDS)),
            new Group(word("the\\h+(?:chopped\\h+)?herbs"), word(HERBS)),
            new Group(word("(?:the\\h+)(?:dried\\h+|soaked\\h+)?fruits?"), word(FRUIT)),
            new Group(
                    word(
                            "(?:all\\h+)?(?:of\\h+)?the\\h+(?:remaining\\h+|other\\h+)?dry\\h+(?:ingredients|mix|mixture)|the\\h+dries"),
                    word(
                            "flours?|maida|atta|besan|cornflour|semolina|sooji|suji|rava|polenta|cornmeal|baking powder|bicarbonate|baking soda|salt|cocoa|oats|ground almonds|cornstarch|"
                                    + SPICES)),
            new Group(
                    word(
                            "(?:all\\h+)?(?:of\\h+)?the\\h+(?:remaining\\h+|other\\h+)?wet\\h+(?:ingredients|mix|mixture)|the\\h+liquids?"),
                    word("milk|eggs?|oil|water|vanilla|buttermilk|yogh?urt|syrup|honey|juice|cream")));

    private static final Cued MIXTURE = word("dry|dries|wet|liquids?");

    private FoodGroups() {}

    static List<Group> all() {
        return GROUPS;
    }

    /** Whether a group names the bowl that its members were mixed in, once they were. */
    static boolean isMixture(String phrase) {
        return MIXTURE.standsIn(Wording.of(phrase));
    }

    private static Cued word(String regex) {
        return Cued.inAnyCase("\\b(?:" + regex + ")\\b");
    }
}
