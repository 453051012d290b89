package org.misecue.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.misecue.compare.Mention.Role;
import org.misecue.quantity.Quantity;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;

/** Gives each amount to the ingredient line that it was most likely said for, in time order. */
final class Attacher {

    /** An amount that was spoken of again, and where that ended. */
    private record Cited(int line, int end) {}

    private static final int CITED_REACH = 16;

    private static final int POINTING_REACH = 40;
    private static final int SHARE_REACH = 10;
    private static final double POINTED_BACK = 4;

    /** Where an amount went: a line of the recipe, or a name that the recipe does not have. */
    record Place(SpokenQuantity said, NameHit name, int line, double score) {
        boolean inRecipe() {
            return line >= 0;
        }
    }

    private final Hearing heard;
    private final Roles roles;
    private final LateRepairs late;
    private final Prescriptions prescriptions;
    private final SheetAndHand sheet;
    private final Mentions mentions;
    private final CarriedUnits units;
    private final LineScores scores;
    private final WeighedPieces weighed;
    private final StillTheTopic topic;
    private final NotOnThePage elsewhere;
    private final List<Place> foreign = new ArrayList<>();
    private final List<SpokenQuantity> homeless = new ArrayList<>();
    private final List<SpokenQuantity> repeats = new ArrayList<>();
    private Optional<Cited> cited = Optional.empty();

    Attacher(Hearing heard) {
        this.heard = heard;
        this.roles = new Roles(heard);
        this.late = new LateRepairs(heard);
        this.prescriptions = new Prescriptions(heard);
        this.sheet = new SheetAndHand(heard);
        this.mentions = new Mentions(heard);
        this.units = new CarriedUnits(heard, mentions);
        this.scores = new LineScores(heard, mentions, units);
        this.weighed = new WeighedPieces(heard, mentions);
        this.topic = new StillTheTopic(heard, mentions);
        this.elsewhere = new NotOnThePage(heard);
    }

    /** Takes the amounts in the order of the stream. */
    void attach(SpokenQuantity said) {
        attach(said, false);
    }

    /** Takes the size of a pack that may be cut: it stands until the amount itself is said. */
    void attachUntilSaid(SpokenQuantity said) {
        attach(said, true);
    }

    private void attach(SpokenQuantity said, boolean provisional) {
        if (elsewhere.isOfUnknown(said)) {
            homeless.add(said);
            return;
        }
        List<NameHit> shared = Sharing.names(said, heard);
        if (shared.size() > 1) {
            keepShared(said, shared);
            return;
        }
        Optional<Place> place = best(said, near(said), shared, Set.of()).or(() -> pointedAt(said));
        place = place.or(() -> pairedWith(said))
                .or(() -> moreOf(said))
                .or(() -> byHand(said))
                .or(() -> readOn(said))
                .or(() -> inItNow(said))
                .or(() -> stillOf(said));
        if (place.isEmpty()) {
            homeless.add(said);
        } else {
            keep(ofRead(ofCited(place.get())), provisional);
        }
    }

    /** "a hundred grams each of butter and peanut butter": each line once, and the longer name takes its own. */
    private void keepShared(SpokenQuantity said, List<NameHit> shared) {
        for (NameHit name : shared) {
            Set<Integer> others = shared.stream()
                    .filter(other -> other.lines().size() == 1 && text(other).endsWith(" " + text(name)))
                    .flatMap(other -> other.lines().stream())
                    .collect(Collectors.toSet());
            best(said, List.of(name), shared, others).ifPresent(this::keep);
        }
    }

    private String text(NameHit name) {
        return heard.words.normal(name.start(), name.end());
    }

    /** "I said a teaspoon of cayenne … it's half a teaspoon": of the part of the dish for which it was said. */
    private Place ofCited(Place place) {
        return cited.filter(one -> place.said().start() - one.end() <= CITED_REACH)
                .filter(one -> place.name().lines().contains(one.line()))
                .map(one -> new Place(place.said(), place.name(), one.line(), place.score()))
                .orElse(place);
    }

    /** "she's put a hundred and fifty, so mine's a hundred and twenty": of the same part of the dish as what was read. */
    private Place ofRead(Place place) {
        Optional<Mention> read = mentions.last();
        return read.filter(last ->
                        last.line() != place.line() && place.name().lines().contains(last.line()))
                .filter(last -> sheet.isByHand(place.said(), read))
                .map(last -> new Place(place.said(), place.name(), last.line(), place.score()))
                .orElse(place);
    }

    /** The line of the name for which the amount was said before. */
    private Optional<Integer> citedLine(Place place) {
        return place.name().lines().stream()
                .filter(line -> late.isCitation(place.said(), mentions.of(line)))
                .findFirst();
    }

    /** Gives a reckoned amount to a name that is meant, to any of its lines but those, until one is said outright. */
    void attachTo(SpokenQuantity said, NameHit name, Set<Integer> butNot) {
        best(said, List.of(name), List.of(name), butNot)
                .or(() -> only(said, name, butNot))
                .ifPresent(place -> keep(place, true));
    }

    /** The one line that is left, though another part was named right before: "we had two in the cake, half for this". */
    private Optional<Place> only(SpokenQuantity said, NameHit name, Set<Integer> butNot) {
        List<Integer> left =
                name.lines().stream().filter(line -> !butNot.contains(line)).toList();
        return left.size() == 1 && mentions.of(left.get(0)).isEmpty()
                ? fitting(said, left.get(0), "it is the only one of the name that is left")
                : Optional.empty();
    }

    /** "the same again over there": once more what was measured last, it may be of the same thing. */
    void repeat(SpokenQuantity said) {
        repeats.add(said);
    }

    List<SpokenQuantity> repeats() {
        return repeats;
    }

    /** "only half of that goes on": what was measured last goes in by that share alone. */
    void takeOnly(SpokenQuantity share) {
        Optional<Mention> last = mentions.last().filter(before -> share.start() - before.end() <= SHARE_REACH * 2);
        last.ifPresent(whole -> share.amount()
                .least()
                .ifPresent(factor -> mentions.add(new Mention(
                        share.start(),
                        share.end(),
                        whole.line(),
                        whole.quantity().times(factor),
                        whole.assumedUnit(),
                        Role.CORRECTS,
                        whole.score(),
                        false))));
    }

    private List<NameHit> near(SpokenQuantity said) {
        return heard.namesIn(said.start() - Scoring.REACH_BACK - 5, said.end() + Scoring.REACH_ON + 1);
    }

    private void keep(Place place) {
        keep(place, false);
    }

    private void keep(Place place, boolean provisional) {
        if (!prescriptions.isOne(place.said())) {
            scores.taken(place.name(), place.said());
        }
        if (!place.inRecipe()) {
            foreign.add(place);
            return;
        }
        SpokenQuantity said = place.said();
        Quantity quantity = Fit.inUnits(said, heard.lines.get(place.line()), units.of(said, place.line()))
                .orElseThrow();
        if (weighed.isWeighing(quantity, place.line())) {
            weighed.note(place.line(), quantity);
            heard.trail.note(said.start(), "what the " + heard.lineName(place.line()) + " weighed, which are counted");
            return;
        }
        Optional<Integer> before = citedLine(place);
        if (before.isPresent()) {
            cited = Optional.of(new Cited(before.get(), said.end()));
            heard.trail.note(said.start(), "what was said before, spoken of again");
            return;
        }
        boolean assumed = said.unit().isEmpty();
        Mention mention = new Mention(
                said.start(),
                said.end(),
                place.line(),
                quantity,
                assumed,
                role(said, quantity, place.line()),
                place.score(),
                provisional || isPrescribed(said, place.line()));
        mentions.add(mention);
    }

    /** "the card says two but I always use three": the three is no rule of another's. */
    private boolean isPrescribed(SpokenQuantity said, int line) {
        return prescriptions.isOne(said) && !sheet.isByHand(said, mentions.last(line));
    }

    private Optional<Place> best(SpokenQuantity said, List<NameHit> names, List<NameHit> shared, Set<Integer> butNot) {
        List<NameHit> adjacent = names.stream()
                .filter(name -> Scoring.isAdjacent(said, name, heard))
                .toList();
        int left = elsewhere.leftBefore(said);
        List<Place> all = new ArrayList<>();
        for (NameHit name : names) {
            if (isDone(name, said, adjacent) || (name.inRecipe() && name.start() < left)) {
                continue;
            }
            double position = shared.contains(name) ? Scoring.SURE + 1 : Scoring.position(said, name, heard);
            if (position == Double.NEGATIVE_INFINITY) {
                continue;
            }
            position -= topic.isWaiting(said, name) ? POINTED_BACK : 0;
            position += shared.contains(name) ? 0 : scores.used(name, said);
            for (Place place : places(said, name, position, adjacent)) {
                if (!butNot.contains(place.line())) {
                    all.add(place);
                }
            }
        }
        double enough = said.manner() == Manner.BARE ? Scoring.ENOUGH_FOR_BARE : Scoring.ENOUGH;
        heard.trail.weighed(said, all);
        boolean ofThis = all.stream().anyMatch(place -> isOfIt(place) && place.score() >= Scoring.SURE);
        return all.stream()
                .filter(place -> place.score() >= enough && (!ofThis || isOfIt(place)))
                .reduce((one, other) -> other.score() > one.score() ? other : one);
    }

    /** "seventy five of butter and seventy five of lard": nothing tells more than the name behind "of". */
    private boolean isOfIt(Place place) {
        return place.inRecipe()
                && heard.words.text(place.said().end()).equals("of")
                && place.name().start() == place.said().end() + 1;
    }

    /** "… two hundred and twenty grams of it": more said of what was measured last, however far back its name is. */
    private Optional<Place> pointedAt(SpokenQuantity said) {
        Optional<Mention> last = mentions.last().filter(before -> said.start() - before.end() <= POINTING_REACH);
        if (last.isEmpty() || !heard.on(Mechanism.PRONOUNS) || !Scoring.pointsBack(said, heard)) {
            return Optional.empty();
        }
        heard.trail.linked(said, "it points back at what was measured last");
        int line = last.get().line();
        boolean otherNamed = heard.namesIn(last.get().end(), said.start()).stream()
                .anyMatch(name -> !name.lines().contains(line) && !heard.isPassing(name));
        return otherNamed
                ? Optional.empty()
                : Optional.of(onLine(said, line)).filter(place -> place.score() >= Scoring.ENOUGH);
    }

    /** "one level teaspoon in this … two for the full one": the other half of a pair of batches. */
    private Optional<Place> pairedWith(SpokenQuantity said) {
        boolean whose = heard.phrases.within(Kind.VIEWER, said.start() - 4, said.start())
                || heard.phrases.within(Kind.VIEWER, said.end(), said.end() + 5)
                || heard.phrases.within(Kind.MINE, said.end(), said.end() + 5);
        Optional<Mention> last = mentions.last().filter(before -> said.start() - before.end() <= POINTING_REACH);
        if (!whose || last.isEmpty()) {
            return Optional.empty();
        }
        heard.trail.linked(said, "it is the amount before it for another batch");
        return Optional.of(onLine(said, last.get().line())).filter(place -> place.score() >= Scoring.ENOUGH);
    }

    /** "thirty grams … and twenty more": of what was measured last, however far back its name is. */
    private Optional<Place> moreOf(SpokenQuantity said) {
        return mentions.last()
                .map(Mention::line)
                .filter(line -> !said.isAside() && scores.goesOn(said, line))
                .flatMap(line -> fitting(said, line, "it goes on with what was measured last"));
    }

    /** "the note's got eighty on it … so I do sixty grams", however long the reason is. */
    private Optional<Place> byHand(SpokenQuantity said) {
        Optional<Mention> last = mentions.last();
        return last.map(Mention::line)
                .filter(line -> !said.isAside() && sheet.isByHand(said, last))
                .flatMap(line -> fitting(said, line, "it is what the hand does of what was read out"));
    }

    /** "one fifty, one eighty, slow down … there, two hundred": what the scale shows at last of what is poured. */
    private Optional<Place> readOn(SpokenQuantity said) {
        return lastAlone(said, CITED_REACH)
                .filter(last -> last.role() == Role.CORRECTS && last.assumedUnit() && said.manner() == Manner.BARE)
                .flatMap(last -> fitting(said, last.line(), "it goes on reading the scale"));
    }

    /** "can I do one? … that's two tablespoons in it now": of what was measured last, if nothing else was named. */
    private Optional<Place> inItNow(SpokenQuantity said) {
        String before = heard.words.normal(said.start() - 2, said.start());
        String behind = heard.words.normal(said.end(), said.end() + 2);
        boolean now = before.equals("that is") && (behind.equals("in it") || behind.equals("in there"));
        return lastAlone(said, POINTING_REACH)
                .filter(last -> now)
                .flatMap(last -> fitting(said, last.line(), "it is what is in it now"));
    }

    /** What was measured last, where nothing of the recipe was named since. */
    private Optional<Mention> lastAlone(SpokenQuantity said, int reach) {
        return mentions.last()
                .filter(last -> !said.isAside() && said.start() - last.end() <= reach)
                .filter(last -> heard.namesIn(last.end(), said.start()).stream().noneMatch(NameHit::inRecipe));
    }

    /** The line without its name near, if the amount is one for it. */
    private Optional<Place> fitting(SpokenQuantity said, int line, String why) {
        heard.trail.linked(said, why);
        return Optional.of(onLine(said, line)).filter(place -> place.score() > Scoring.ENOUGH);
    }

    /** The line without its name near, as well as the amount fits it. */
    private Place onLine(SpokenQuantity said, int line) {
        double fit = Fit.of(said, heard.lines.get(line), units.of(said, line), heard);
        return new Place(said, unnamed(said, line), line, Scoring.ENOUGH + fit);
    }

    private NameHit unnamed(SpokenQuantity said, int line) {
        return new NameHit(said.end(), said.end(), Set.of(line), heard.lineName(line));
    }

    /** "Now the pumpkin …", and after a long story "… what I've got here is a cup". */
    private Optional<Place> stillOf(SpokenQuantity said) {
        return topic.line(said).map(line -> {
            heard.trail.linked(said, "nothing else was spoken of since it was named");
            return new Place(said, unnamed(said, line), line, Scoring.ENOUGH);
        });
    }

    /** "a hundred butter, a hundred sugar": where the number comes first, the name before has had its own. */
    private boolean isDone(NameHit name, SpokenQuantity said, List<NameHit> adjacent) {
        return name.end() == said.start()
                && scores.isTakenByNumberBefore(name)
                && adjacent.stream()
                        .anyMatch(next ->
                                next.start() == said.end() && !next.lines().equals(name.lines()));
    }

    private List<Place> places(SpokenQuantity said, NameHit name, double position, List<NameHit> adjacent) {
        if (!name.inRecipe()) {
            return List.of(new Place(said, name, -1, position + 0.5));
        }
        List<Place> places = new ArrayList<>();
        for (int line : name.lines()) {
            if (!scores.isOutOfQuestion(said, name, line)) {
                boolean mayGoOn = adjacent.isEmpty()
                        || adjacent.stream().anyMatch(beside -> beside.lines().contains(line));
                places.add(new Place(said, name, line, position + scores.of(said, name, line, mayGoOn)));
            }
        }
        return places;
    }

    private Role role(SpokenQuantity said, Quantity quantity, int line) {
        List<Mention> own = mentions.of(line);
        return own.isEmpty() ? Role.STATES : roles.of(new Further(said, quantity, own));
    }

    Mentions mentions() {
        return mentions;
    }

    LineScores scores() {
        return scores;
    }

    WeighedPieces weighed() {
        return weighed;
    }

    List<Place> foreign() {
        return foreign;
    }

    List<SpokenQuantity> homeless() {
        return homeless;
    }
}
