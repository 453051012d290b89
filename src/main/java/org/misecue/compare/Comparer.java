package org.misecue.compare;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.misecue.narration.Narration;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Household;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/**
 * Holds everything said against everything written, in the steps of a producer: hear the amounts, put asides away, give
 * settings their figures and ingredients their amounts, fold corrections and additions, and judge.
 */
public final class Comparer {

    private final Hearing heard;
    private final SettingListener settings;
    private final Attacher attacher;
    private final Pointing pointing;
    private final Restarts restarts;
    private final RunningScale scale;
    private final PerPiece pieces;

    private Comparer(Hearing heard) {
        this.heard = heard;
        this.settings = new SettingListener(heard);
        this.attacher = new Attacher(heard);
        this.pointing = new Pointing(heard, attacher);
        this.restarts = new Restarts(heard);
        this.scale = new RunningScale(heard);
        this.pieces = new PerPiece(heard);
    }

    /**
     * The same for what the films say and show: the worse of the two counts for each written thing.
     *
     * @param spoons whose cups and spoons are meant; where that is empty, what the recipe and the speaker tell decides
     */
    public static Comparison compare(
            Recipe recipe, List<Narration> narrations, Picture picture, Pantry pantry, Optional<Household> spoons) {
        Comparer ear = new Comparer(
                new Hearing(recipe, narrations, pantry, EnumSet.allOf(Mechanism.class), Medium.SPEECH, spoons));
        ear.listen();
        Comparison said = ear.verdicts();
        if (picture.cards().isEmpty()) {
            return said;
        }
        Lettering lettering = new Lettering(picture, ear.heard.alignment);
        Comparer eye = new Comparer(
                new Hearing(recipe, lettering.narrations(), pantry, EnumSet.allOf(Mechanism.class), lettering, spoons));
        eye.listen();
        Comparison seen = eye.verdicts();
        List<Evidence> unplaced = Unplaced.of(eye.unplaced(), lettering, seen);
        return BothWays.of(said, new CardSteps(lettering).placed(seen).withUnplaced(unplaced));
    }

    /** The narrations in the order in which they were filmed. */
    public static Comparison compare(
            Recipe recipe, List<Narration> narrations, Pantry pantry, Optional<Household> spoons) {
        return compare(recipe, narrations, Picture.NONE, pantry, spoons);
    }

    /** The same in a kitchen of which nothing is known. */
    public static Comparison compare(Recipe recipe, List<Narration> narrations, Pantry pantry) {
        return compare(recipe, narrations, pantry, Optional.empty());
    }

    /** The same with only some of its mechanisms: for measuring, not for use. */
    public static Comparison compare(
            Recipe recipe, List<Narration> narrations, Pantry pantry, Set<Mechanism> mechanisms) {
        Comparer comparer =
                new Comparer(new Hearing(recipe, narrations, pantry, mechanisms, Medium.SPEECH, Optional.empty()));
        comparer.listen();
        return comparer.verdicts();
    }

    /**
     * How the verdicts came about on every line and setting that the words mean: "caster sugar", "cake butter", "oven".
     * First the lines, then the settings, in the order of the recipe.
     *
     * @throws org.misecue.notice.BadInput if they mean none; it names the nearest ingredients
     */
    public static List<Journey> explain(
            Recipe recipe,
            List<Narration> narrations,
            Picture picture,
            Pantry pantry,
            Optional<Household> spoons,
            String words) {
        List<Journey> said = explain(recipe, narrations, pantry, spoons, words);
        return picture.cards().isEmpty()
                ? said
                : new ShownStops(compare(recipe, narrations, picture, pantry, spoons)).behind(said);
    }

    static List<Journey> explain(
            Recipe recipe, List<Narration> narrations, Pantry pantry, Optional<Household> spoons, String words) {
        Comparer comparer = new Comparer(
                new Hearing(recipe, narrations, pantry, EnumSet.allOf(Mechanism.class), Medium.SPEECH, spoons));
        comparer.listen();
        Comparison comparison = comparer.verdicts();
        Fates fates = new Fates(comparer.heard, comparer.attacher, comparer.settings);
        return new Explainer(comparer.heard, fates, comparison, new FindingWriter(recipe, pantry)).of(new Asked(words));
    }

    private void listen() {
        int next = 0;
        for (int at = 0; at < heard.words.size(); at++) {
            Optional<Integer> behind = pointing.take(at);
            if (behind.isPresent()) {
                at = behind.get() - 1;
                continue;
            }
            while (next < heard.quantities.size() && heard.quantities.get(next).start() < at) {
                next++;
            }
            if (next < heard.quantities.size() && heard.quantities.get(next).start() == at) {
                take(heard.quantities.get(next));
            }
        }
        if (heard.on(Mechanism.SECOND_LOOK)) {
            new SecondLook(heard, attacher).look();
            settings.lookAgain(given());
        }
    }

    /** Where the amounts begin that were given to an ingredient and are not much too large for it. */
    private Set<Integer> given() {
        Set<Integer> given = new HashSet<>();
        attacher.mentions().byLine().forEach((line, own) -> new SlipOfTongue(heard.lines.get(line), heard.household)
                .notTooMuch(own)
                .forEach(mention -> given.add(mention.start())));
        return given;
    }

    private void take(SpokenQuantity said) {
        heard.trail.met(said);
        Optional<String> repeats = restarts.repeats(said);
        if (repeats.isPresent()) {
            heard.trail.note(said.start(), repeats.get());
            return;
        }
        if (scale.isStart(said)) {
            heard.trail.note(said.start(), "where the scale stood before");
            return;
        }
        Optional<SpokenQuantity> climbed = scale.added(said);
        if (climbed.isPresent()) {
            heard.trail.note(said.start(), "where the scale stops; what went in is how far it went");
            attacher.attach(climbed.get());
            return;
        }
        Optional<SpokenQuantity> ofPack = Packs.share(said, heard)
                .or(() -> Packs.ofSize(said, heard))
                .or(() -> Packs.counted(said, heard))
                .or(() -> Packs.each(said, heard))
                .or(() -> Packs.told(said, heard))
                .or(() -> pieces.all(said));
        if (ofPack.isPresent()) {
            heard.trail.note(said.start(), "counted in packs whose size was said");
            if (Packs.isOnlyBought(said, heard)) {
                attacher.attachUntilSaid(ofPack.get());
            } else {
                attacher.attach(ofPack.get());
            }
            return;
        }
        if (said.manner() == Manner.PERCENT || (said.manner() == Manner.SHARE && !Sharing.isPieceOfOne(said, heard))) {
            if (Sharing.isOnlyPart(said, heard)) {
                attacher.takeOnly(said);
            } else {
                pointing.takeShare(said);
            }
            return;
        }
        if (settings.take(said)) {
            return;
        }
        Optional<SpokenQuantity> onTop = OnTop.added(said, attacher.mentions(), heard);
        if (onTop.isPresent()) {
            heard.trail.note(said.start(), "what the scales show with what was there before");
            attacher.attach(onTop.get());
            return;
        }
        Optional<SpokenQuantity> amount = said.isAside() ? Packs.amount(said, heard) : Optional.of(said);
        amount.filter(one -> said.isAside())
                .ifPresent(one -> heard.trail.note(said.start(), "the size of a pack that goes in whole"));
        amount.filter(one -> !attacher.weighed().take(one) && !pointing.isTotal(one))
                .ifPresent(attacher::attach);
    }

    private Comparison verdicts() {
        LineJudge judge = new LineJudge(heard, attacher.homeless());
        Map<Integer, List<Mention>> mentions = attacher.mentions().byLine();
        BatchTalk batch = new BatchTalk(heard, mentions);
        DeniedUnits units = new DeniedUnits(heard);
        List<LineVerdict> written = new ArrayList<>();
        for (int line = 0; line < heard.lines.size(); line++) {
            IngredientLine own = heard.lines.get(line);
            if (own.quantity().isPresent()) {
                written.add(judge.of(line, batch.forViewers(units.without(mentions.getOrDefault(line, List.of())))));
            }
        }
        List<Unwritten> unwritten = new UnwrittenFinder(heard).find(attacher.foreign(), attacher.homeless());
        return new Comparison(
                heard.recipe.title(), batch.factor(), written, settingVerdicts(batch.factorOfSettings()), unwritten);
    }

    /** Amounts in units for which nothing was found. */
    private List<Evidence> unplaced() {
        return attacher.homeless().stream()
                .filter(said -> said.unit().isPresent() && !said.isAside())
                .map(said -> heard.evidence(said.start(), said.end(), said.quantity()))
                .toList();
    }

    private List<SettingVerdict> settingVerdicts(RationalNumber batch) {
        Settled settled = new Settled(heard, batch);
        return heard.recipe.allSettings().stream()
                .map(setting -> settled.of(setting, settings.saidOf(setting)))
                .toList();
    }
}
