package org.misecue.spoken;

/**
 * The parts of hearing and comparing that can be switched off one at a time, to measure what each is worth. Everybody else
 * leaves them all on.
 */
public enum Mechanism {
    /** An amount that the speaker hedges ("about", "ish", "just under") is only an approximate one. */
    HEDGES,
    /** Numbers that measure nothing here (prices, ages, other people's amounts, alternatives) are put away. */
    ASIDES,
    /** A word that sounds like one of the recipe's is taken for it, as recognisers write "flower". */
    SOUND_ALIKES,
    /** Where another batch is announced, what is judged is what viewers are told for the written one. */
    BATCH_TALK,
    /** An amount may be said by pointing at another: "the same again of sugar". */
    BACK_REFERENCES,
    /** One amount may be said for several ingredients: "a hundred grams each of butter and sugar". */
    SHARED_AMOUNTS,
    /** An amount said again much later with "I said … earlier" takes the first one's place. */
    LATE_REPAIR,
    /** An amount behind "no, sorry" takes the place of the one before it. */
    REPAIR,
    /** An amount begun again, "a hundred and, a hundred and fifty grams", takes the place of its beginning. */
    RESTART,
    /** "another", "more", "the last": an amount in parts is added up. */
    PARTS,
    /** A share or percentage of what was said is an amount where it goes to something else. */
    SHARES,
    /** The size of a pack is an amount where all of it goes in. */
    PACKS,
    /** Names in passing ("like the butter") are not what is being measured. */
    PASSING_NAMES,
    /** The part of the recipe that the speaker names tells equal names apart. */
    COMPONENTS_NAMED,
    /** A bare number goes on with the unit said before it: "one teaspoon now and another two". */
    CARRIED_UNITS,
    /** What other Englishes call an ingredient is a name of it, and so is what else the pantry knows: "bicarb". */
    SYNONYMS,
    /** In the plural the last word of a name stands for what is counted: "six whites", "a dozen pods". */
    HEAD_NOUNS,
    /** An adjective alone stands for its ingredient where that is measured or was just named: "a hundred of wholemeal". */
    LONE_ADJECTIVES,
    /** A name that the recogniser cut in pieces is one: "butter milk". */
    CUT_NAMES,
    /** The second half of a compound stands for it: "crumbs" for breadcrumbs. */
    HALF_NAMES,
    /** A word behind a name that makes it something else: "coconut essence". */
    OTHER_FORMS
}
