package org.misecue.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * What was said and what was shown, in one verdict for each written thing: the worse one counts, for a viewer believes
 * either. What only a doubtful reading of the picture supports is never called agreement.
 */
final class BothWays {

    /** Of a verdict that rests on a picture that cannot be read for certain. */
    private static final Confidence DOUBTFUL = new Confidence(30);

    private BothWays() {}

    static Comparison of(Comparison heard, Comparison seen) {
        List<LineVerdict> written = new ArrayList<>();
        for (int i = 0; i < heard.written().size(); i++) {
            LineVerdict one = heard.written().get(i);
            LineVerdict other = seen.written().get(i);
            Joint joint = Joint.of(
                    new Joint(one.verdict(), one.confidence(), one.reason(), one.evidence()),
                    new Joint(other.verdict(), other.confidence(), other.reason(), other.evidence()).doubted());
            written.add(new LineVerdict(
                    one.component(), one.line(), joint.verdict, joint.confidence, joint.reason, joint.evidence));
        }
        List<SettingVerdict> settings = new ArrayList<>();
        for (int i = 0; i < heard.settings().size(); i++) {
            SettingVerdict one = heard.settings().get(i);
            SettingVerdict other = seen.settings().get(i);
            Joint joint = Joint.of(
                    new Joint(one.verdict(), one.confidence(), one.reason(), one.evidence()),
                    new Joint(other.verdict(), other.confidence(), other.reason(), other.evidence()).doubted());
            settings.add(
                    new SettingVerdict(one.setting(), joint.verdict, joint.confidence, joint.reason, joint.evidence));
        }
        return new Comparison(
                heard.title(),
                heard.factor(),
                written,
                settings,
                unwritten(heard.unwritten(), seen.unwritten()),
                seen.unplaced());
    }

    private record Joint(Verdict verdict, Confidence confidence, String reason, List<Evidence> evidence) {

        static Joint of(Joint heard, Joint seen) {
            if (seen.verdict == Verdict.UNSPOKEN) {
                return heard;
            }
            if (heard.verdict == Verdict.UNSPOKEN) {
                return seen;
            }
            Verdict worse = heard.verdict.compareTo(seen.verdict) >= 0 ? heard.verdict : seen.verdict;
            Comparator<Joint> bySureness = Comparator.comparing(Joint::confidence);
            Stream<Joint> deciding = Stream.of(heard, seen).filter(one -> one.verdict == worse);
            Joint telling =
                    (worse == Verdict.DIFFERS ? deciding.max(bySureness) : deciding.min(bySureness)).orElseThrow();
            List<Evidence> evidence = Stream.concat(heard.evidence.stream(), seen.evidence.stream())
                    .toList();
            return new Joint(worse, telling.confidence, heard.reason + " " + seen.reason, evidence);
        }

        Joint doubted() {
            if (evidence.stream().noneMatch(Evidence::doubtful)) {
                return this;
            }
            return new Joint(
                    verdict == Verdict.AGREES ? Verdict.APPROXIMATE : verdict,
                    confidence.compareTo(DOUBTFUL) < 0 ? confidence : DOUBTFUL,
                    reason + " The picture cannot be read for certain there: look.",
                    evidence);
        }
    }

    /** What is said and shown by one name is one addition. */
    private static List<Unwritten> unwritten(List<Unwritten> heard, List<Unwritten> seen) {
        List<Unwritten> all = new ArrayList<>(heard);
        for (Unwritten one : seen) {
            int same = all.stream().map(other -> name(other)).toList().indexOf(name(one));
            if (same < 0) {
                all.add(one);
            } else {
                Unwritten said = all.get(same);
                List<Evidence> evidence = Stream.concat(said.evidence().stream(), one.evidence().stream())
                        .toList();
                all.set(same, new Unwritten(said.ingredient(), said.quantity(), said.confidence(), evidence));
            }
        }
        return List.copyOf(all);
    }

    private static String name(Unwritten one) {
        return one.ingredient().toLowerCase(Locale.ROOT);
    }
}
