package org.misecue.compare;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.misecue.compare.Mention.Role;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Mechanism;

/**
 * "Two hundred and forty grams of egg white … two hundred and one … two thirty three": beside an amount that was measured
 * and named, a bare number far from the name is what the scales show, an age, a page; it contradicts nothing.
 */
final class StrayNumbers {

    private static final int FIRM_BEFORE = 6;
    private static final int FIRM_BEHIND = 5;
    private static final int STRAY_BEFORE = 7;
    private static final int STRAY_BEHIND = 5;
    private static final int TOPIC_REACH = 9;
    private static final Set<Unit> WEIGHED =
            EnumSet.of(Unit.GRAM, Unit.KILOGRAM, Unit.MILLILITRE, Unit.LITRE, Unit.OUNCE, Unit.POUND);

    private final Hearing heard;

    StrayNumbers(Hearing heard) {
        this.heard = heard;
    }

    /** The mentions without the strays; all of them where none is measured and named. */
    List<Mention> without(List<Mention> mentions) {
        List<Mention> firm = mentions.stream().filter(this::isFirm).toList();
        return !firm.isEmpty() && heard.on(Mechanism.STRAY_NUMBERS)
                ? mentions.stream()
                        .filter(mention -> !isStray(mention) || goesOn(mention, firm))
                        .toList()
                : mentions;
    }

    /** Whether one of them was measured and named in one breath. */
    boolean anyFirm(List<Mention> mentions) {
        return mentions.stream().anyMatch(this::isFirm);
    }

    private boolean isFirm(Mention mention) {
        return !mention.assumedUnit()
                && !mention.provisional()
                && isNamed(mention, mention.start() - FIRM_BEFORE, mention.end() + FIRM_BEHIND);
    }

    /** "two hundred grams of sugar, she says; I'd cut that back to one fifty". */
    private static boolean goesOn(Mention mention, List<Mention> firm) {
        return firm.stream()
                .anyMatch(one -> mention.start() >= one.end() && mention.start() - one.end() <= TOPIC_REACH);
    }

    private boolean isStray(Mention mention) {
        return mention.assumedUnit()
                && isWeight(mention)
                && mention.role() == Role.STATES
                && !isNamed(mention, mention.start() - STRAY_BEFORE, mention.end() + STRAY_BEHIND);
    }

    /** Spoons and eggs are counted up, and said without their name more often. */
    private static boolean isWeight(Mention mention) {
        return WEIGHED.contains(mention.quantity().unit());
    }

    private boolean isNamed(Mention mention, int from, int to) {
        return heard.namesIn(from, to).stream().anyMatch(name -> name.lines().contains(mention.line()));
    }
}
