package org.misecue.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.narration.Narration;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.spoken.SpokenQuantity;

/**
 * Holds everything said against everything written, in the steps of a producer: hear the amounts, put asides away, give
 * settings their figures and ingredients their amounts, fold corrections and additions, and judge.
 */
public final class Comparer {

    private final Hearing heard;
    private final SettingListener settings;
    private final Attacher attacher;
    private final BatchTalk batch;

    private Comparer(Hearing heard) {
        this.heard = heard;
        this.settings = new SettingListener(heard);
        this.attacher = new Attacher(heard);
        this.batch = new BatchTalk(heard);
    }

    /** The narrations in the order in which they were filmed. */
    public static Comparison compare(Recipe recipe, List<Narration> narrations, Pantry pantry) {
        Comparer comparer = new Comparer(new Hearing(recipe, narrations, pantry));
        comparer.listen();
        return comparer.verdicts();
    }

    private void listen() {
        int next = 0;
        for (int at = 0; at < heard.words.size(); at++) {
            Optional<BackReferences.Reference> reference = BackReferences.at(at, heard);
            if (reference.isPresent()) {
                attacherMentions(reference.get());
                at = reference.get().end() - 1;
                continue;
            }
            while (next < heard.quantities.size() && heard.quantities.get(next).start() < at) {
                next++;
            }
            if (next < heard.quantities.size() && heard.quantities.get(next).start() == at) {
                take(heard.quantities.get(next));
            }
        }
    }

    private void attacherMentions(BackReferences.Reference reference) {
        BackReferences.resolve(reference, attacher.mentions(), heard).ifPresent(attacher::attach);
    }

    private void take(SpokenQuantity said) {
        boolean share = said.manner() == SpokenQuantity.Manner.SHARE;
        if (!said.isAside() && !share && !settings.take(said)) {
            attacher.attach(said);
        }
    }

    private Comparison verdicts() {
        LineJudge judge = new LineJudge(heard);
        Map<Integer, List<Mention>> mentions = attacher.mentionsByLine();
        List<LineVerdict> written = new ArrayList<>();
        for (int line = 0; line < heard.lines.size(); line++) {
            IngredientLine own = heard.lines.get(line);
            if (own.quantity().isPresent()) {
                written.add(judge.of(line, batch.forViewers(mentions.getOrDefault(line, List.of()))));
            }
        }
        List<Unwritten> unwritten = new UnwrittenFinder(heard).find(attacher.foreign(), attacher.homeless());
        return new Comparison(heard.recipe.title(), batch.factor(), written, settingVerdicts(), unwritten);
    }

    private List<SettingVerdict> settingVerdicts() {
        Settled settled = new Settled(heard);
        return heard.recipe.allSettings().stream()
                .map(setting -> settled.of(setting, settings.saidOf(setting)))
                .toList();
    }
}
