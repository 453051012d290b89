package org.misecue.spoken;

import java.util.Set;

/** Words of a name that mean nothing by themselves: "large", "ground", "of". From reading lists; no source. */
final class LeaningWords {

    private static final Set<String> WORDS =
            Words.set("large medium small fresh fine ground dried whole plain white dark light soft strong warm cold "
                    + "full fat extra good quality raw ripe free range hot boiling low fast action instant pure thick "
                    + "double single heavy baking mixed powder powdered paste extract raising self brown active easy "
                    + "bake of and the a in with for packed neutral clear runny set halve half piece red green black "
                    + "golden fluid liquid purpose all sea table top seed leaf stick clove pod cooking natural unfed "
                    + "flaky roasted cracked vegan unsweetened sweetened unsalted salted organic skinless boneless "
                    + "toasted chopped sliced grated melted softened chilled frozen tinned canned dairy gluten reduced "
                    + "semi skimmed granulated coarse flaked slivered blanched smooth crunchy chunky bread wholemeal "
                    + "shelled roughly finely lightly freshly shredded desiccated condensed evaporated thickened "
                    + "whipping cooked pure hot setting gram ounce cup pint litre teaspoon tablespoon spoon pound "
                    + "peeled cored juice zest peel bar bars jar tin packet pot carton bottle tub half lukewarm tepid "
                    + "boiled sifted beaten sweet sour sharp wild smoked spiced rich crisp candied crystallised mature "
                    + "mild baby");

    private LeaningWords() {}

    static boolean has(String word) {
        return WORDS.contains(word);
    }
}
