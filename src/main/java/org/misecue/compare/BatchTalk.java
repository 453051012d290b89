package org.misecue.compare;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import tech.units.indriya.function.RationalNumber;

/**
 * "I'm making a double batch": when the speaker announces another batch than the written one, what is judged is what
 * viewers are told for the written batch, said outright ("so that's five hundred for you") or by the announced factor.
 */
final class BatchTalk {

    private static final int PASSAGE = 25;
    private static final Set<String> FORWARD = Set.of("you", "you'd", "you'll", "you're", "so");
    private static final Set<String> EACH = Set.of("each", "apiece");
    private static final int EACH_REACH = 5;
    private static final int CLAUSE_BEFORE = 7;
    private static final int CLAUSE_AFTER = 8;

    private final Hearing heard;
    private final Judge judge;
    private final RationalNumber factor;
    private final RationalNumber factorOfSettings;
    private final Set<Integer> writtenSize = new HashSet<>();

    /**
     * @param mentions all that was said of the lines, as said
     */
    BatchTalk(Hearing heard, Map<Integer, List<Mention>> mentions) {
        this.heard = heard;
        this.judge = new Judge(heard.household);
        RationalNumber announced = heard.on(Mechanism.BATCH_TALK) ? Announcement.of(heard) : Rationals.ONE;
        Borne borne = borne(announced, mentions);
        this.factor = borne.out() ? announced : Rationals.ONE;
        this.factorOfSettings = borne.against() ? Rationals.ONE : announced;
        if (!factor.equals(Rationals.ONE)) {
            exceptions();
        }
    }

    /** How many written batches are being made; 1 where nothing is announced. */
    RationalNumber factor() {
        return factor;
    }

    /**
     * Whether an announcement is borne out: it may have been about another day.
     *
     * @param scaled lines of which the announced amount is said
     * @param onlyAsWritten lines of which only the written one is
     */
    private record Borne(int scaled, int onlyAsWritten) {

        boolean out() {
            return scaled > 0 && !against();
        }

        boolean against() {
            return scaled < onlyAsWritten;
        }
    }

    private Borne borne(RationalNumber announced, Map<Integer, List<Mention>> mentions) {
        int scaled = 0;
        int onlyAsWritten = 0;
        for (Map.Entry<Integer, List<Mention>> line : mentions.entrySet()) {
            Optional<Quantity> written = heard.lines.get(line.getKey()).quantity();
            boolean isScaled = written.filter(one -> isSaid(one.times(announced), line.getValue()))
                    .isPresent();
            boolean isAsWritten =
                    written.filter(one -> isSaid(one, line.getValue())).isPresent();
            scaled += isScaled ? 1 : 0;
            onlyAsWritten += isAsWritten && !isScaled ? 1 : 0;
        }
        return new Borne(scaled, onlyAsWritten);
    }

    private boolean isSaid(Quantity written, List<Mention> mentions) {
        return mentions.stream()
                .anyMatch(mention -> judge.of(written, mention.quantity(), Optional.empty()) != Verdict.DIFFERS);
    }

    /** The same for yields and times: an announcement counts there until the amounts speak against it. */
    RationalNumber factorOfSettings() {
        return factorOfSettings;
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
        List<Mention> told = mentions.stream().filter(this::isForViewers).toList();
        List<Mention> outright = mentions.stream()
                .filter(mention -> told.contains(mention) || isSaidAgain(mention, told))
                .toList();
        RationalNumber share = factor.reciprocal();
        return mentions.stream()
                .filter(mention -> outright.contains(mention) || !isToldOutright(mention, outright))
                .map(mention -> outright.contains(mention)
                        ? mention
                        : mention.with(mention.quantity().times(share)))
                .toList();
    }

    /** What viewers were once told they are told again without saying so. */
    private static boolean isSaidAgain(Mention mention, List<Mention> told) {
        return told.stream()
                .anyMatch(other ->
                        mention.start() > other.start() && other.quantity().equals(mention.quantity()));
    }

    /** "a hundred and fifty in mine, so you want seventy five": the first is only the way to the second. */
    private static boolean isToldOutright(Mention mention, List<Mention> outright) {
        return outright.stream().anyMatch(other -> Math.abs(other.start() - mention.start()) <= PASSAGE);
    }

    /** "two hundred and forty each", "a teaspoon in each bowl": where several are made, each is one of them. */
    private boolean isOfEach(Mention mention) {
        int until = Math.min(mention.end() + EACH_REACH, nextAmount(mention.end()));
        for (int at = mention.end(); at < until && !heard.words.wall(at); at++) {
            if (EACH.contains(heard.words.text(at))) {
                return true;
            }
        }
        return false;
    }

    private boolean isForViewers(Mention mention) {
        if (isOfEach(mention)) {
            return true;
        }
        int until = Math.min(mention.end() + CLAUSE_AFTER, nextAmount(mention.end()));
        for (int at = mention.end(); at < until && !heard.words.text(at).equals("so"); at++) {
            if (heard.phrases.endAt(Kind.VIEWER, at).isPresent()) {
                // "for you" is said of what stands before it, "you need" of what comes.
                return !FORWARD.contains(heard.words.text(at));
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
        return heard.quantityFrom(from).map(SpokenQuantity::start).orElse(heard.words.size());
    }
}
