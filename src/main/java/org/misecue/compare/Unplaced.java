package org.misecue.compare;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a card shows and no verdict rests on: amounts that fit nothing, and lines that cannot be read for certain. */
final class Unplaced {

    private Unplaced() {}

    static List<Evidence> of(List<Evidence> homeless, Lettering lettering, Comparison seen) {
        Set<String> resting = evidence(seen).map(Unplaced::line).collect(Collectors.toSet());
        Set<String> told = homeless.stream().map(Unplaced::line).collect(Collectors.toSet());
        Stream<Evidence> unread =
                lettering.doubtful().filter(one -> !resting.contains(line(one)) && !told.contains(line(one)));
        return Stream.concat(homeless.stream(), unread)
                .sorted((one, other) ->
                        one.moment().at().compareTo(other.moment().at()))
                .toList();
    }

    private static Stream<Evidence> evidence(Comparison seen) {
        return Stream.of(
                        seen.written().stream().map(LineVerdict::evidence),
                        seen.settings().stream().map(SettingVerdict::evidence),
                        seen.unwritten().stream().map(Unwritten::evidence))
                .flatMap(all -> all)
                .flatMap(List::stream);
    }

    private static String line(Evidence one) {
        return one.moment() + one.quote();
    }
}
