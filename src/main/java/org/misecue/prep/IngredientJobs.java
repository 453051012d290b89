package org.misecue.prep;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.LeadTime;
import org.misecue.pantry.Pantry;

/** What the ingredients ask for ahead: out of the fridge, soaked, cooled; and the weighing, chilled things last. */
final class IngredientJobs {

    private static final Duration BOWL_WEIGHED = Duration.ofMinutes(2);

    /** Kinds of job during which the thing stands in the room. */
    private static final Set<String> OUT = Set.of("warm", "cool", "infuse", "sour", "soak");

    private final Pantry pantry;
    private final FilmingClock clock;

    IngredientJobs(Pantry pantry, FilmingClock clock) {
        this.pantry = pantry;
        this.clock = clock;
    }

    /** One wish for something to be done ahead, with all bowls that share it. */
    private record Wish(LeadTime lead, Optional<Ingredient> ingredient) {}

    /** @param bowls those of all takes */
    List<Job> of(List<Bowl> bowls, List<ToHand> toHand) {
        Map<Wish, List<Bowl>> wishes = wishes(bowls);
        List<Job> jobs = new ArrayList<>();
        wishes.forEach((wish, wanting) -> jobs.add(ahead(wish, wanting)));
        Set<LeadTime> known = wishes.keySet().stream().map(Wish::lead).collect(Collectors.toSet());
        toHand.forEach(thing -> pantry
                .leadTimes(thing.line().ingredient(), thing.line().preparation())
                .stream()
                .filter(lead -> !known.contains(lead))
                .forEach(lead -> jobs.add(ahead(lead, thing))));
        jobs.addAll(weighing(bowls, wishes));
        return jobs;
    }

    private Map<Wish, List<Bowl>> wishes(List<Bowl> bowls) {
        Map<Wish, List<Bowl>> wishes = new LinkedHashMap<>();
        for (Bowl bowl : bowls) {
            for (Content content : bowl.contents()) {
                for (LeadTime lead : pantry.leadTimes(content.ingredient(), content.preparation())) {
                    Wish wish = new Wish(lead, pantry.find(content.ingredient()));
                    wishes.computeIfAbsent(wish, key -> new ArrayList<>()).add(bowl);
                }
            }
        }
        return wishes;
    }

    /** One job for all bowls that want the same done equally long before; the earliest of them sets the time. */
    private Job ahead(Wish wish, List<Bowl> wanting) {
        int step = wanting.stream()
                .map(Bowl::step)
                .min(Comparator.comparing(clock::begin))
                .orElse(0);
        List<Integer> steps = wanting.stream().flatMap(IngredientJobs::steps).toList();
        String where = Wording.bowls(numbers(wanting)) + stepWords(step);
        return job(wish.lead(), where, step, numbers(wanting), limit(wish, step, steps));
    }

    private Job ahead(LeadTime lead, ToHand thing) {
        int step = thing.steps().stream().findFirst().orElse(0);
        Wish wish = new Wish(lead, pantry.find(thing.line().ingredient()));
        return job(lead, "to hand" + stepWords(step), step, List.of(), limit(wish, step, thing.steps()));
    }

    private Optional<RoomLimit> limit(Wish wish, int step, List<Integer> steps) {
        Duration ahead = wish.lead().ahead();
        Duration last = steps.stream()
                .map(clock::lastBegin)
                .max(Comparator.naturalOrder())
                .orElse(Duration.ZERO);
        Optional<LocalDateTime> out = clock.clockTime(step, ahead);
        return wish.ingredient()
                .filter(one -> one.chilled() && OUT.contains(wish.lead().job()))
                .map(one -> RoomLimit.of(one.name(), last.minus(clock.startBefore(step, ahead)), out));
    }

    private Job job(LeadTime lead, String where, int step, List<Integer> bowls, Optional<RoomLimit> limit) {
        return new Job(
                lead.what(),
                lead.ahead(),
                where,
                step,
                clock.clockTime(step, lead.ahead()),
                bowls,
                limit,
                lead.why(),
                lead.source());
    }

    /** Chilled bowls that nothing takes out ahead are weighed last and go back into the fridge. */
    private List<Job> weighing(List<Bowl> bowls, Map<Wish, List<Bowl>> wishes) {
        Set<Bowl> out = wishes.entrySet().stream()
                .filter(entry -> OUT.contains(entry.getKey().lead().job()))
                .flatMap(entry -> entry.getValue().stream())
                .collect(Collectors.toSet());
        List<Bowl> chilled = bowls.stream()
                .filter(bowl -> !out.contains(bowl) && isChilled(bowl))
                .toList();
        int others = bowls.size() - chilled.size();
        List<Job> jobs = new ArrayList<>();
        if (others > 0) {
            String last = chilled.isEmpty() ? "" : "; chilled things last";
            jobs.add(weigh(
                    "Weigh out and label " + Wording.count(others, "bowl") + last,
                    bowls.size(),
                    List.of(),
                    Optional.empty()));
        }
        if (!chilled.isEmpty()) {
            Duration ahead = BOWL_WEIGHED.multipliedBy(chilled.size());
            List<Bowl> late = chilled.stream()
                    .filter(bowl -> steps(bowl)
                            .map(clock::lastBegin)
                            .anyMatch(begin -> begin.plus(ahead).compareTo(RoomLimit.TWO_HOURS) > 0))
                    .toList();
            jobs.add(weigh(
                    "Weigh and label the chilled " + Wording.bowls(numbers(chilled))
                            + ", cover them and set them back in the fridge",
                    chilled.size(),
                    chilled,
                    Optional.of(RoomLimit.ofBowls(numbers(late), clock.clockTime(0, ahead)))));
        }
        return jobs;
    }

    private Job weigh(String what, int count, List<Bowl> bowls, Optional<RoomLimit> limit) {
        Duration ahead = BOWL_WEIGHED.multipliedBy(count);
        return new Job(
                what,
                ahead,
                "the first shot",
                0,
                clock.clockTime(0, ahead),
                numbers(bowls),
                limit,
                "A bowl takes about 2 minutes to weigh, check and label.",
                "an estimate, no source");
    }

    private boolean isChilled(Bowl bowl) {
        return bowl.contents().stream().anyMatch(content -> pantry.find(content.ingredient())
                .filter(Ingredient::chilled)
                .isPresent());
    }

    private static List<Integer> numbers(List<Bowl> bowls) {
        return bowls.stream().map(Bowl::number).distinct().toList();
    }

    private static Stream<Integer> steps(Bowl bowl) {
        return Stream.concat(Stream.of(bowl.step()), bowl.laterSteps().stream());
    }

    private static String stepWords(int step) {
        return step == 0 ? "" : ", step " + step;
    }
}
