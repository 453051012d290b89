package org.misecue.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.recipe.Setting;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;

/** What was said of one written setting, folded into a verdict: the last word counts where it repairs what stood before. */
final class Settled {

    /** One figure said for a setting, in units. */
    record Said(SpokenQuantity words, Quantity quantity) {}

    private final Hearing heard;
    private final Judge judge;

    Settled(Hearing heard) {
        this.heard = heard;
        this.judge = new Judge(heard.household);
    }

    SettingVerdict of(Setting setting, List<Said> all) {
        List<Quantity> figures = new ArrayList<>(List.of(setting.quantity()));
        setting.fan().ifPresent(figures::add);
        figures.addAll(setting.also());
        List<Said> standing = afterRepairs(all);
        if (standing.isEmpty()) {
            return new SettingVerdict(setting, Verdict.UNSPOKEN, "Nobody says it.", List.of());
        }
        Verdict best = Verdict.UNSPOKEN;
        Verdict worst = Verdict.AGREES;
        for (Said said : standing) {
            Verdict verdict = verdict(figures, said.quantity());
            best = verdict.compareTo(best) < 0 ? verdict : best;
            worst = verdict.compareTo(worst) > 0 ? verdict : worst;
        }
        Verdict verdict = worst == Verdict.DIFFERS ? Verdict.DIFFERS : best;
        return new SettingVerdict(setting, verdict, reason(verdict, setting, standing), evidence(standing));
    }

    private Verdict verdict(List<Quantity> figures, Quantity said) {
        return figures.stream()
                .filter(figure -> figure.dimension() == said.dimension())
                .map(figure -> judge.of(figure, said, Optional.empty()))
                .min(java.util.Comparator.naturalOrder())
                .orElse(Verdict.DIFFERS);
    }

    private List<Said> afterRepairs(List<Said> all) {
        List<Said> standing = new ArrayList<>();
        for (Said said : all) {
            boolean repairs = !standing.isEmpty()
                    && said.words().start() - last(standing).words().end() < 40
                    && heard.phrases.within(
                            Kind.REPAIR,
                            last(standing).words().end(),
                            said.words().start());
            if (repairs) {
                standing.remove(standing.size() - 1);
            }
            standing.add(said);
        }
        return standing;
    }

    private static Said last(List<Said> list) {
        return list.get(list.size() - 1);
    }

    private List<Evidence> evidence(List<Said> standing) {
        return standing.stream()
                .map(said -> heard.evidence(said.words().start(), said.words().end(), Optional.of(said.quantity())))
                .toList();
    }

    private static String reason(Verdict verdict, Setting setting, List<Said> standing) {
        String said = String.join(
                " and ",
                standing.stream()
                        .map(one -> QuantityWriter.text(one.quantity()))
                        .distinct()
                        .toList());
        String written = QuantityWriter.text(setting.quantity());
        return switch (verdict) {
            case AGREES -> "Said as written: " + said + ".";
            case APPROXIMATE -> "Said as " + said + ", close to the written " + written + ".";
            case DIFFERS -> "Said as " + said + "; " + written + " is written.";
            case UNSPOKEN -> "";
        };
    }
}
