package org.misecue.recipe;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Finds which ingredient lines each step uses. Steps are asked in order: which sugar "the sugar" is depends on the part
 * of the dish at hand and on what earlier steps have used.
 */
final class UseFinder {

    /** A line taken at a place of the text. */
    private record Taken(int start, LineRef ref, Share share) {}

    private static final Pattern PART_OF =
            Pattern.compile("[\\p{L}-]+\\h+(?:from|of)\\h+(?:[\\p{L}½¼¾⅓⅔-]+\\h+){1,3}", Pattern.CASE_INSENSITIVE);

    /** "The remaining cream and strawberries" are the rest of both. */
    private static final Pattern AND = Pattern.compile("\\h*(?:,|,?\\h+and)\\h+");

    /** No part and its whole stand farther apart, in signs. */
    private static final int PART_REACH = 100;

    private static final double STAY = 0.3;
    private static final double SOME_LEFT = 0.5;

    private final List<Component> components;
    private final Larder larder;
    private final PartNames parts;
    private final NamedLines names = new NamedLines();
    private final List<LineRef> all = new ArrayList<>();
    private final Set<LineRef> used = new HashSet<>();
    private final Leftovers leftovers = new Leftovers();
    private int current;

    UseFinder(List<Component> components, Larder larder) {
        this.components = components;
        this.larder = larder;
        this.parts = new PartNames(components);
        for (int part = 0; part < components.size(); part++) {
            for (int at = 0; at < components.get(part).lines().size(); at++) {
                LineRef ref = new LineRef(part, at, components.get(part).lines().get(at));
                all.add(ref);
                names.add(ref, larder);
            }
        }
    }

    /** The uses of the next step. {@code part} is the sub-heading that it stands under, or empty. */
    List<Use> uses(Wording wording, String part) {
        String text = wording.text();
        List<GroupMention> groups = GroupMention.in(wording).stream()
                .filter(group -> all.stream().anyMatch(ref -> group.mayMean(ref, larder)))
                .toList();
        Wording plain = NotFood.withoutGreasing(GroupMention.without(wording, groups));
        List<NamedLines.Mention> mentions = names.in(plain);
        int named = parts.index(part);
        current = named >= 0 ? named : mostLikely(mentions);
        PartNames.Contexts contexts = parts.contexts(wording, current);
        List<Taken> taken = new ArrayList<>();
        for (GroupMention group : groups) {
            for (LineRef ref : group.members(components, all, used, contexts.at(group.start()), larder)) {
                taken.add(
                        new Taken(group.start(), ref, Shares.around(wording, group.start(), group.end(), ref.line())));
            }
        }
        int restUntil = -1;
        for (NamedLines.Mention mention : mentions) {
            boolean joined = restUntil >= 0
                    && AND.matcher(text.substring(restUntil, mention.start())).matches();
            boolean rest = false;
            for (LineRef ref : chosen(mention, contexts.at(mention.start()), wording)) {
                Share share = Shares.around(wording, mention.start(), mention.end(), ref.line());
                Share whole = joined && share.isAll() ? Share.rest() : share;
                rest |= whole.words().equals(Share.REST);
                taken.add(new Taken(mention.start(), ref, whole));
            }
            restUntil = rest ? mention.end() : -1;
        }
        Implied.in(wording, all, used, contexts.at(text.length()))
                .forEach(ref -> taken.add(new Taken(text.length(), ref, Share.ALL)));
        for (BareShare share : BareShare.in(plain)) {
            owner(share, taken, text).ifPresent(ref -> taken.add(new Taken(share.start(), ref, share.of(ref.line()))));
        }
        current = contexts.at(text.length());
        return uses(text, taken);
    }

    private List<Use> uses(String text, List<Taken> taken) {
        Map<LineRef, List<Use>> uses = new LinkedHashMap<>();
        List<Taken> inOrder =
                taken.stream().sorted(Comparator.comparingInt(Taken::start)).toList();
        for (int at = 0; at < inOrder.size(); at++) {
            Taken each = inOrder.get(at);
            if (isPartOfNext(inOrder, at, text)) {
                continue;
            }
            List<Use> known = uses.computeIfAbsent(each.ref, ref -> new ArrayList<>());
            if (known.isEmpty() || (!each.share.isAll() && isNew(known, each.share))) {
                Share share = leftovers.take(each.ref, each.share);
                known.add(new Use(each.ref.component(), each.ref.at(), share.part(), share.words()));
            }
        }
        used.addAll(uses.keySet());
        return uses.values().stream().flatMap(List::stream).toList();
    }

    private static boolean isNew(List<Use> known, Share share) {
        return known.stream()
                .noneMatch(use -> use.words().equals(share.words())
                        && (use.part().equals(share.part()) || share.part().isEmpty()));
    }

    /** Looks only as far as a part may stand before its whole, however often a step names things. */
    private static boolean isPartOfNext(List<Taken> inOrder, int part, String text) {
        Taken first = inOrder.get(part);
        for (int at = part + 1; at < inOrder.size() && inOrder.get(at).start - first.start <= PART_REACH; at++) {
            if (isPartOf(first, inOrder.get(at), text)) {
                return true;
            }
        }
        return false;
    }

    /** "The zest from half the lemon" takes one thing, not two. */
    private static boolean isPartOf(Taken part, Taken whole, String text) {
        return part.ref.equals(whole.ref)
                && part.start < whole.start
                && part.share.isAll()
                && PART_OF.matcher(text.substring(part.start, whole.start)).matches();
    }

    /** Whose share a bare one is: of what was shared out last, or of the one thing that its sentence names. */
    private static Optional<LineRef> owner(BareShare share, List<Taken> taken, String text) {
        List<Taken> before = taken.stream()
                .filter(each -> each.start < share.start())
                .sorted(Comparator.comparingInt(Taken::start))
                .toList();
        if (share.ofIt()) {
            int sentence = Sentences.start(text, share.start());
            List<LineRef> named = before.stream()
                    .filter(each -> each.start >= sentence)
                    .map(Taken::ref)
                    .distinct()
                    .toList();
            return named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty();
        }
        return before.stream()
                .filter(each -> !each.share.isAll())
                .reduce((one, other) -> other)
                .map(Taken::ref);
    }

    /**
     * The part of the dish that most mentions fit. Between equals it is the one that has something of them left to use,
     * then the current one, then the next in the list.
     */
    private int mostLikely(List<NamedLines.Mention> mentions) {
        int best = current;
        double bestScore = score(mentions, current) + STAY;
        for (int turn = 1; turn < components.size(); turn++) {
            int part = (current + turn) % components.size();
            double score = score(mentions, part);
            if (score > bestScore) {
                best = part;
                bestScore = score;
            }
        }
        return best;
    }

    private double score(List<NamedLines.Mention> mentions, int part) {
        int here = 0;
        boolean someLeft = false;
        for (NamedLines.Mention mention : mentions) {
            boolean meant = false;
            for (LineRef ref : mention.lines()) {
                meant |= ref.component() == part;
                someLeft |= ref.component() == part && !used.contains(ref);
            }
            here += meant ? 1 : 0;
        }
        return here + (someLeft ? SOME_LEFT : 0);
    }

    /** "The flours" are all flours of the part, cornflour too. */
    private List<LineRef> kinds(NamedLines.Mention mention, List<LineRef> among, int context) {
        List<LineRef> kinds = new ArrayList<>(among);
        all.stream()
                .filter(ref -> ref.component() == context && !kinds.contains(ref))
                .filter(ref -> ref.line().ingredient().endsWith(mention.word()))
                .forEach(kinds::add);
        return kinds;
    }

    private static boolean isMassNoun(String ingredient) {
        return Nouns.singular(ingredient).equals(ingredient);
    }

    private List<LineRef> chosen(NamedLines.Mention mention, int context, Wording text) {
        List<LineRef> begun = mention.lines().size() > 1
                ? mention.lines().stream().filter(leftovers::hasSome).toList()
                : List.of();
        if (begun.size() == 1
                && Shares.around(
                                text,
                                mention.start(),
                                mention.end(),
                                mention.lines().get(0).line())
                        .isRest()) {
            return begun; // "the rest of the sugar" is of the sugar that was begun
        }
        List<LineRef> here = mention.lines().stream()
                .filter(ref -> ref.component() == context)
                .toList();
        List<LineRef> among = here.isEmpty() ? mention.lines() : here;
        if (mention.plural()
                && among.stream().allMatch(ref -> isMassNoun(ref.line().ingredient()))) {
            return kinds(mention, among, context);
        }
        return among.stream()
                .filter(ref -> !used.contains(ref))
                .findFirst()
                .or(() -> among.stream().findFirst())
                .map(List::of)
                .orElse(List.of());
    }
}
