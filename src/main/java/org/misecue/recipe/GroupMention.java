package org.misecue.recipe;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words of a step that mean several ingredients: "everything for the sponge except the walnuts", "the spices".
 *
 * @param start where the words begin
 * @param end where they end, with any exception
 * @param phrase the words without the exception
 * @param members what the names of the members hold; matches all for "everything"
 * @param except the words of the exception, or empty
 */
record GroupMention(int start, int end, String phrase, Cued members, String except) {

    private static final Cued EVERYTHING = Cued.inAnyCase(
            "\\b(?:everything(?:\\h+else)?(?:\\h+for\\h+the\\h+[\\p{L}-]+(?:\\h+[\\p{L}-]+)?)?"
                    + "|(?:all\\h+(?:of\\h+)?)?the\\h+(?:(?!dry|wet)[\\p{L}-]+\\h+){0,3}ingredients(?:\\h+for\\h+the\\h+[\\p{L}-]+)?"
                    + "|all\\h+ingredients|the\\h+rest\\h+of\\h+the\\h+ingredients|(?:remaining|other)\\h+ingredients)\\b");
    private static final Pattern EXCEPT = Pattern.compile(
            "^\\h*+(?:,\\h*+)?\\(?(?:except|apart\\h+from|but\\h+not|but(?=\\h+(?:for\\h+)?the\\b)|bar|minus|less|other\\h+than)(?:\\h+for)?\\h+(.+?)(?=\\)|[.;]|\\h+(?:in(?:to)?|to|until|with|together)\\b|,\\h+(?:then|and\\h+then)|$)",
            Pattern.CASE_INSENSITIVE);
    private static final Cued ANY = Cued.of("");
    private static final Pattern REST = Pattern.compile("(?i)\\b(?:rest|remaining|other|else)\\b");

    static List<GroupMention> in(Wording text) {
        List<GroupMention> mentions = new ArrayList<>();
        collect(mentions, text, EVERYTHING, ANY);
        for (FoodGroups.Group group : FoodGroups.all()) {
            collect(mentions, text, group.phrase(), group.members());
        }
        mentions.sort(Comparator.comparingInt(GroupMention::start));
        return mentions;
    }

    private static void collect(List<GroupMention> mentions, Wording text, Cued words, Cued members) {
        words.each(text, matcher -> {
            Matcher except = EXCEPT.matcher(text.text().substring(matcher.end()));
            boolean excepting = except.lookingAt();
            mentions.add(new GroupMention(
                    matcher.start(),
                    excepting ? matcher.end() + except.end() : matcher.end(),
                    matcher.group(),
                    members,
                    excepting ? except.group(1) : ""));
        });
    }

    /** The text with the words of groups blanked out, so that places stay. */
    static Wording without(Wording text, List<GroupMention> mentions) {
        if (mentions.isEmpty()) {
            return text;
        }
        StringBuilder plain = new StringBuilder(text.text());
        for (GroupMention mention : mentions) {
            for (int at = mention.start; at < mention.end; at++) {
                plain.setCharAt(at, '.');
            }
        }
        return Wording.of(plain.toString());
    }

    boolean mayMean(LineRef ref, Larder larder) {
        return members == ANY || members.standsIn(larder.wording(ref.line().ingredient()));
    }

    List<LineRef> members(
            List<Component> components, List<LineRef> all, Set<LineRef> used, int context, Larder larder) {
        Set<String> excepted = except.isEmpty() ? Set.of() : exceptedNames();
        boolean rest = REST.matcher(phrase).find();
        boolean everywhere = components.size() == 1;
        List<LineRef> meant = all.stream()
                .filter(ref -> everywhere || ref.component() == context)
                .filter(ref -> mayMean(ref, larder))
                .filter(ref -> !rest || !used.contains(ref))
                .filter(ref -> excepted.isEmpty()
                        || larder.called(ref.line().ingredient()).strong().stream()
                                .noneMatch(excepted::contains))
                .toList();
        boolean mixedBefore = FoodGroups.isMixture(phrase) && meant.stream().anyMatch(used::contains);
        return mixedBefore ? meant.stream().filter(ref -> !used.contains(ref)).toList() : meant;
    }

    private Set<String> exceptedNames() {
        Set<String> names = new java.util.HashSet<>();
        for (String each : except.toLowerCase(Locale.ROOT).split("\\h*(?:,|\\band\\b)\\h*", -1)) {
            names.add(Nouns.singular(each.replaceFirst("^the\\h+", "")));
        }
        return names;
    }
}
