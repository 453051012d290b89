package org.misecue.compare;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.compare.Attacher.Place;
import org.misecue.compare.Journey.Stop;
import org.misecue.compare.Trail.Passage;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Setting;
import org.misecue.spoken.Aside;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;

/** What became of every amount that was heard. */
final class Fates {

    private final Hearing heard;
    private final Attacher attacher;
    private final SettingListener settings;
    private final Map<Integer, List<Mention>> mentions;
    private final Map<Integer, Setting> setBy = new HashMap<>();

    Fates(Hearing heard, Attacher attacher, SettingListener settings) {
        this.heard = heard;
        this.attacher = attacher;
        this.settings = settings;
        this.mentions = attacher.mentions().byLine().values().stream()
                .flatMap(List::stream)
                .collect(Collectors.groupingBy(Mention::start));
        for (Setting setting : heard.recipe.allSettings()) {
            settings.saidOf(setting).forEach(said -> setBy.put(said.words().start(), setting));
        }
    }

    /** The amounts given to a line, as said. */
    List<Mention> of(int line) {
        return attacher.mentions().of(line);
    }

    List<Settled.Said> of(Setting setting) {
        return settings.saidOf(setting);
    }

    /** The lines that share one amount. */
    List<Mention> at(int start) {
        return mentions.getOrDefault(start, List.of());
    }

    List<SpokenQuantity> homeless() {
        return attacher.homeless();
    }

    /** The amount and what became of it, for a line or setting that did not get it. */
    Stop stop(Passage passage, String more) {
        Evidence evidence =
                heard.evidence(passage.start(), passage.end(), passage.said().flatMap(SpokenQuantity::quantity));
        return new Stop(evidence, Telling.sentence(understood(passage) + fate(passage) + more));
    }

    /** What points has no amount of its own: what it points at is told instead. */
    private String understood(Passage passage) {
        return passage.said()
                .map(said -> Telling.heard(said) + "; ")
                .orElse(String.join(", ", heard.trail.notes(passage.start())) + "; ");
    }

    private String fate(Passage passage) {
        List<Mention> given = at(passage.start());
        List<String> notes = heard.trail.notes(passage.start());
        if (!given.isEmpty()) {
            return "given to " + given.stream().map(this::taker).collect(Collectors.joining(" and to "));
        }
        Optional<Place> foreign = attacher.foreign().stream()
                .filter(place -> place.said().start() == passage.start())
                .findFirst();
        if (foreign.isPresent()) {
            return "given to something that the recipe does not have, named by " + Telling.by(foreign.get());
        }
        if (setBy.containsKey(passage.start())) {
            return "taken for the setting “" + FindingWriter.name(setBy.get(passage.start())) + "”";
        }
        if (passage.said().isEmpty()) {
            return "no amount is taken from it";
        }
        if (!notes.isEmpty()) {
            return "this is " + String.join(", ", notes);
        }
        Optional<Aside> aside = passage.said().flatMap(SpokenQuantity::aside);
        if (aside.isPresent()) {
            return "put aside, because this is " + aside.get().reason();
        }
        return passage.said()
                .filter(attacher.homeless()::contains)
                .map(this::lost)
                .orElseGet(() -> nothing(passage));
    }

    private String taker(Mention mention) {
        Optional<Place> place = place(mention);
        return heard.lineName(mention.line())
                + place.map(found -> ", named by " + Telling.by(found)).orElse("");
    }

    /** The name by which a mention found its line; empty where it was no name. */
    Optional<Place> place(Mention mention) {
        return heard.trail.places(mention.start()).stream()
                .filter(place -> place.line() == mention.line() && place.score() == mention.score())
                .findFirst();
    }

    /** The places that would have done if this one had not been there, the best first. */
    Stream<Place> rivals(Mention mention) {
        List<Integer> takers = at(mention.start()).stream().map(Mention::line).toList();
        return heard.trail.places(mention.start()).stream()
                .filter(place -> !takers.contains(place.line()) && place.score() >= Scoring.ENOUGH)
                .sorted(Comparator.comparingDouble(Place::score).reversed());
    }

    private String lost(SpokenQuantity said) {
        double enough = said.manner() == Manner.BARE ? Scoring.ENOUGH_FOR_BARE : Scoring.ENOUGH;
        return heard.trail.places(said.start()).stream()
                .filter(place -> place.score() > 0)
                .max(Comparator.comparingDouble(Place::score))
                .map(best -> "given to nothing: the nearest was " + named(best) + " by " + Telling.by(best) + ", and "
                        + Telling.score(enough) + " is needed")
                .orElse("given to nothing: no name near it fits");
    }

    String named(Place place) {
        return place.inRecipe() ? heard.lineName(place.line()) : "something that the recipe does not have,";
    }

    private static String nothing(Passage passage) {
        boolean setting = passage.said()
                .filter(said -> said.manner() == Manner.HEAT || isOfSetting(said))
                .isPresent();
        return setting
                ? "no written setting was found for it"
                : "it is a portion or a figure to reckon with, no amount of its own";
    }

    /** Whether its unit alone says that it is no ingredient's. */
    static boolean isOfSetting(SpokenQuantity said) {
        return said.unit()
                .map(Unit::dimension)
                .filter(dimension -> dimension == Dimension.TEMPERATURE
                        || dimension == Dimension.DURATION
                        || dimension == Dimension.LENGTH)
                .isPresent();
    }
}
