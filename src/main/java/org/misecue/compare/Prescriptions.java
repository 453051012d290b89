package org.misecue.compare;

import java.util.Set;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;

/** Amounts that ought to be: they stand until somebody does otherwise. */
final class Prescriptions {

    private static final int STOCK_REACH = 6;
    private static final int REACH = 7;
    private static final Set<String> OTHERS = Words.set("my he she they the her his somebody people most it");
    private static final Set<String> DETERMINERS = Set.of("the", "your", "my", "our");
    private static final Set<String> ARTICLES = Set.of("a", "an");

    private final Hearing heard;
    private final SheetAndHand sheet;
    private final Questions questions;

    Prescriptions(Hearing heard) {
        this.heard = heard;
        this.sheet = new SheetAndHand(heard);
        this.questions = new Questions(heard);
    }

    /** "it's supposed to be three", "the recipe says three", "I've always put three". */
    boolean isOne(SpokenQuantity said) {
        return questions.isAsked(said) || isPrescribed(said);
    }

    private boolean isPrescribed(SpokenQuantity said) {
        return heard.on(Mechanism.PRESCRIBED)
                && (isOneByArticle(said)
                        || heard.phrases.within(Kind.STOCK, said.end(), said.end() + STOCK_REACH)
                        || sheet.isOnSheet(said)
                        || isSupposed(behindThing(said.end()))
                        || heard.phrases.within(Kind.PRESCRIBED, said.start() - REACH, said.start()));
    }

    /** "an egg" may be any egg, until a number is said. */
    private boolean isOneByArticle(SpokenQuantity said) {
        return said.manner() == Manner.BARE
                && ARTICLES.contains(heard.words.text(said.start()))
                && said.end() == said.start() + 1;
    }

    /** "half a teaspoon would be too much", "two fifty is what my daughter has typed up", "seven grams in summer". */
    private boolean isSupposed(int at) {
        if (heard.words.wall(at)) {
            return false;
        }
        if (heard.words.normal(at, at + 3).matches("is (the|what is) (usual|normal|standard|custom).*")) {
            return true;
        }
        boolean others = heard.words.text(at).equals("is")
                && heard.words.text(at + 1).equals("what")
                && OTHERS.contains(heard.words.text(at + 2));
        return others
                || heard.words.text(at).equals("would")
                || heard.phrases.endAt(Kind.SEASON, at).isPresent();
    }

    /** Behind the name of what is measured. */
    private int behindThing(int end) {
        int at = heard.words.text(end).equals("of") ? end + 1 : end;
        int thing = DETERMINERS.contains(heard.words.text(at)) ? at + 1 : at;
        return heard.namesIn(thing, thing + 1).stream()
                .mapToInt(NameHit::end)
                .max()
                .orElse(end);
    }
}
