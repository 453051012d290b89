package org.misecue.compare;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.misecue.compare.Attacher.Place;
import org.misecue.compare.Journey.Stop;
import org.misecue.compare.Mention.Role;
import org.misecue.compare.Trail.Passage;
import org.misecue.compare.Trail.Ruling;
import org.misecue.quantity.QuantityWriter;

/** What was heard for one ingredient line, and what was heard near its name and went elsewhere. */
final class LineJourney {

    /** An amount this many words from the name may make somebody ask why it was not taken; as in {@link Grounds}. */
    private static final int NEAR_NAME = 15;

    private final int line;
    private final Hearing heard;
    private final Fates fates;
    private final List<Mention> given;
    private final List<Mention> counted;

    LineJourney(int line, Hearing heard, Fates fates) {
        this.line = line;
        this.heard = heard;
        this.fates = fates;
        this.given = fates.of(line);
        this.counted = heard.trail.ruling(line).map(Ruling::counted).orElse(List.of());
    }

    List<Stop> stops() {
        return given.stream()
                .map(mention -> new Stop(
                        heard.evidence(mention.start(), mention.end(), Optional.of(mention.quantity())),
                        Telling.sentence(understood(mention) + "; " + found(mention) + "; " + effect(mention))))
                .toList();
    }

    private String understood(Mention mention) {
        String amount = QuantityWriter.text(mention.quantity());
        List<String> notes = heard.trail.notes(mention.start());
        if (!notes.isEmpty()) {
            return "heard as " + amount + ", because it " + (isPointer(mention) ? "" : "is ")
                    + String.join(", ", notes);
        }
        return "heard as " + amount + (mention.assumedUnit() ? ", only the number being said" : "");
    }

    private boolean isPointer(Mention mention) {
        return heard.trail.passages().stream()
                .anyMatch(passage ->
                        passage.start() == mention.start() && passage.said().isEmpty());
    }

    /** By which word, and before which other line. */
    private String found(Mention mention) {
        String by = fates.place(mention)
                .map(place -> "named by " + Telling.by(place))
                .or(() -> heard.trail.link(mention.start()))
                .orElse("it goes on from the amount before it");
        String rival = fates.rivals(mention)
                .findFirst()
                .map(other -> ", ahead of " + fates.named(other) + " (" + Telling.score(other.score()) + ")")
                .orElse("");
        List<String> others = fates.at(mention.start()).stream()
                .filter(other -> other.line() != line)
                .map(other -> heard.lineName(other.line()))
                .toList();
        return by + rival + (others.isEmpty() ? "" : ", shared with " + String.join(", ", others));
    }

    /** What it does to what stood before it, read off the ledger by folding with it and without. */
    private String effect(Mention mention) {
        int at = index(mention);
        if (at < 0) {
            boolean likely = !new SlipOfTongue(heard.lines.get(line), heard.household)
                    .likely(List.of(mention))
                    .isEmpty();
            return likely
                    ? "not counted, because what viewers are told of the written batch is said near by"
                    : "not counted, because it is too far from what is written to be a slip of the tongue";
        }
        Mention own = counted.get(at);
        String batch = own.quantity().equals(mention.quantity())
                ? ""
                : "counted as " + QuantityWriter.text(own.quantity()) + " for the written batch; ";
        List<Ledger.Entry> after = fold(at + 1);
        if (at == 0) {
            boolean open = own.provisional() && !isPointer(own);
            return batch + "the first amount for it" + (open ? ", but not said outright" : "");
        }
        return batch + change(own, fold(at), after);
    }

    private static String change(Mention own, List<Ledger.Entry> before, List<Ledger.Entry> after) {
        String old = Telling.all(before);
        if (old.equals(Telling.all(after))) {
            return unchanged(own, before);
        }
        String now = ": now " + Telling.all(after) + (after.size() > 1 ? " stand" : " stands");
        if (own.role() == Role.ADDS) {
            return "adds to " + old + now;
        }
        if (own.role() == Role.CORRECTS) {
            return "corrects " + old + now;
        }
        if (after.size() > before.size()) {
            return "contradicts " + old + " and takes nothing back" + now;
        }
        return before.stream().allMatch(Ledger.Entry::isProvisional)
                ? "takes the place of " + old + ", which was not said outright" + now
                : "outweighs " + old + now;
    }

    private static String unchanged(Mention own, List<Ledger.Entry> before) {
        String stays = ": " + Telling.all(before) + (before.size() > 1 ? " stay" : " stays");
        if (own.role() == Role.RESTATES) {
            return "says the amount before it in another measure" + stays;
        }
        if (before.stream().anyMatch(entry -> entry.quantity().equals(own.quantity()))) {
            return "says it again" + stays;
        }
        boolean part = before.stream()
                .flatMap(entry -> entry.mentions().stream())
                .anyMatch(mention -> mention.quantity().equals(own.quantity()));
        return (part ? "names a part of it again" : "is left out, being doubtful beside it") + stays;
    }

    private int index(Mention mention) {
        for (int at = 0; at < counted.size(); at++) {
            if (counted.get(at).start() == mention.start() && counted.get(at).end() == mention.end()) {
                return at;
            }
        }
        return -1;
    }

    private List<Ledger.Entry> fold(int count) {
        return Ledger.fold(counted.subList(0, count), heard.household, heard.ingredientOfLine.get(line));
    }

    /** What went to another line is listed if it might have come here, or if nothing came here at all. */
    List<Stop> nearBy() {
        return heard.trail.passages().stream()
                .filter(passage -> passage.said().filter(Fates::isOfSetting).isEmpty())
                .filter(this::isNear)
                .filter(passage ->
                        given.stream().noneMatch(own -> own.start() < passage.end() && passage.start() < own.end()))
                .filter(passage -> given.isEmpty()
                        || fates.at(passage.start()).isEmpty()
                        || score(passage).orElse(0) >= Scoring.ENOUGH)
                .map(passage -> fates.stop(passage, here(passage)))
                .toList();
    }

    private boolean isNear(Passage passage) {
        return heard.namesIn(passage.start() - NEAR_NAME, passage.end() + NEAR_NAME).stream()
                .anyMatch(name -> name.lines().contains(line) && heard.sameSource(passage.start(), name.start()));
    }

    /** How near this line came to having what another one got. */
    private String here(Passage passage) {
        return fates.at(passage.start()).isEmpty() || score(passage).isEmpty()
                ? ""
                : "; this line came to " + Telling.score(score(passage).getAsDouble());
    }

    private OptionalDouble score(Passage passage) {
        return heard.trail.places(passage.start()).stream()
                .filter(place -> place.line() == line && place.score() > 0)
                .mapToDouble(Place::score)
                .max();
    }
}
