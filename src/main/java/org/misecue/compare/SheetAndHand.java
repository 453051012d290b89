package org.misecue.compare;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.OwnDoing;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.Words;

/**
 * "It's a hundred and ten on the sheet, but I only give it ninety": what is read from the sheet stands until the speaker
 * tells what the hand does.
 */
final class SheetAndHand {

    private static final int SHEET_REACH = 7;
    private static final int SHEET_BEFORE = 5;
    private static final Set<String> LINKS =
            Words.set("it is says said there that are they was has got have you will see for gives");
    private static final Set<String> SHEETS = Words.set("note notes card sheet paper book page printout recipe");
    private static final Set<String> OWNERS = Words.set("the my your her his our this");
    private static final int HAND_BEFORE = 6;
    private static final int HAND_BEHIND = 6;
    private static final int REACH = 45;

    private final Hearing heard;

    SheetAndHand(Hearing heard) {
        this.heard = heard;
    }

    /** "a hundred and ten on the sheet", "two teaspoons is what's written", "in the book it's a hundred". */
    boolean isOnSheet(SpokenQuantity said) {
        return heard.on(Mechanism.SHEET_AND_HAND) && (isToldBehind(said.end()) || isToldBefore(said.start()));
    }

    private boolean isToldBehind(int end) {
        int to = end;
        while (to < end + SHEET_REACH && (to == end || !heard.words.wall(to))) {
            to++;
        }
        return !heard.words.wall(end) && heard.phrases.within(Kind.ON_THE_SHEET, end, to);
    }

    /** Only small words between: "a hundred and ten on the sheet, I do ninety" tells of the amount before it. */
    private boolean isToldBefore(int start) {
        int at = start;
        while (at > start - SHEET_BEFORE && LINKS.contains(heard.words.text(at - 1)) && !heard.words.wall(at)) {
            at--;
        }
        return at < start
                && !heard.words.wall(at)
                && (heard.phrases.endsBefore(Kind.ON_THE_SHEET, at) || isSheet(at - 1));
    }

    /** "the note's got eighty on it". */
    private boolean isSheet(int at) {
        return SHEETS.contains(heard.words.text(at)) && OWNERS.contains(heard.words.text(at - 1));
    }

    /** "on your paper you'll see two twenty. Forget it". */
    private boolean isRefused(Mention sheet) {
        return heard.words.normal(sheet.end(), sheet.end() + 2).matches("(forget|ignore) (it|that|them)|never mind");
    }

    /** Whether the amount is what the hand does of the line, of which the sheet's amount was told just before. */
    boolean isByHand(SpokenQuantity said, Optional<Mention> last) {
        return heard.on(Mechanism.SHEET_AND_HAND)
                && last.filter(Mention::provisional)
                        .filter(sheet -> said.start() >= sheet.end() && said.start() - sheet.end() <= REACH)
                        .filter(sheet -> isNothingElse(sheet, said.start()))
                        .isPresent()
                && (isDone(said) || last.filter(this::isRefused).isPresent());
    }

    /** "I'm only giving it ninety", "ninety is what it gets". */
    private boolean isDone(SpokenQuantity said) {
        return OwnDoing.endsAt(heard.words, said.start())
                || heard.phrases.within(Kind.BY_HAND, said.start() - HAND_BEFORE, said.start())
                || heard.phrases.within(Kind.IT_GETS, said.end(), said.end() + HAND_BEHIND);
    }

    /** Whether another amount of the line's measure, given to nothing, follows what was only read from the sheet. */
    boolean isOnlyReadOut(Ledger.Entry entry, List<SpokenQuantity> homeless) {
        Mention read = entry.mentions().get(entry.mentions().size() - 1);
        return heard.on(Mechanism.SHEET_AND_HAND)
                && entry.isProvisional()
                && homeless.stream()
                        .filter(said -> said.start() >= read.end() && said.start() - read.end() <= REACH)
                        .filter(said -> !said.isAside()
                                && !said.amount().equals(entry.quantity().amount()))
                        .anyMatch(said -> Fit.of(said, heard.lines.get(read.line()), Optional.empty(), heard) > 0);
    }

    private boolean isNothingElse(Mention sheet, int until) {
        return heard.namesIn(sheet.end(), until).stream()
                .filter(name -> name.inRecipe() && heard.takesAmounts(name) && !heard.isPassing(name))
                .allMatch(name -> name.lines().contains(sheet.line())
                        || heard.words.text(name.start() - 1).equals("the"));
    }
}
