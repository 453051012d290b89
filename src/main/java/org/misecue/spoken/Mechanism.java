package org.misecue.spoken;

/**
 * The parts of hearing and comparing that can be switched off one at a time, to measure what each is worth. Everybody else
 * leaves them all on.
 */
public enum Mechanism {
    /** An amount that the speaker hedges ("about", "ish", "just under") is only an approximate one. */
    HEDGES,
    /** "a whisker under two hundred", "a cup, it might be a hair over". */
    SHADES,
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
    /** "thirty grams … and twenty more" when the name is long gone. */
    GOES_ON,
    /** "seventy at the first pour and twenty at the second": two amounts that come to what is written. */
    IN_PIECES,
    /** A share or percentage of what was said is an amount where it goes to something else. */
    SHARES,
    /** The size of a pack is an amount where all of it goes in. */
    PACKS,
    /** "a block of two fifty, I cut off one eighty": what a thing is taken from is no amount of it. */
    TAKEN_FROM,
    /** Packs or pieces of one size, told with what they come to: "two fifty each, so that's half a kilo". */
    PRODUCTS,
    /** Names in passing ("like the butter") are not what is being measured. */
    PASSING_NAMES,
    /** "or it will be butter": what something would become is named in passing. */
    OUTCOMES,
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
    OTHER_FORMS,
    /** "two, not one", "why did I say two": what is named and denied is taken back. */
    TAKEN_BACK,
    /** What the scales say last is what goes in, or on top of what was there. */
    SCALES,
    /** "one, and two, so that's three": each number counts those before it. */
    COUNTED_UP,
    /** "that's twenty altogether" is the sum of what was said before, or of several ingredients. */
    TOTALS,
    /** A tablespoon is one of 20 ml only where the speaker or the recipe tells that it is. */
    NATIONAL_SPOONS,
    /** "a heaped tablespoon, which is twenty five grams": one amount in two measures. */
    OTHER_WORDS,
    /** "five or six, let's say six": one of the range takes its place. */
    NARROWED_RANGES,
    /** "it's supposed to be three" stands until somebody does otherwise. */
    PRESCRIBED,
    /** "a hundred and ten on the sheet, but I only give it ninety": what the hand does counts. */
    SHEET_AND_HAND,
    /** "was it two hundred? – one eighty": what is asked stands only until it is answered. */
    QUESTIONS,
    /** "sugar, the dark one": lines of one name are told apart by their own words. */
    DESCRIPTIONS,
    /** Money is no weight: "two pound fifty". */
    PRICES,
    /** A bare number that counts something else is no amount: "three bowls". */
    COUNTED_THINGS,
    /** Numbers that say which, how old, how big a pack, how much at a time. */
    LABELS,
    /** "a slice for every muffin": what each piece gets is no amount. */
    FOR_EVERY,
    /** Amounts of bakes gone by that are told past the end of a clause, and wasted ones. */
    BYGONES,
    /** All that is told of others, of other times and of what could be: the four below. */
    OTHER_STORIES,
    /** "not two hundred", "I was thinking four". */
    DENIALS,
    /** "my sister puts three in". */
    OTHER_PEOPLE,
    /** "last week I did two hundred". */
    OTHER_TIMES,
    /** "or use three", "if you like it sharp put in twenty". */
    ALTERNATIVES,
    /** Bare numbers that say how hot or when. */
    LEVELS,
    /** "one, two, three": counting aloud measures nothing. */
    COUNTING_ALOUD,
    /** What a named thing is for, and what is done with it on other days, is named in passing. */
    PURPOSES,
    /** A number goes on where the recogniser began another cue in the middle of it. */
    OVER_CUES,
    /** Numbers in words, not only in figures. */
    NUMBER_WORDS,
    /** The hundred may be left out ("one twenty five"), and figures read out one by one ("one seven five"). */
    HUNDREDS_LEFT_OUT,
    /** A digit that the recogniser wrote as another word: "tree hundred". */
    MISHEARD_NUMBERS,
    /** A unit that the recogniser cut in two: "tea spoon". */
    CUT_UNITS,
    /** "two or three", "twenty to thirty", "half an hour to forty minutes". */
    RANGES,
    /** "a teaspoon and a half", "one pound four ounces". */
    UNIT_TAILS,
    /** "one scoop is a quarter cup": then four of them are a cup. */
    OWN_MEASURES,
    /** "cup and a half of raisins", "and tablespoon of honey". */
    ARTICLE_LEFT_OUT,
    /** "two eggs, one for you and one for me": parts of what was just said are no more of it. */
    SHARED_OUT,
    /** A bare number far from the name contradicts no amount that was measured and named. */
    STRAY_NUMBERS,
    /** What is too far from the written amount for a slip of the tongue was said of something else. */
    SIZE_OF_SLIPS,
    /** Who ends on the written amount, and soon, has come to it. */
    LAST_WORD,
    /** A line that got nothing gets the amount that is just as written and stands near its name. */
    SECOND_LOOK,
    /** "an egg" is one of what is counted. */
    ONE_BY_ARTICLE,
    /** "this one", "the light one" count nothing. */
    ONE_AS_PRONOUN,
    /** A name that could mean several lines means the one that is named more exactly beside it. */
    NARROWING,
    /** The step that is on tells which of several lines or settings is meant. */
    STEPS,
    /** A bare number may be a weight or a volume, in the unit of its line. */
    BARE_NUMBERS,
    /** "sixty percent of that" is an amount where it goes to something else. */
    PERCENTAGES,
    /** Packs, or things of one weight, that are counted: "two tubs of two eighty", "a hundred grams each and both go in". */
    COUNTED_PACKS,
    /** An amount told long after its name is of it where nothing else was spoken of between. */
    STILL_THE_TOPIC,
    /** "two hundred and twenty of it": a pronoun means what was measured last. */
    PRONOUNS,
    /** Counted things that are weighed on camera keep their count. */
    WEIGHED_PIECES,
    /** A bare number may go on with the minutes or degrees said before it. */
    LEFT_OUT_UNITS,
    /** "an hour ago", "have a peek at twenty": times that set nothing. */
    PASSING_TIMES,
    /** "one eighty for forty minutes": heat and time side by side explain each other. */
    HEAT_AND_TIME,
    /** Whose oven and whose time a story's figure is, and where the talk comes back from it. */
    HERE_AND_NOW,
    /** Oven temperatures are listened for. */
    OVENS,
    /** Times are listened for. */
    TIMES,
    /** Sizes of tins are listened for. */
    TINS,
    /** How much it makes is listened for. */
    YIELDS
}
