package org.misecue.compare;

import java.util.Optional;
import java.util.OptionalInt;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;

/** What a figure said for a setting does to the one before it, and for whom it is meant. */
final class SettingRoles {

    enum Role {
        STATES,
        ADDS,
        CORRECTS,
        CORRECTS_ALL
    }

    private static final int REPAIR_REACH = 40;
    private static final int LATE_BEFORE = 28;
    private static final int LATE_BEHIND = 8;
    private static final int CLAUSE_BEFORE = 7;
    private static final int CLAUSE_BEHIND = 8;
    private static final int FAN_REACH = 4;

    private final Hearing heard;
    private final Repairs repairs;
    private final Tally tally;

    SettingRoles(Hearing heard) {
        this.heard = heard;
        this.repairs = new Repairs(heard);
        this.tally = new Tally(heard);
    }

    Role of(SpokenQuantity said, SpokenQuantity last) {
        if (isLate(said)) {
            return Role.CORRECTS_ALL;
        }
        if (said.unit().isEmpty() && tally.isPartOf(last, said)) {
            return Role.CORRECTS;
        }
        if (isAdded(said)) {
            return Role.ADDS;
        }
        int from = Math.max(last.end(), endBefore(said));
        boolean near = said.start() - last.end() < REPAIR_REACH;
        return near && repairs.isRepaired(from, said.start()) ? Role.CORRECTS : Role.STATES;
    }

    private boolean isLate(SpokenQuantity said) {
        return heard.on(Mechanism.LATE_REPAIR)
                && (heard.phrases.within(Kind.LATE_REPAIR, said.start() - LATE_BEFORE, said.start())
                        || heard.phrases.within(Kind.LATE_REPAIR, said.end(), said.end() + LATE_BEHIND));
    }

    private boolean isAdded(SpokenQuantity said) {
        int from = Math.max(said.start() - 2, endBefore(said));
        return heard.on(Mechanism.PARTS)
                && (heard.phrases.within(Kind.ADDS, from, said.end())
                        || heard.phrases.endAt(Kind.ADDS, said.end()).isPresent());
    }

    /** "one sixty for a fan": where no fan figure is written, it answers nothing. */
    boolean isForFan(SpokenQuantity said) {
        if (isFanBehind(said)) {
            return true;
        }
        Optional<SpokenQuantity> last = heard.quantityBefore(said.start());
        boolean taken = last.filter(this::isFanBehind).isPresent();
        return !taken && isFanWithin(Math.max(said.start() - FAN_REACH, endBefore(said)), said.start());
    }

    private boolean isFanBehind(SpokenQuantity said) {
        String next = heard.words.text(said.end());
        boolean goesOn = next.equals("fan") || next.equals("for") || next.equals("if") || next.equals("in");
        return goesOn && isFanWithin(said.end(), Math.min(said.end() + FAN_REACH + 1, startBehind(said)));
    }

    private boolean isFanWithin(int from, int to) {
        for (int at = from; at < to; at++) {
            if (heard.words.text(at).equals("fan")) {
                return true;
            }
        }
        return false;
    }

    private int endBefore(SpokenQuantity said) {
        return heard.quantityBefore(said.start()).map(SpokenQuantity::end).orElse(0);
    }

    private int startBehind(SpokenQuantity said) {
        return heard.quantityFrom(said.end()).map(SpokenQuantity::start).orElse(heard.words.size());
    }

    /** "mine's an hour and a half, a normal batch is an hour": the second is for the written batch. */
    boolean isForViewers(SpokenQuantity said) {
        int until = Math.min(said.end() + CLAUSE_BEHIND, startBehind(said));
        int from = Math.max(said.start() - CLAUSE_BEFORE, endBefore(said));
        OptionalInt viewer = lastForViewers(from, said.start());
        OptionalInt mine = heard.phrases.lastWithin(Kind.MINE, from, said.start());
        if (viewer.isPresent() || mine.isPresent()) {
            return viewer.orElse(-1) > mine.orElse(-1);
        }
        return lastForViewers(said.end(), until).isPresent();
    }

    private OptionalInt lastForViewers(int from, int to) {
        OptionalInt viewer = heard.phrases.lastWithin(Kind.VIEWER, from, to);
        OptionalInt written = heard.phrases.lastWithin(Kind.WRITTEN_BATCH, from, to);
        return viewer.orElse(-1) > written.orElse(-1) ? viewer : written;
    }
}
