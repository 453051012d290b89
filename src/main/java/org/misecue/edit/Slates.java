package org.misecue.edit;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.spoken.NumberGrammar;
import org.misecue.spoken.SpokenNumber;
import org.misecue.spoken.WordStream;

/**
 * Numbers of shots that are called before they are filmed ("shot seven take two", "slate 7") or that stand in a film's name
 * ({@code shot-7_take-2.mp4}). That slates are called so is common practice, no source.
 */
final class Slates {

    private static final Set<String> CALLS = Set.of("shot", "slate");
    private static final Pattern NAMED = Pattern.compile(
            "(?<![a-z])(?:shot|slate)[ _.-]*(\\d{1,3})(?!\\d)(?:[ _.-]*take[ _.-]*(\\d{1,2})(?!\\d))?",
            Pattern.CASE_INSENSITIVE);

    /** @param take 0 where none is told */
    record Call(int shot, int take, Duration at) {}

    private Slates() {}

    /** What a film's name says. */
    static Optional<Call> named(String file) {
        Matcher name = NAMED.matcher(file.substring(file.lastIndexOf('/') + 1));
        return name.find()
                ? Optional.of(new Call(
                        Integer.parseInt(name.group(1)),
                        name.group(2) == null ? 0 : Integer.parseInt(name.group(2)),
                        Duration.ZERO))
                : Optional.empty();
    }

    /** What is called, in order. "A shot of espresso" and "shot two times" call nothing. */
    static List<Call> called(WordStream words) {
        NumberGrammar numbers = new NumberGrammar(words);
        List<Call> calls = new ArrayList<>();
        for (int at = 0; at < words.size(); at++) {
            if (CALLS.contains(words.text(at))) {
                call(words, numbers, at).ifPresent(calls::add);
            }
        }
        return List.copyOf(calls);
    }

    private static Optional<Call> call(WordStream words, NumberGrammar numbers, int at) {
        int from = words.text(at + 1).equals("number") ? at + 2 : at + 1;
        Optional<SpokenNumber> shot = numbers.at(from);
        OptionalInt number = whole(shot);
        if (number.isEmpty()) {
            return Optional.empty();
        }
        int end = shot.get().end();
        OptionalInt take = words.text(end).equals("take") ? whole(numbers.at(end + 1)) : OptionalInt.empty();
        if (take.isEmpty() && !words.text(at).equals("slate")) {
            return Optional.empty();
        }
        return Optional.of(
                new Call(number.getAsInt(), take.orElse(0), words.at(at).at()));
    }

    private static OptionalInt whole(Optional<SpokenNumber> number) {
        return number.filter(one -> !one.fraction())
                .flatMap(one -> one.amount().least())
                .filter(value -> value.getDivisor().equals(java.math.BigInteger.ONE))
                .map(value -> OptionalInt.of(value.intValue()))
                .orElse(OptionalInt.empty());
    }
}
