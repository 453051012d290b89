package org.misecue.compare;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/**
 * "Caster sugar, and it's double what the batter got": an amount told by that of the same ingredient in another part of the
 * recipe, which its name or one of its other ingredients stands for ("half of what the rhubarb got").
 */
final class OtherPart {

    private static final Set<String> GOT = Words.set("got gets get had has have took takes");
    private static final Set<String> INTO = Set.of("in", "into", "for", "to");
    private static final int LONGEST_DOING = 7;
    private static final int TOPIC_REACH = 30;

    private final Hearing heard;

    OtherPart(Hearing heard) {
        this.heard = heard;
    }

    /**
     * What gets the amount and what of the other part it is told by, where such a part is named.
     *
     * @param start where the words begin that make one amount of the other
     * @param at where the name of the part begins, its article before it
     */
    Optional<Pointer> of(int start, int at, RationalNumber factor) {
        Optional<NameHit> ingredient =
                heard.namesIn(at, at + 1).stream().filter(NameHit::inRecipe).max(Comparator.comparingInt(NameHit::end));
        int end = ingredient.map(NameHit::end).orElse(at + 1);
        Optional<Integer> component = heard.locators.named(at).or(() -> ingredient.flatMap(this::onlyPart));
        return component.filter(found -> GOT.contains(heard.words.text(end))).flatMap(found -> topic(start)
                .flatMap(topic -> pointer(start, end + 1, factor, topic, found)));
    }

    /**
     * The same by what was done there: "half of what went in the pudding", "twice what we put in the dough".
     *
     * @param at the word behind "what"
     */
    Optional<Pointer> went(int start, int at, RationalNumber factor) {
        for (int in = at; in < at + LONGEST_DOING && !heard.words.wall(in); in++) {
            int part = PointerGrammar.DETERMINERS.contains(heard.words.text(in + 1)) ? in + 2 : in + 1;
            Optional<Integer> component =
                    INTO.contains(heard.words.text(in)) ? heard.locators.named(part) : Optional.empty();
            if (component.isPresent()) {
                return topic(start).flatMap(topic -> pointer(start, part + 1, factor, topic, component.get()));
            }
        }
        return Optional.empty();
    }

    private Optional<Integer> onlyPart(NameHit ingredient) {
        List<Integer> parts = ingredient.lines().stream()
                .map(heard.componentOfLine::get)
                .distinct()
                .toList();
        return parts.size() == 1 ? Optional.of(parts.get(0)) : Optional.empty();
    }

    /** What is spoken of where the words begin. */
    Optional<NameHit> topic(int start) {
        return heard.namesIn(start - TOPIC_REACH, start).stream()
                .filter(name -> name.inRecipe() && !heard.isPassing(name))
                .max(Comparator.comparingInt(NameHit::start));
    }

    /** What the topic gets here, by what the same ingredient got in the component. */
    Optional<Pointer> pointer(int start, int end, RationalNumber factor, NameHit topic, int component) {
        Set<Integer> same = heard.alike(topic).lines();
        Set<Integer> there = same.stream()
                .filter(line -> heard.componentOfLine.get(line) == component)
                .collect(Collectors.toSet());
        Set<Integer> here = same.stream().filter(line -> !there.contains(line)).collect(Collectors.toSet());
        return there.isEmpty() || here.isEmpty()
                ? Optional.empty()
                : Optional.of(new Pointer(
                        start,
                        end,
                        factor,
                        Optional.of(topic.meaning(there)),
                        Optional.of(topic.meaning(here)),
                        false));
    }
}
