package org.misecue.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.compare.Evidence.Via;
import org.misecue.compare.Journey.Stop;
import org.misecue.quantity.QuantityWriter;

/** What the picture shows, behind what was said, on the way to a verdict. */
final class ShownStops {

    /** What a journey needs of either sort of verdict. */
    private record Ruled(String what, Verdict verdict, Confidence confidence, List<Evidence> evidence) {}

    private final List<Ruled> all;

    /** @param both of what was said and shown */
    ShownStops(Comparison both) {
        this.all = Stream.concat(
                        both.written().stream()
                                .map(line -> new Ruled(
                                        line.line().text(), line.verdict(), line.confidence(), line.evidence())),
                        both.settings().stream()
                                .map(one -> new Ruled(
                                        FindingWriter.name(one.setting()),
                                        one.verdict(),
                                        one.confidence(),
                                        one.evidence())))
                .toList();
    }

    List<Journey> behind(List<Journey> said) {
        List<Ruled> left = new ArrayList<>(all);
        return said.stream().map(journey -> behind(journey, left)).toList();
    }

    private static Journey behind(Journey said, List<Ruled> left) {
        Optional<Ruled> ruled =
                left.stream().filter(one -> one.what().equals(said.what())).findFirst();
        ruled.ifPresent(left::remove);
        List<Stop> shown = ruled.stream()
                .flatMap(one -> one.evidence().stream())
                .filter(one -> one.via() == Via.SHOWN)
                .map(one -> new Stop(one, sentence(one)))
                .toList();
        if (shown.isEmpty()) {
            return said;
        }
        List<Stop> stops = new ArrayList<>(said.stops());
        stops.addAll(shown);
        List<String> outcome = new ArrayList<>(said.outcome());
        outcome.add("Of what is said and what is shown the worse counts: %s."
                .formatted(FindingWriter.word(ruled.get().verdict())));
        return new Journey(
                said.what(),
                said.where(),
                Optional.of(ruled.get().verdict()),
                ruled.get().confidence(),
                List.copyOf(stops),
                List.copyOf(outcome),
                said.nearBy());
    }

    private static String sentence(Evidence one) {
        String amount = one.quantity().map(QuantityWriter::text).orElse("no amount");
        return "On screen in " + one.moment().source() + ", read as " + amount
                + (one.doubtful() ? "; the reading is not certain." : ".");
    }
}
