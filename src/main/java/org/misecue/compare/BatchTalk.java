package org.misecue.compare;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import tech.units.indriya.function.RationalNumber;

/**
 * "I'm making a double batch": when the speaker announces another batch than the written one, what is judged is what
 * viewers are told for the written batch, said outright ("so that's five hundred for you") or by the announced factor.
 */
final class BatchTalk {

    private static final int CLAUSE_BEFORE = 7;
    private static final int CLAUSE_AFTER = 8;

    private final Hearing heard;
    private final RationalNumber factor;
    private final Set<Integer> writtenSize = new HashSet<>();

    BatchTalk(Hearing heard) {
        this.heard = heard;
        this.factor = announced();
        if (!factor.equals(Rationals.ONE)) {
            exceptions();
        }
    }

    /** How many written batches are being made; 1 where nothing is announced. */
    RationalNumber factor() {
        return factor;
    }

    private RationalNumber announced() {
        if (announces(Kind.DOUBLE)) {
            return Rationals.of(2);
        }
        if (announces(Kind.TRIPLE)) {
            return Rationals.of(3);
        }
        return announces(Kind.HALF_BATCH) ? Rationals.of(1, 2) : Rationals.ONE;
    }

    /** Said outright with its noun ("double batch", "two lots"), or twice over: "double" alone is also a kind of cream. */
    private boolean announces(Kind kind) {
        int outright = 0;
        for (int at = 0; at < heard.words.size(); at++) {
            OptionalInt end = heard.phrases.endAt(kind, at);
            if (end.isPresent() && (end.getAsInt() - at > 1 || announcesVerb(at))) {
                outright++;
            }
        }
        return outright > 0;
    }

    private boolean announcesVerb(int at) {
        return (heard.words.text(at).equals("doubled") || heard.words.text(at).equals("doubling"))
                && List.of("the", "this", "it", "everything", "up").contains(heard.words.text(at + 1))
                && !heard.words.text(at - 1).equals("until");
    }

    /** "The one thing I haven't doubled": the component that is on is made in the written size. */
    private void exceptions() {
        for (int at = 0; at < heard.words.size(); at++) {
            if (heard.phrases.endAt(Kind.NOT_DOUBLED, at).isPresent()) {
                int step = heard.stepAt(Math.min(heard.words.size() - 1, at + 15));
                for (int c = 0; c < heard.recipe.components().size(); c++) {
                    if (heard.stepIn(step, c)) {
                        writtenSize.add(c);
                    }
                }
            }
        }
    }

    /** The mentions that count for the written batch, each in its size. */
    List<Mention> forViewers(List<Mention> mentions) {
        if (factor.equals(Rationals.ONE) || mentions.isEmpty()) {
            return mentions;
        }
        if (writtenSize.contains(heard.componentOfLine.get(mentions.get(0).line()))) {
            return mentions;
        }
        List<Mention> outright = mentions.stream().filter(this::isForViewers).toList();
        if (!outright.isEmpty()) {
            return outright;
        }
        RationalNumber share = factor.reciprocal();
        return mentions.stream()
                .map(mention -> mention.with(mention.quantity().times(share)))
                .toList();
    }

    private boolean isForViewers(Mention mention) {
        int until = Math.min(mention.end() + CLAUSE_AFTER, nextAmount(mention.end()));
        for (int at = mention.end(); at < until && !heard.words.text(at).equals("so"); at++) {
            if (heard.phrases.endAt(Kind.VIEWER, at).isPresent()) {
                return true;
            }
            if (heard.phrases.endAt(Kind.MINE, at).isPresent()) {
                return false;
            }
        }
        OptionalInt viewer = heard.phrases.lastWithin(Kind.VIEWER, mention.start() - CLAUSE_BEFORE, mention.start());
        OptionalInt mine = heard.phrases.lastWithin(Kind.MINE, mention.start() - CLAUSE_BEFORE, mention.start());
        return viewer.isPresent() && (mine.isEmpty() || mine.getAsInt() < viewer.getAsInt());
    }

    private int nextAmount(int from) {
        return heard.quantities.stream()
                .mapToInt(SpokenQuantity::start)
                .filter(start -> start >= from)
                .findFirst()
                .orElse(heard.words.size());
    }
}
