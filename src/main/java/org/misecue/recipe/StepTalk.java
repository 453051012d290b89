package org.misecue.recipe;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a step speaks of besides the ingredients that go in with it.
 *
 * @param mentions nouns that may be the work of earlier steps, in the order of the text
 * @param made nouns of what this step makes: "to a smooth dough"
 * @param goesOn whether it goes on with what is at hand without naming it: "fold in the flour", "bake for an hour"
 * @param beside whether it says that it is done beside other work: "meanwhile"
 * @param strangers the words behind "the" where the step itself does not tell what is meant
 */
record StepTalk(
        List<Mention> mentions, Set<String> made, boolean goesOn, boolean beside, List<List<String>> strangers) {

    /** @param hot whether the step says "hot" or "warm" of it */
    record Mention(String word, boolean definite, boolean hot) {}

    private static final Set<String> DEFINITE =
            Set.of("the", "your", "this", "that", "these", "those", "its", "their", "each", "both", "every", "all");
    private static final Set<String> POINTING = Set.of("the", "these", "those");
    private static final Set<String> INDEFINITE =
            Set.of("a", "an", "another", "into", "some", "form", "forming", "make", "makes", "become", "resemble");
    private static final Set<String> SMALL = Set.of(
            "of", "in", "into", "on", "onto", "to", "for", "from", "with", "without", "and", "or", "until", "till",
            "while", "when", "as", "at", "by", "over", "under", "between", "through", "then", "is", "are", "has",
            "have", "will", "should", "but", "which", "if", "not", "be", "so", "it", "them", "they", "the", "you");
    private static final Set<String> PRONOUNS = Set.of("it", "them", "they");
    private static final Set<String> GROUPS = Set.of("everything", "ingredient");
    private static final Set<String> HOT = Set.of("hot", "warm", "still-warm", "just-baked");

    private static final Pattern OPENING = Pattern.compile(
            "^\\h*(?:(?:meanwhile|in the meantime|next|now|then|finally|carefully|gently|slowly|quickly|immediately|lastly)\\b,?\\h*"
                    + "|(?:for|to make|to finish|once|when|while|as soon as|after|if)\\b[^,.]{2,60},\\h*)*+",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern GOES_ON = Pattern.compile(
            "^(?:\\p{L}+ly\\h+)?[\\p{L}-]+(?:(?:,| and| then){1,3}\\h+(?:then\\h+)?[\\p{L}-]+)?\\h+(?:together\\h+|gently\\h+|straight\\h+)?"
                    + "(?:in|into|onto|on|over|between|to|through|until|for|with|again|thoroughly|completely|briefly|at|under|among|back|aside|by|well"
                    + "|(?:out|up|down|off)(?!\\h+(?:the|your|a|an|each|both|half)\\b))\\b"
                    + "|^(?:add|bake|cool|chill|serve|cover|leave|rest|knead|simmer|fry|stir|strain|drain|slice)\\b(?=\\h*(?:[,.;]|and\\b|in\\b|then\\b|the\\h+(?:remaining|rest)))"
                    + "|^add\\b"
                    + "|^(?:take|remove|lift|draw|pull|return|put|set|move)\\h+(?:the|your)\\h+(?:sauce|frying\\h)?(?:pan|pot|bowl|skillet|dish)\\b[^,.;]{0,20}\\b(?:off|from|to|back|over|aside)\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern BESIDE = Pattern.compile(
            "\\b(?:meanwhile|in\\h+the\\h+meantime|separately|(?:in|into|using)\\h+(?:a|another)\\h+(?:second|separate|clean|different|small|new|medium)?\\h*(?:bowl|pan|saucepan)"
                    + "|while\\h+(?:it|they|that|those|the\\h+[\\p{L}-]+(?:\\h+[\\p{L}-]+)?)\\h+(?:is|are|bakes?|cools?|chills?|proves?|proofs?|rests?|rises?|sets?|soaks?|simmers?|dries|dry|heats?|freezes?|cooks?))\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern FILLS = Pattern.compile(
            "\\b(?:tins?|trays?|sheets?|dish(?:es)?|moulds?|molds?|cases|ramekins?|rings?|basins?|pans?)\\b",
            Pattern.CASE_INSENSITIVE);

    private static final int LONGEST_PHRASE = 5;

    static boolean isSmallWord(String word) {
        return SMALL.contains(word);
    }

    /** Whether a step speaks of a tin, so that one must be ready. */
    static boolean fills(String text) {
        return FILLS.matcher(text).find();
    }

    /** @param fresh words of the ingredients that go in with this step */
    static StepTalk of(String text, Set<String> fresh) {
        Matcher beside =
                BESIDE.matcher(NotFood.withoutGreasing(Wording.of(text)).text());
        boolean isBeside = beside.find();
        // "While the dough rests" tells the time and takes no dough.
        String plain = beside.replaceAll(words -> ".".repeat(words.group().length()));
        String opening = OPENING.matcher(plain).replaceFirst("");
        Reader reader = new Reader(Words.of(plain), fresh);
        reader.read();
        boolean goesOn = reader.pronounFirst || GOES_ON.matcher(opening).find();
        return new StepTalk(
                List.copyOf(reader.mentions), Set.copyOf(reader.made), goesOn, isBeside, List.copyOf(reader.strangers));
    }

    /** One way through the words of a step. */
    private static final class Reader {

        private final Words words;
        private final Set<String> fresh;
        private final List<Mention> mentions = new ArrayList<>();
        private final Set<String> made = new LinkedHashSet<>();
        private final Set<String> spokenOf = new HashSet<>();
        private boolean pronounFirst;
        private final List<List<String>> strangers = new ArrayList<>();

        private Reader(Words words, Set<String> fresh) {
            this.words = words;
            this.fresh = fresh;
        }

        private void read() {
            for (int at = 0; at < words.size(); at++) {
                String word = words.list().get(at).singular();
                if (GROUPS.contains(word)) {
                    spokenOf.add(word);
                } else if (PRONOUNS.contains(word)) {
                    pronounFirst |= spokenOf.isEmpty();
                } else if (DEFINITE.contains(word)) {
                    if (POINTING.contains(word)) {
                        stranger(at);
                    }
                } else if (isNoun(at, word)) {
                    noun(at, word);
                }
            }
        }

        private boolean isNoun(int at, String word) {
            return !SMALL.contains(word)
                    && !MethodWords.isOfKitchen(word)
                    && !tellsWhichKind(at)
                    && NotFood.mayBeNamed(words, at, 1);
        }

        /** The "loaf" of a loaf tin and the "icing" of icing sugar are none. */
        private boolean tellsWhichKind(int at) {
            if (!words.joined(at)) {
                return false;
            }
            String next = words.list().get(at + 1).singular();
            return (MethodWords.isOfKitchen(next) && !SMALL.contains(next))
                    || (fresh.contains(next)
                            && !fresh.contains(words.list().get(at).singular()));
        }

        private void noun(int at, String word) {
            String article = article(at);
            boolean made = MethodWords.isMade(word) && INDEFINITE.contains(article);
            if (made) {
                this.made.add(word);
            }
            if (fresh.contains(word) || this.made.contains(word)) {
                spokenOf.add(word);
                return;
            }
            boolean hot = at > 0
                    && words.joined(at - 1)
                    && HOT.contains(words.list().get(at - 1).singular());
            boolean definite = DEFINITE.contains(article);
            mentions.add(new Mention(word, definite, hot));
            if (definite || MethodWords.isMade(word)) {
                spokenOf.add(word);
            }
        }

        /** The word that tells a known thing from a new one: up to four words before, in the same run of words. */
        private String article(int at) {
            for (int back = at - 1; back >= Math.max(0, at - 4) && words.joined(back); back--) {
                String word = words.list().get(back).singular();
                if (DEFINITE.contains(word) || INDEFINITE.contains(word)) {
                    return word;
                }
                if (SMALL.contains(word)) {
                    return "";
                }
            }
            return "";
        }

        /** The words behind "the", where none of them is known. */
        private void stranger(int at) {
            List<String> phrase = new ArrayList<>();
            int next = at;
            while (words.joined(next) && next - at < LONGEST_PHRASE) {
                next++;
                String word = words.list().get(next).singular();
                if (SMALL.contains(word)) {
                    break;
                }
                phrase.add(word);
            }
            boolean known = phrase.stream()
                    .anyMatch(word -> fresh.contains(word) || made.contains(word) || MethodWords.isOfKitchen(word));
            if (!phrase.isEmpty() && !known) {
                strangers.add(List.copyOf(phrase));
            }
        }
    }
}
