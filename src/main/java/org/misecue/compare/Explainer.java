package org.misecue.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Setting;

/** Finds what is asked about and has its journey told. */
final class Explainer {

    private final Hearing heard;
    private final Fates fates;
    private final Comparison comparison;
    private final FindingWriter writer;

    Explainer(Hearing heard, Fates fates, Comparison comparison, FindingWriter writer) {
        this.heard = heard;
        this.fates = fates;
        this.comparison = comparison;
        this.writer = writer;
    }

    List<Journey> of(Asked asked) {
        List<Journey> journeys = new ArrayList<>();
        int judged = 0;
        for (int line = 0; line < heard.lines.size(); line++) {
            IngredientLine own = heard.lines.get(line);
            boolean stated = own.quantity().isPresent();
            Optional<LineVerdict> verdict =
                    stated ? Optional.of(comparison.written().get(judged++)) : Optional.empty();
            if (asked.means(own.ingredient() + " " + component(line))) {
                journeys.add(ofLine(line, verdict));
            }
        }
        List<Setting> settings = heard.recipe.allSettings();
        for (int i = 0; i < settings.size(); i++) {
            if (asked.means(settings.get(i))) {
                journeys.add(ofSetting(comparison.settings().get(i)));
            }
        }
        if (journeys.isEmpty()) {
            throw asked.meantNothing(heard.recipe);
        }
        return journeys;
    }

    private String component(int line) {
        return heard.recipe.components().get(heard.componentOfLine.get(line)).name();
    }

    private Journey ofLine(int line, Optional<LineVerdict> verdict) {
        LineJourney journey = new LineJourney(line, heard, fates);
        return new Journey(
                heard.lines.get(line).text(),
                verdict.map(own -> writer.of(own).where()).orElse(component(line)),
                verdict.map(LineVerdict::verdict),
                verdict.map(LineVerdict::confidence).orElse(Confidence.FULL),
                journey.stops(),
                verdict.map(own -> new LineOutcome(line, heard, fates, comparison.factor()).of(own))
                        .orElse(List.of("The line states no amount, so there is nothing to hold it against.")),
                journey.nearBy());
    }

    private Journey ofSetting(SettingVerdict verdict) {
        SettingJourney journey = new SettingJourney(verdict, heard, fates);
        Finding finding = writer.of(verdict);
        return new Journey(
                finding.what(),
                finding.where(),
                Optional.of(verdict.verdict()),
                verdict.confidence(),
                journey.stops(),
                journey.outcome(),
                journey.nearBy());
    }
}
