package org.misecue.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.misecue.notice.BadInput;
import org.misecue.spoken.Mechanism;

/**
 * One case, judged.
 *
 * @param found how many unwritten ingredients of the truth were reported
 * @param overlooked those that were not
 * @param invented those reported that are none
 * @param failure why nothing could be compared; empty where all went well
 */
record CaseScore(
        EpisodeCase of,
        List<Judged> written,
        List<Judged> settings,
        int found,
        List<Row> overlooked,
        List<Row> invented,
        String failure) {

    static CaseScore of(EpisodeCase one, Set<Mechanism> mechanisms) {
        try {
            return of(one, Rows.of(one.compare(mechanisms)), "");
        } catch (BadInput e) {
            return of(one, Rows.NONE, e.getMessage());
        }
    }

    private static CaseScore of(EpisodeCase one, Rows got, String failure) {
        Rows truth = one.truth();
        List<Row> overlooked = new ArrayList<>();
        List<Row> invented = new ArrayList<>(got.unwritten());
        for (Row row : truth.unwritten()) {
            Optional<Row> match = invented.stream()
                    .filter(other -> NameWords.meet(NameWords.of(row.ingredient()), NameWords.of(other.ingredient())))
                    .findFirst();
            match.ifPresentOrElse(invented::remove, () -> overlooked.add(row));
        }
        return new CaseScore(
                one,
                judged(one, truth.written(), Pairing.ofLines(truth.written(), got.written())),
                judged(one, truth.settings(), Pairing.ofSettings(truth.settings(), got.settings())),
                truth.unwritten().size() - overlooked.size(),
                overlooked,
                invented,
                failure);
    }

    private static List<Judged> judged(EpisodeCase one, List<Row> truth, Map<Integer, Row> pairs) {
        return IntStream.range(0, truth.size())
                .mapToObj(i -> new Judged(one, truth.get(i), Optional.ofNullable(pairs.get(i))))
                .toList();
    }

    /** Everything that is wrong, a line each. */
    List<String> wrong() {
        List<String> wrong = new ArrayList<>();
        written.stream().filter(row -> !row.isRight()).forEach(row -> wrong.add(row.toString()));
        settings.stream().filter(row -> !row.isRight()).forEach(row -> wrong.add(row.toString()));
        overlooked.forEach(row -> wrong.add(of.name() + ": unwritten " + row.ingredient() + " not found"));
        invented.forEach(
                row -> wrong.add(of.name() + ": unwritten " + row.ingredient() + " " + row.written() + " is not"));
        return wrong;
    }
}
